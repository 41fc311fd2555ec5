package clenchbook.commands;

import clenchbook.cli.Clenchbook;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A command as it is typed, run in this process, with all that was answered.
 *
 * @param exit the exit code
 * @param out what went to the standard output
 * @param err what went to the standard error
 */
public record Typed(int exit, String out, String err) {
  /** The day on which all of them are typed. */
  private static final String TODAY = "2027-01-02";

  /** Commands that know no day. */
  private static final List<String> WITHOUT_DAY = List.of("new", "restore");

  /** All words of a command. */
  static List<String> words(String command, Path book, String... options) {
    List<String> words = new ArrayList<>(List.of(command, book.toString()));
    words.addAll(List.of(options));
    if (!WITHOUT_DAY.contains(command)) {
      words.addAll(List.of("--today", TODAY));
    }
    return words;
  }

  /** Runs a command over a book. */
  public static Typed type(String command, Path book, String... options) {
    List<String> words = words(command, book, options);
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream warned = new ByteArrayOutputStream();
    System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(warned, true, StandardCharsets.UTF_8));
    try {
      int exit = Clenchbook.execute(words.toArray(String[]::new));
      return new Typed(
          exit, said.toString(StandardCharsets.UTF_8), warned.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
  }

  /** Everything that was answered, for messages. */
  public String all() {
    return exit + "\n" + out + err;
  }
}
