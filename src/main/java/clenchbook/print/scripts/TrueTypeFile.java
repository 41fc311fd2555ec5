package clenchbook.print.scripts;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A face as a file: what a document must know of it, and the part of it that a document uses.
 *
 * <p>Source: ISO/IEC 14496-22 (Open Font Format), tables head, hhea, hmtx, loca, glyf, maxp; what
 * an embedded face needs: ISO 32000-1:2008, 9.9.
 */
final class TrueTypeFile {
  private static final int HEAD_UNITS = 18;
  private static final int HEAD_BOX = 36;
  private static final int HEAD_LOCA = 50;
  private static final int HHEA_ASCENT = 4;
  private static final int HHEA_METRICS = 34;
  private static final int MAXP_GLYPHS = 4;

  /** What outlines are drawn by; the rest says what a letter is called and how it is shaped. */
  private static final String[] KEPT = {"head", "hhea", "maxp"};

  private final Map<String, byte[]> tables = new TreeMap<>();

  TrueTypeFile(byte[] file) {
    ByteBuffer read = ByteBuffer.wrap(file);
    int count = read.getShort(4);
    for (int i = 0; i < count; i++) {
      int entry = 12 + 16 * i;
      String tag = new String(file, entry, 4, StandardCharsets.US_ASCII);
      int offset = read.getInt(entry + 8);
      tables.put(tag, Arrays.copyOfRange(file, offset, offset + read.getInt(entry + 12)));
    }
  }

  private ByteBuffer table(String tag) {
    byte[] table = tables.get(tag);
    if (table == null) {
      throw new IllegalStateException("the program's own font lacks its table " + tag);
    }
    return ByteBuffer.wrap(table);
  }

  int glyphs() {
    return table("maxp").getShort(MAXP_GLYPHS) & 0xFFFF;
  }

  /** A length of the face in thousandths of its size. */
  private float scaled(int units) {
    return units * 1000f / (table("head").getShort(HEAD_UNITS) & 0xFFFF);
  }

  /** How far a glyph moves the pen, in thousandths of its size. */
  float advance(int glyph) {
    int last = (table("hhea").getShort(HHEA_METRICS) & 0xFFFF) - 1;
    return scaled(table("hmtx").getShort(4 * Math.min(glyph, last)) & 0xFFFF);
  }

  /** In thousandths of its size. */
  float ascent() {
    return scaled(table("hhea").getShort(HHEA_ASCENT));
  }

  /** In thousandths of its size, negative below the line. */
  float descent() {
    return scaled(table("hhea").getShort(HHEA_ASCENT + 2));
  }

  /** Left, low, right and high, in thousandths of its size. */
  float[] box() {
    float[] box = new float[4];
    for (int i = 0; i < box.length; i++) {
      box[i] = scaled(table("head").getShort(HEAD_BOX + 2 * i));
    }
    return box;
  }

  private int[] offsets() {
    boolean wide = table("head").getShort(HEAD_LOCA) != 0;
    ByteBuffer loca = table("loca");
    int[] offsets = new int[glyphs() + 1];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = wide ? loca.getInt(4 * i) : 2 * (loca.getShort(2 * i) & 0xFFFF);
    }
    return offsets;
  }

  /**
   * The face with the outlines of some glyphs; each keeps its number.
   *
   * @param wanted the glyphs
   * @return a file of the tables that a reader draws by
   */
  byte[] subset(SortedSet<Integer> wanted) {
    int[] from = offsets();
    ByteBuffer glyf = table("glyf");
    NavigableSet<Integer> used = withParts(wanted, glyf, from);
    ByteArrayOutputStream outlines = new ByteArrayOutputStream();
    ByteBuffer loca = ByteBuffer.allocate(4 * from.length);
    for (int glyph = 0; glyph + 1 < from.length; glyph++) {
      loca.putInt(outlines.size());
      if (used.contains(glyph)) {
        outlines.write(glyf.array(), from[glyph], from[glyph + 1] - from[glyph]);
        while (outlines.size() % 4 != 0) {
          outlines.write(0);
        }
      }
    }
    loca.putInt(outlines.size());
    Map<String, byte[]> kept = new TreeMap<>();
    for (String tag : KEPT) {
      kept.put(tag, table(tag).array().clone());
    }
    ByteBuffer.wrap(kept.getOrDefault("head", new byte[0])).putShort(HEAD_LOCA, (short) 1);
    kept.put("hmtx", metrics(used));
    kept.put("loca", loca.array());
    kept.put("glyf", outlines.toByteArray());
    return new TrueTypeWriter(kept).file();
  }

  /** The widths of glyphs that are left out are left out too, which packs better. */
  private byte[] metrics(NavigableSet<Integer> used) {
    byte[] metrics = table("hmtx").array().clone();
    int full = table("hhea").getShort(HHEA_METRICS) & 0xFFFF;
    for (int glyph = 0; glyph < full - 1; glyph++) {
      if (!used.contains(glyph)) {
        Arrays.fill(metrics, 4 * glyph, 4 * glyph + 4, (byte) 0);
      }
    }
    return metrics;
  }

  private static final int ARE_WORDS = 1;
  private static final int HAS_SCALE = 8;
  private static final int MORE = 0x20;
  private static final int HAS_TWO_SCALES = 0x40;
  private static final int HAS_MATRIX = 0x80;

  /** With the glyphs that they are put together from, and the one for a missing letter. */
  private static NavigableSet<Integer> withParts(
      SortedSet<Integer> wanted, ByteBuffer glyf, int[] from) {
    NavigableSet<Integer> all = new TreeSet<>();
    Deque<Integer> open = new ArrayDeque<>(wanted);
    open.add(0);
    while (!open.isEmpty()) {
      int glyph = open.pop();
      boolean blank = glyph + 1 >= from.length || from[glyph] == from[glyph + 1];
      if (all.add(glyph) && !blank && glyf.getShort(from[glyph]) < 0) {
        addParts(glyf, from[glyph] + 10, open);
      }
    }
    return all;
  }

  private static void addParts(ByteBuffer glyf, int first, Deque<Integer> open) {
    int at = first;
    int flags = MORE;
    while ((flags & MORE) != 0) {
      flags = glyf.getShort(at);
      open.add(glyf.getShort(at + 2) & 0xFFFF);
      at += 4 + ((flags & ARE_WORDS) != 0 ? 4 : 2);
      if ((flags & HAS_SCALE) != 0) {
        at += 2;
      } else if ((flags & HAS_TWO_SCALES) != 0) {
        at += 4;
      } else if ((flags & HAS_MATRIX) != 0) {
        at += 8;
      }
    }
  }
}
