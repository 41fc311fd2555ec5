package clenchbook.print.scripts;

import clenchbook.print.fonts.ScriptFace;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A face of one document, of which the glyphs that were drawn are embedded when the document ends.
 * The PDF library embeds letters; a shaped text is made of glyphs, some of which are no letter's.
 *
 * <p>Source: ISO 32000-1:2008, 9.7 (composite fonts) and 9.10 (what a glyph means).
 */
final class GlyphFont {
  private static final Map<String, TrueTypeFile> FILES = new ConcurrentHashMap<>();
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  /** What a glyph means that is but a part of what the glyph before it means: nothing wide. */
  private static final String NOTHING = "\u200B";

  private final PdfWriter writer;
  private final String name;
  private final TrueTypeFile file;
  private final PdfIndirectReference reference;
  private final int compression;
  private final TreeMap<Integer, String> meanings = new TreeMap<>();

  GlyphFont(PdfWriter writer, ScriptFace face, boolean bold, int compression) {
    this.writer = writer;
    this.compression = compression;
    String resource = face.file(bold);
    // As the library names the embedded part of a face, and the same in each document.
    name = "AAAAAA+" + resource.substring(resource.lastIndexOf('/') + 1).replace(".ttf", "");
    file = FILES.computeIfAbsent(resource, GlyphFont::load);
    reference = writer.getPdfIndirectReference();
  }

  private static TrueTypeFile load(String resource) {
    try (InputStream in = GlyphFont.class.getResourceAsStream("/" + resource)) {
      if (in == null) {
        throw new IOException("font missing from the program: " + resource);
      }
      return new TrueTypeFile(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  PdfIndirectReference reference() {
    return reference;
  }

  float ascent() {
    return file.ascent();
  }

  float descent() {
    return file.descent();
  }

  /**
   * Notes that a glyph is drawn.
   *
   * @param glyph its number
   * @param meaning the letters it stands for; empty where the glyph before it stands for them too
   */
  void uses(int glyph, String meaning) {
    meanings.merge(
        glyph, meaning.isEmpty() ? NOTHING : meaning, (a, b) -> a.equals(NOTHING) ? b : a);
  }

  /** Writes the face; called once, before the document is closed. */
  void finish() throws IOException {
    PdfStream program = stream(file.subset(meanings.navigableKeySet()));
    PdfDictionary descriptor = new PdfDictionary(new PdfName("FontDescriptor"));
    descriptor.put(new PdfName("FontName"), new PdfName(name));
    descriptor.put(new PdfName("Flags"), new PdfNumber(4));
    descriptor.put(new PdfName("FontBBox"), new PdfLiteral(box()));
    descriptor.put(new PdfName("ItalicAngle"), new PdfNumber(0));
    descriptor.put(new PdfName("Ascent"), new PdfNumber(file.ascent()));
    descriptor.put(new PdfName("Descent"), new PdfNumber(file.descent()));
    descriptor.put(new PdfName("CapHeight"), new PdfNumber(file.ascent()));
    descriptor.put(new PdfName("StemV"), new PdfNumber(80));
    descriptor.put(new PdfName("FontFile2"), writer.addToBody(program).getIndirectReference());
    PdfDictionary descendant = new PdfDictionary(PdfName.FONT);
    descendant.put(PdfName.SUBTYPE, new PdfName("CIDFontType2"));
    descendant.put(PdfName.BASEFONT, new PdfName(name));
    descendant.put(
        new PdfName("CIDSystemInfo"),
        new PdfLiteral("<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>"));
    descendant.put(
        new PdfName("FontDescriptor"), writer.addToBody(descriptor).getIndirectReference());
    descendant.put(new PdfName("CIDToGIDMap"), new PdfName("Identity"));
    descendant.put(new PdfName("DW"), new PdfNumber(1000));
    descendant.put(new PdfName("W"), new PdfLiteral(widths()));
    PdfDictionary font = new PdfDictionary(PdfName.FONT);
    font.put(PdfName.SUBTYPE, new PdfName("Type0"));
    font.put(PdfName.BASEFONT, new PdfName(name));
    font.put(PdfName.ENCODING, new PdfName("Identity-H"));
    font.put(
        new PdfName("DescendantFonts"),
        new PdfLiteral("[" + writer.addToBody(descendant).getIndirectReference() + "]"));
    font.put(
        new PdfName("ToUnicode"), writer.addToBody(stream(toUnicode())).getIndirectReference());
    writer.addToBody(font, reference);
  }

  private PdfStream stream(byte[] content) {
    PdfStream stream = new PdfStream(content);
    stream.put(new PdfName("Length1"), new PdfNumber(content.length));
    stream.flateCompress(compression);
    return stream;
  }

  private String box() {
    float[] box = file.box();
    return String.format(Locale.ROOT, "[%.0f %.0f %.0f %.0f]", box[0], box[1], box[2], box[3]);
  }

  private String widths() {
    StringBuilder widths = new StringBuilder("[");
    for (int glyph : meanings.keySet()) {
      widths.append(
          String.format(Locale.ROOT, "%d[%s]", glyph, ShapedRun.number(file.advance(glyph))));
    }
    return widths.append(']').toString();
  }

  private byte[] toUnicode() {
    StringBuilder map = new StringBuilder();
    map.append("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n")
        .append("/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n")
        .append("/CMapName/Adobe-Identity-UCS def\n/CMapType 2 def\n")
        .append("1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n");
    int left = meanings.size();
    int inBlock = 0;
    for (Map.Entry<Integer, String> each : meanings.entrySet()) {
      if (inBlock == 0) {
        inBlock = Math.min(100, left);
        map.append(inBlock).append(" beginbfchar\n");
      }
      map.append('<').append(ShapedRun.hex(each.getKey())).append("><");
      map.append(HEX.formatHex(each.getValue().getBytes(StandardCharsets.UTF_16BE)));
      map.append(">\n");
      left--;
      inBlock--;
      if (inBlock == 0) {
        map.append("endbfchar\n");
      }
    }
    map.append("endcmap\nCMapName currentdict/CMap defineresource pop\nend\nend\n");
    return map.toString().getBytes(StandardCharsets.US_ASCII);
  }
}
