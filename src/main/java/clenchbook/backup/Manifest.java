package clenchbook.backup;

import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The list that a backup bears: which files it holds, each with its SHA-256. It is written as
 * {@code sha256sum} reads it (GNU coreutils manual, section 6.2 for the lines, from memory for the
 * remarks that begin with {@code #}), so that it can be checked without this program.
 *
 * @param book the name of the book, a file or a folder, below the folder it is put back into
 * @param digests each file's SHA-256 in small hexadecimal digits, by its name, in order
 */
public record Manifest(String book, Map<String, String> digests) {
  /** Under which name the list itself stands in a backup. */
  public static final String NAME = "backup.sha256";

  /** More files than any book comes with. */
  public static final int MOST_FILES = 20_000;

  private static final String FORM = "# Clenchbook backup ";
  private static final String BOOK = "# book ";
  private static final String VERSION = "1";
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (.+)");

  /** Keeps the order. */
  public Manifest {
    digests = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(digests));
  }

  /** The list as it is written: lines that end with a line feed. */
  public String text() {
    return FORM
        + VERSION
        + "\n"
        + BOOK
        + book
        + "\n"
        + digests.entrySet().stream()
            .map(file -> file.getValue() + "  " + file.getKey() + "\n")
            .collect(Collectors.joining());
  }

  /**
   * Reads a list.
   *
   * @param text as {@link #text} writes it
   * @throws UnsoundBackup where it is none, is of a newer form, or names what can't be put back
   */
  public static Manifest parse(String text) throws UnsoundBackup {
    List<String> lines = text.lines().toList();
    checkForm(lines.isEmpty() ? "" : lines.get(0));
    if (lines.size() < 3 || !lines.get(1).startsWith(BOOK) || lines.size() > MOST_FILES) {
      throw damaged();
    }
    Map<String, String> digests = new LinkedHashMap<>();
    for (String line : lines.subList(2, lines.size())) {
      Matcher parts = LINE.matcher(line);
      if (!parts.matches()) {
        throw damaged();
      }
      if (digests.put(parts.group(2), parts.group(1)) != null) {
        throw new UnsoundBackup(Message.of("backup.namesTwice", Names.shown(parts.group(2))));
      }
    }
    return checked(new Manifest(lines.get(1).substring(BOOK.length()), digests));
  }

  private static void checkForm(String first) throws UnsoundBackup {
    if (!first.startsWith(FORM)) {
      throw damaged();
    }
    if (!first.equals(FORM + VERSION)) {
      throw new UnsoundBackup(Message.of("backup.newerVersion"));
    }
  }

  private static Manifest checked(Manifest manifest) throws UnsoundBackup {
    List<String> names = new ArrayList<>(manifest.digests().keySet());
    names.add(NAME);
    Names.check(names);
    boolean held =
        names.stream()
            .anyMatch(n -> n.equals(manifest.book()) || n.startsWith(manifest.book() + "/"));
    if (!held || manifest.book().indexOf('/') >= 0 || manifest.digests().containsKey(NAME)) {
      throw damaged();
    }
    return manifest;
  }

  private static UnsoundBackup damaged() {
    return new UnsoundBackup(Message.of("backup.listDamaged", NAME));
  }

  /** The files and folders that come to lie in the folder it is put back into, sorted. */
  public Set<String> onTop() {
    return digests.keySet().stream()
        .map(name -> name.split("/", 2)[0])
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * What stands in the way of putting it back: nothing is ever overwritten or mixed.
   *
   * @param there the names of what lies in that folder
   * @return those that are one of ours, however spelled; sorted
   */
  public List<String> inTheWay(Iterable<String> there) {
    Set<String> ours = onTop().stream().map(Names::key).collect(Collectors.toSet());
    Set<String> standing = new TreeSet<>();
    there.forEach(
        name -> {
          if (ours.contains(Names.key(name))) {
            standing.add(name);
          }
        });
    return List.copyOf(standing);
  }
}
