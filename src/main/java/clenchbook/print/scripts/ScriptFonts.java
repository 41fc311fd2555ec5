package clenchbook.print.scripts;

import clenchbook.print.fonts.ScriptFace;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import net.sf.jasperreports.engine.fonts.FontInfo;
import org.jspecify.annotations.Nullable;

/** The further faces of one document; not thread-safe. */
public final class ScriptFonts {
  private final PdfWriter writer;
  private final int compression;
  private final Aloud aloud;
  private final Map<ScriptFace, GlyphFont> plain = new EnumMap<>(ScriptFace.class);
  private final Map<ScriptFace, GlyphFont> bold = new EnumMap<>(ScriptFace.class);

  /**
   * Faces for one document.
   *
   * @param writer the document
   * @param compression how hard they are packed, as for {@link java.util.zip.Deflater}
   * @param aloud takes what is spoken otherwise than seen
   */
  public ScriptFonts(PdfWriter writer, int compression, Aloud aloud) {
    this.writer = writer;
    this.compression = compression;
    this.aloud = aloud;
  }

  /**
   * The script of a run of letters.
   *
   * @param font what the report library chose for the run; null where it had no choice
   * @return empty for the text faces
   */
  public static Optional<ScriptFace> script(@Nullable FontInfo font) {
    return font != null && font.getFontFamily() instanceof ProgramFamily family
        ? family.script()
        : Optional.empty();
  }

  Aloud aloud() {
    return aloud;
  }

  GlyphFont font(ScriptFace face, boolean heavy) {
    boolean own = heavy && face.hasBold();
    return (own ? bold : plain)
        .computeIfAbsent(face, each -> new GlyphFont(writer, each, own, compression));
  }

  /** A form with that content, which draws with one face. */
  GlyphForm form(byte[] content, GlyphFont font, String box) {
    GlyphForm form = new GlyphForm(writer);
    PdfStream stream = new PdfStream(content);
    stream.put(PdfName.TYPE, PdfName.XOBJECT);
    stream.put(PdfName.SUBTYPE, PdfName.FORM);
    stream.put(PdfName.BBOX, new PdfLiteral(box));
    PdfDictionary fonts = new PdfDictionary();
    fonts.put(new PdfName("F"), font.reference());
    PdfDictionary resources = new PdfDictionary();
    resources.put(PdfName.FONT, fonts);
    stream.put(PdfName.RESOURCES, resources);
    try {
      stream.flateCompress(compression);
      writer.addToBody(stream, form.getIndirectReference());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return form;
  }

  /** Embeds what was drawn; called once, before the document is closed. */
  public void finish() {
    try {
      for (GlyphFont font : plain.values()) {
        font.finish();
      }
      for (GlyphFont font : bold.values()) {
        font.finish();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
