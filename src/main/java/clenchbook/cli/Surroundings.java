package clenchbook.cli;

import clenchbook.commands.opening.MachineLocale;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Stream;

/** The machine's settings, so far as they must not change what the program writes. */
final class Surroundings {
  private Surroundings() {}

  /** Settles them; to be called before anything else. */
  static void settle() {
    MachineLocale.setAside();
    // Under cron no locale is set, and every letter beyond ASCII would be a question mark.
    if (plainLettersOnly()) {
      System.setOut(utf8(FileDescriptor.out));
      System.setErr(utf8(FileDescriptor.err));
    }
  }

  private static boolean plainLettersOnly() {
    return Stream.of("stdout.encoding", "sun.stdout.encoding", "native.encoding")
        .map(System::getProperty)
        .filter(Objects::nonNull)
        .findFirst()
        .filter(Charset::isSupported)
        .map(Charset::forName)
        .filter(StandardCharsets.US_ASCII::equals)
        .isPresent();
  }

  private static PrintStream utf8(FileDescriptor end) {
    return new PrintStream(new FileOutputStream(end), true, StandardCharsets.UTF_8);
  }
}
