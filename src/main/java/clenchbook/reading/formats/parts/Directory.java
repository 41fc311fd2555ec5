package clenchbook.reading.formats.parts;

import clenchbook.reading.formats.cells.UnreadableWorkbook;
import java.util.Locale;

/**
 * Judges what a packed file's directory declares, before anything is unpacked. A directory may lie:
 * what a part then truly unpacks to is bounded by {@link GuardedStream} all the same.
 */
final class Directory {
  /** So much in all does no harm, however well it packs. */
  private static final long ALWAYS_ALLOWED = 64L << 20;

  private final long fileSize;
  private long declared;

  /**
   * Judges a directory.
   *
   * @param fileSize the bytes of the whole packed file
   */
  Directory(long fileSize) {
    this.fileSize = fileSize;
  }

  /**
   * Judges one part. Pictures, which are never read, may pack as well as they can, within the bound
   * for the whole.
   *
   * @param size what the part is to unpack to; below 0 where not known
   * @param packed its size in the file; below 0 where not known
   * @throws UnreadableWorkbook where it, or all parts up to it, would unpack to more than is read
   */
  void judge(String name, long size, long packed) throws UnreadableWorkbook {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    boolean read = ending.equals("xml") || ending.equals("rels");
    long within = packed < 0 ? fileSize : Math.min(packed, fileSize);
    if (size > (read ? GuardedStream.mostFor(within) : GuardedStream.MOST_BYTES)) {
      throw GuardedStream.tooMuch();
    }
    declared += Math.max(0, size);
    if (declared > Math.max(ALWAYS_ALLOWED, fileSize * GuardedStream.MOST_GROWTH)) {
      throw GuardedStream.tooMuch();
    }
  }
}
