package clenchbook.backup;

import clenchbook.texts.Message;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Decides which files go into a backup: the book, and all that a run reads beside it. */
public final class Contents {
  /** Layouts, and the farrier's own wording of mails; a run reads no folder below. */
  private static final Pattern TEMPLATE = Pattern.compile("[^/]+/[^/]+\\.(jrxml|properties)");

  /** Tables of rates, at most one folder deep. */
  private static final Pattern RATE = Pattern.compile("[^/]+/([^/]+/)?[^/]+\\.csv");

  private Contents() {}

  /**
   * Decides.
   *
   * @param found what lies beside the book, in any order; a file may be found in two roles
   * @return what goes in, each file once, in order of roles and names
   * @throws UnsoundBackup where there is no book, or a name can't be kept on every computer
   */
  public static List<PackedFile> of(Collection<PackedFile> found) throws UnsoundBackup {
    Map<String, PackedFile> files = new LinkedHashMap<>();
    found.stream()
        .filter(Contents::isRead)
        .sorted(Comparator.comparing(PackedFile::role).thenComparing(PackedFile::name))
        .forEach(file -> files.putIfAbsent(file.name(), file));
    List<PackedFile> contents = List.copyOf(files.values());
    if (contents.stream().noneMatch(file -> file.role() == Role.BOOK)) {
      throw new UnsoundBackup(Message.of("backup.noBook"));
    }
    Set<String> names = new TreeSet<>(files.keySet());
    names.add(Manifest.NAME);
    if (files.containsKey(Manifest.NAME)) {
      throw new UnsoundBackup(Message.of("backup.nameTaken", Manifest.NAME));
    }
    Names.check(names);
    return contents;
  }

  private static boolean isRead(PackedFile file) {
    return switch (file.role()) {
      case TEMPLATES -> TEMPLATE.matcher(file.name()).matches();
      case RATES -> RATE.matcher(file.name()).matches();
      case BOOK, REGISTER, HEADINGS, LOGO, WAITING -> true;
    };
  }

  /**
   * What is in it.
   *
   * @param contents as {@link #of} gives them
   * @return such as {@code book, register, 2 templates}
   */
  public static Message inWords(List<PackedFile> contents) {
    Map<Role, Long> counts =
        contents.stream()
            .collect(
                Collectors.groupingBy(
                    PackedFile::role,
                    () -> new java.util.EnumMap<>(Role.class),
                    Collectors.counting()));
    return Message.joined(
        ", ",
        counts.entrySet().stream()
            .map(
                each ->
                    each.getValue() == 1
                        ? each.getKey().inWords()
                        : Message.of(
                            "backup.severalFiles", each.getKey().inWords(), each.getValue()))
            .toList());
  }
}
