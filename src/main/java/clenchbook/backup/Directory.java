package clenchbook.backup;

import clenchbook.texts.Message;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Judges what a packed file's directory declares, before anything in it is read. A backup stores
 * its files as they are, so nothing in it can unpack to more than the file itself.
 */
public final class Directory {
  /** More than the list of the most files there may be. */
  private static final long LONGEST_LIST = 16L << 20;

  private final List<PackedEntry> entries;

  /**
   * Judges a directory by itself.
   *
   * @param entries all that it declares, in any order, repeats too
   * @param fileSize the bytes of the whole packed file
   * @throws UnsoundBackup where no backup can be like that
   */
  public Directory(List<PackedEntry> entries, long fileSize) throws UnsoundBackup {
    this.entries = List.copyOf(entries);
    if (entries.size() > Manifest.MOST_FILES) {
      throw new UnsoundBackup(Message.of("backup.tooManyFiles"));
    }
    Set<String> names = new HashSet<>();
    long left = fileSize;
    for (PackedEntry entry : entries) {
      judge(entry, left);
      left -= entry.size();
      if (!names.add(entry.name())) {
        throw new UnsoundBackup(Message.of("backup.holdsTwice", Names.shown(entry.name())));
      }
    }
    Names.check(names);
    if (!names.contains(Manifest.NAME)) {
      throw new UnsoundBackup(Message.of("backup.lacksList", Manifest.NAME));
    }
  }

  private static void judge(PackedEntry entry, long left) throws UnsoundBackup {
    String name = Names.shown(entry.name());
    if (!entry.plain()) {
      throw new UnsoundBackup(Message.of("backup.isLink", name));
    }
    if (!entry.stored()) {
      throw new UnsoundBackup(Message.of("backup.packedOtherwise", name));
    }
    boolean longList = entry.name().equals(Manifest.NAME) && entry.size() > LONGEST_LIST;
    if (entry.size() < 0 || entry.size() > left || longList) {
      throw new UnsoundBackup(Message.of("backup.claimsTooMuch", name));
    }
  }

  /**
   * Judges it by the list that it holds.
   *
   * @throws UnsoundBackup where a file is not named in it, or a named one is missing
   */
  public void agreesWith(Manifest manifest) throws UnsoundBackup {
    Set<String> held = entries.stream().map(PackedEntry::name).collect(Collectors.toSet());
    Set<String> more = new TreeSet<>(held);
    more.removeAll(manifest.digests().keySet());
    more.remove(Manifest.NAME);
    if (!more.isEmpty()) {
      String name = Names.shown(more.iterator().next());
      throw new UnsoundBackup(Message.of("backup.notNamed", name));
    }
    Set<String> less = new TreeSet<>(manifest.digests().keySet());
    less.removeAll(held);
    if (!less.isEmpty()) {
      throw new UnsoundBackup(Message.of("backup.lacks", Names.shown(less.iterator().next())));
    }
  }
}
