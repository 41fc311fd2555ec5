package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The settings of the virtual machine that the launcher starts with, read from the launcher. */
final class LauncherSettings {
  private static final Pattern LINE = Pattern.compile("(?m)^settings=\"([^\"]+)\"$");

  private LauncherSettings() {}

  static List<String> of(Places places) throws IOException {
    Matcher line = LINE.matcher(Files.readString(places.launcher()));
    if (!line.find()) {
      throw new IOException("no settings in " + places.launcher());
    }
    return List.of(line.group(1).split(" "));
  }
}
