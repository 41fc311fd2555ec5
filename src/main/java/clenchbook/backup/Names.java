package clenchbook.backup;

import clenchbook.texts.Message;
import java.text.Normalizer;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Which names may stand in a backup: each must lead to one file below the folder that it is put
 * back into, on any computer. What Windows takes for a drive: "Naming Files, Paths, and
 * Namespaces", section Fully Qualified vs. Relative Paths (from memory).
 */
final class Names {
  private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:.*", Pattern.DOTALL);

  private Names() {}

  /**
   * Checks names one by one and against each other.
   *
   * @throws UnsoundBackup naming the first that is unsound
   */
  static void check(Collection<String> names) throws UnsoundBackup {
    for (String name : names) {
      checkOne(name);
    }
    checkClashes(names);
  }

  private static void checkOne(String name) throws UnsoundBackup {
    boolean control = name.chars().anyMatch(Character::isISOControl);
    if (name.isBlank() || control || name.indexOf('\\') >= 0) {
      throw new UnsoundBackup(Message.of("backup.nameUnfit", shown(name)));
    }
    if (name.startsWith("/") || DRIVE.matcher(name).matches()) {
      throw new UnsoundBackup(Message.of("backup.nameElsewhere", shown(name)));
    }
    for (String part : name.split("/", -1)) {
      if (part.isEmpty() || part.equals(".") || part.equals("..")) {
        throw new UnsoundBackup(Message.of("backup.nameLeadsOut", shown(name)));
      }
    }
  }

  /** Two spellings of one file or folder, or a file where another name needs a folder. */
  private static void checkClashes(Collection<String> names) throws UnsoundBackup {
    Map<String, String> folders = new HashMap<>();
    Set<String> files = new HashSet<>();
    for (String name : names) {
      for (int at = name.indexOf('/'); at >= 0; at = name.indexOf('/', at + 1)) {
        String folder = name.substring(0, at);
        String other = folders.putIfAbsent(key(folder), folder);
        if (other != null && !other.equals(folder)) {
          throw clash(folder);
        }
      }
      if (!files.add(key(name))) {
        throw clash(name);
      }
    }
    for (String name : names) {
      if (folders.containsKey(key(name))) {
        throw clash(name);
      }
    }
  }

  private static UnsoundBackup clash(String name) {
    return new UnsoundBackup(Message.of("backup.nameClash", shown(name)));
  }

  /** One for all spellings that some computer takes for the same: case, and how accents are put. */
  static String key(String name) {
    String composed = Normalizer.normalize(name, Normalizer.Form.NFC);
    return composed.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }

  /** Cleaned and cut, so that a hostile name stays within its line. */
  static String shown(String name) {
    String clean = name.replaceAll("[\\p{Cntrl}\\p{Cf}]", "?");
    return clean.length() <= 80 ? clean : clean.substring(0, 80) + "...";
  }
}
