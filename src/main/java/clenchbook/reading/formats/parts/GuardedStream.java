package clenchbook.reading.formats.parts;

import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.ZipException;

/**
 * A part of a package as it unpacks, refused when it unpacks to more than a workbook's part can, or
 * when a single tag or text of it goes on without end; checked against its own sum at its end.
 */
final class GuardedStream extends InputStream {
  /** Two gigabytes. */
  static final long MOST_BYTES = 2L << 30;

  /** How many times its packed size a part may unpack to. */
  static final long MOST_GROWTH = 200;

  /** A part this small does no harm, however well it packs. */
  private static final long ALWAYS_ALLOWED = 1L << 20;

  private static final int LONGEST_RUN = 16 << 20;

  private final InputStream unpacked;
  private final String name;
  private final long limit;
  private final long declared;
  private final long expectedSum;
  private final CRC32 sum = new CRC32();
  private long count;
  private long run;

  /**
   * Guards a part.
   *
   * @param packedSize bytes in the package
   * @param size bytes unpacked, as the package says; -1 where not known
   * @param expectedSum the part's CRC-32, -1 where not known
   */
  GuardedStream(InputStream unpacked, String name, long packedSize, long size, long expectedSum) {
    this.unpacked = unpacked;
    this.name = name;
    this.limit = mostFor(packedSize);
    this.declared = size < 0 ? Long.MAX_VALUE : size;
    this.expectedSum = expectedSum;
  }

  /** What a part of a packed size may unpack to, in bytes. */
  static long mostFor(long packedSize) {
    return Math.min(MOST_BYTES, Math.max(ALWAYS_ALLOWED, packedSize * MOST_GROWTH));
  }

  static UnreadableWorkbook tooMuch() {
    return new UnreadableWorkbook(Message.of("formats.tooMuch"));
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int from, int length) throws IOException {
    int got = unpacked.read(into, from, length);
    if (got < 0) {
      if (expectedSum >= 0 && sum.getValue() != expectedSum) {
        throw new ZipException("the part " + name + " does not match its check sum");
      }
      return got;
    }
    sum.update(into, from, got);
    count += got;
    if (count > limit) {
      throw tooMuch();
    }
    if (count > declared) {
      throw new ZipException("the part " + name + " is longer than the file says");
    }
    watchRun(into, from, got);
    return got;
  }

  /** Counts the bytes since the last opening bracket: one tag or text with all that follows it. */
  private void watchRun(byte[] bytes, int from, int length) throws IOException {
    for (int i = from + length - 1; i >= from; i--) {
      if (bytes[i] == '<') {
        run = (long) from + length - 1 - i;
        return;
      }
    }
    run += length;
    if (run > LONGEST_RUN) {
      throw new UnreadableWorkbook(Message.of("formats.longText"));
    }
  }

  @Override
  public void close() throws IOException {
    unpacked.close();
  }
}
