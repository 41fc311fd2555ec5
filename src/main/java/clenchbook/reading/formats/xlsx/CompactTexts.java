package clenchbook.reading.formats.xlsx;

import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.Message;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Many texts in little memory: their UTF-8 bytes one after another in pages, with the few asked for
 * lately kept as they were given out.
 */
final class CompactTexts {
  private static final int PAGE = 1 << 16;
  private static final int RECENT = 1 << 12;
  private static final long MOST_BYTES = 192L << 20;

  private final List<byte[]> pages = new ArrayList<>();
  private int[] ends = new int[256];
  private int size;
  private int bytes;
  private final int[] recentIndex = new int[RECENT];
  private final String[] recentText = new String[RECENT];
  private final java.util.BitSet cut = new java.util.BitSet();

  CompactTexts() {
    Arrays.fill(recentIndex, -1);
    Arrays.fill(recentText, "");
  }

  int size() {
    return size;
  }

  void add(String text, boolean wasCut) throws UnreadableWorkbook {
    byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
    if (bytes + (long) encoded.length > MOST_BYTES) {
      throw new UnreadableWorkbook(Message.of("formats.tooMuchText"));
    }
    for (int done = 0; done < encoded.length; ) {
      int inPage = (bytes + done) % PAGE;
      if (inPage == 0) {
        pages.add(new byte[PAGE]);
      }
      int count = Math.min(PAGE - inPage, encoded.length - done);
      System.arraycopy(encoded, done, pages.get((bytes + done) / PAGE), inPage, count);
      done += count;
    }
    bytes += encoded.length;
    if (size == ends.length) {
      ends = Arrays.copyOf(ends, size + size / 2);
    }
    cut.set(size, wasCut);
    ends[size++] = bytes;
  }

  boolean isCut(int index) {
    return cut.get(index);
  }

  String get(int index) {
    int slot = index & (RECENT - 1);
    if (recentIndex[slot] != index) {
      recentIndex[slot] = index;
      recentText[slot] = decode(index);
    }
    return recentText[slot];
  }

  private String decode(int index) {
    int from = index == 0 ? 0 : ends[index - 1];
    int length = ends[index] - from;
    int inPage = from % PAGE;
    if (length == 0) {
      return "";
    }
    if (inPage + length <= PAGE) {
      return new String(pages.get(from / PAGE), inPage, length, StandardCharsets.UTF_8);
    }
    ByteArrayOutputStream joined = new ByteArrayOutputStream(length);
    for (int at = from; at < from + length; ) {
      int start = at % PAGE;
      int count = Math.min(PAGE - start, from + length - at);
      joined.write(pages.get(at / PAGE), start, count);
      at += count;
    }
    return joined.toString(StandardCharsets.UTF_8);
  }
}
