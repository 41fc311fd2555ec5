package clenchbook.print.pdf;

import clenchbook.print.archive.ArchiveForm;
import clenchbook.print.archive.ArchiveWriter;
import clenchbook.print.scripts.ScriptFonts;
import clenchbook.print.tags.PageTags;
import clenchbook.print.tags.TagNotes;
import com.lowagie.text.Font;
import com.lowagie.text.Image;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfBorderArray;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.font.TextAttribute;
import java.io.IOException;
import java.io.OutputStream;
import java.text.AttributedCharacterIterator;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.Deflater;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JRLineBox;
import net.sf.jasperreports.engine.JRPrintImage;
import net.sf.jasperreports.engine.JRPrintText;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.type.ModeEnum;
import net.sf.jasperreports.engine.type.RotationEnum;
import net.sf.jasperreports.engine.util.JRLoader;
import net.sf.jasperreports.engine.util.JRStyledText;
import net.sf.jasperreports.engine.util.JRTextAttribute;
import net.sf.jasperreports.pdf.AbstractPdfTextRenderer;
import net.sf.jasperreports.pdf.JRPdfExporter;
import net.sf.jasperreports.pdf.classic.ClassicImage;
import net.sf.jasperreports.pdf.classic.ClassicPdfProducer;
import net.sf.jasperreports.pdf.common.PdfContent;
import net.sf.jasperreports.pdf.common.PdfDocumentWriter;
import net.sf.jasperreports.pdf.common.PdfImage;
import net.sf.jasperreports.pdf.common.PdfProducer;
import net.sf.jasperreports.pdf.common.PdfProducerContext;
import net.sf.jasperreports.pdf.common.PdfTaggerFactory;
import net.sf.jasperreports.pdf.common.PdfTextRendererContext;
import org.jspecify.annotations.Nullable;

/**
 * Writes a filled report as PDF that lasts and can be read aloud, with the document's day for the
 * clock's.
 */
final class FixedPdfExporter extends JRPdfExporter {
  /**
   * The quickest: packing the embedded fonts harder would take a tenth of an invoice's time to save
   * a twentieth of its size.
   */
  private static final int COMPRESSION = Deflater.BEST_SPEED;

  /** What a document is, beyond its pages. */
  record About(
      String title,
      String author,
      String language,
      LocalDate day,
      ArchiveForm form,
      boolean outline) {}

  private final About about;
  private final TagNotes notes;
  private final PageTags tags;

  FixedPdfExporter(JasperReportsContext context, About about, TagNotes notes) {
    super(context);
    this.about = about;
    this.notes = notes;
    this.tags = new PageTags(notes);
  }

  @Override
  protected PdfProducer createPdfProducer() {
    return new FixedProducer(createPdfProducerContext());
  }

  @Override
  protected PdfTaggerFactory getPdfTaggerFactory(Boolean isTagged) {
    return exporter -> tags;
  }

  /** As the library's, without turning the paper for texts that are not turned. */
  @Override
  public void exportText(JRPrintText text) {
    if (text.getRotation() != RotationEnum.NONE || text.getForecolor().getAlpha() != OPAQUE) {
      super.exportText(text);
      return;
    }
    JRStyledText styled = styledTextUtil.getProcessedStyledText(text, noBackcolorSelector, null);
    if (styled == null) {
      return;
    }
    AbstractPdfTextRenderer renderer = getTextRenderer(text, styled);
    renderer.initialize(this, pdfProducer, tags, text, styled, getOffsetX(), getOffsetY());
    if (text.getMode() == ModeEnum.OPAQUE) {
      tags.beginArtifact();
      pdfContent.setFillColor(text.getBackcolor());
      pdfContent.fillRectangle(
          renderer.getX(),
          pageFormat.getPageHeight() - renderer.getY(),
          renderer.getWidth(),
          -renderer.getHeight());
      tags.endArtifact();
    }
    if (styled.length() > 0) {
      renderer.render();
    }
    if (hasBox(text.getLineBox())) {
      tags.beginArtifact();
      exportBox(text.getLineBox(), text);
      tags.endArtifact();
    }
  }

  private static final int OPAQUE = 255;

  private static boolean hasBox(JRLineBox box) {
    return box.getTopPen().getLineWidth() > 0
        || box.getLeftPen().getLineWidth() > 0
        || box.getBottomPen().getLineWidth() > 0
        || box.getRightPen().getLineWidth() > 0;
  }

  /** The library would decode a picture of one point to stand for one that is absent. */
  @Override
  public void exportImage(JRPrintImage image) throws IOException, JRException {
    if (image.getRenderer() != null || image.getMode() == ModeEnum.OPAQUE) {
      super.exportImage(image);
    }
  }

  /** The picture of one point that the library puts under each other one, decoded only once. */
  @Override
  protected PdfImage getPxImage() {
    if (pxImage == null) {
      pxImage = new ClassicImage(Image.getInstance(Point.PICTURE));
    }
    return pxImage;
  }

  private static final class Point {
    static final Image PICTURE = load();

    private static Image load() {
      String file = "net/sf/jasperreports/engine/images/white-transparent-pixel.png";
      try {
        return Image.getInstance(JRLoader.loadBytesFromResource(file));
      } catch (IOException | JRException e) {
        throw new IllegalStateException("the report library is damaged", e);
      }
    }
  }

  private final class FixedProducer extends ClassicPdfProducer implements LineRenderer.Paper {
    private final Map<List<Object>, Font> faces = new HashMap<>();
    private @Nullable JRPrintText text;
    private @Nullable ScriptFonts scripts;
    private Locale locale = Locale.ROOT;

    FixedProducer(PdfProducerContext context) {
      super(context);
    }

    @Override
    public PdfDocumentWriter createWriter(OutputStream out) throws JRException {
      PdfDocumentWriter created = super.createWriter(out);
      settle(getPdfWriter());
      return created;
    }

    @Override
    public PdfContent createPdfContent() {
      archive(getPdfWriter()).complete();
      return super.createPdfContent();
    }

    @Override
    public AbstractPdfTextRenderer getTextRenderer(PdfTextRendererContext of) {
      text = of.getPrintText();
      locale = of.getTextLocale();
      return new LineRenderer(getContext().getJasperReportsContext(), of, this);
    }

    @Override
    public Font font(Map<AttributedCharacterIterator.Attribute, Object> attributes) {
      List<@Nullable Object> key =
          Arrays.asList(
              attributes.get(JRTextAttribute.FONT_INFO),
              attributes.get(TextAttribute.FAMILY),
              attributes.get(TextAttribute.SIZE),
              attributes.get(TextAttribute.WEIGHT),
              attributes.get(TextAttribute.POSTURE),
              attributes.get(TextAttribute.FOREGROUND));
      Font known = faces.get(key);
      if (known == null) {
        known = getFont(attributes, locale);
        faces.put(key, known);
      }
      return known;
    }

    @Override
    public PdfContentByte content() {
      return getPdfContentByte();
    }

    @Override
    public ScriptFonts scripts() {
      if (scripts == null) {
        scripts = new ScriptFonts(getPdfWriter(), COMPRESSION, tags);
      }
      return scripts;
    }

    @Override
    public int height() {
      return pageFormat.getPageHeight();
    }

    @Override
    public void wrote(float left, float low, float right, float high) {
      if (text != null) {
        tags.link(text).ifPresent(address -> link(address, left, low, right, high));
      }
    }

    private void link(String address, float left, float low, float right, float high) {
      PdfAnnotation link =
          new PdfAnnotation(getPdfWriter(), left, low, right, high, new PdfAction(address));
      link.put(PdfName.F, new PdfNumber(PdfAnnotation.FLAGS_PRINT));
      link.put(PdfName.BORDER, new PdfBorderArray(0, 0, 0));
      link.put(PdfName.CONTENTS, new PdfString(address, PdfString.TEXT_UNICODE));
      tags.annotate(link);
    }

    @Override
    public Font getFont(
        Map<AttributedCharacterIterator.Attribute, Object> attributes, Locale locale) {
      Font font = super.getFont(attributes, locale);
      BaseFont embedded = font.getBaseFont();
      if (embedded != null) {
        embedded.setCompressionLevel(COMPRESSION);
        embedded.setSecureRandom(FixedPrefix.ALWAYS);
      }
      return font;
    }

    @Override
    public void close() {
      if (about.outline()) {
        outline();
      }
      tags.finish();
      if (scripts != null) {
        scripts.finish();
      }
      super.close();
    }

    /** The headings beneath the title, each leading to its place. */
    private void outline() {
      PdfOutline root = getPdfContentByte().getRootOutline();
      PdfOutline section = root;
      for (TagNotes.Heading heading : notes.headings()) {
        PdfAction to =
            PdfAction.gotoLocalPage(
                heading.page() + 1,
                new PdfDestination(PdfDestination.XYZ, 0, height() - heading.top(), 0),
                getPdfWriter());
        if (heading.level() == 2) {
          section = new PdfOutline(root, to, heading.text());
        } else if (heading.level() > 2) {
          new PdfOutline(section, to, heading.text());
        }
      }
    }
  }

  private ArchiveWriter archive(PdfWriter writer) {
    return new ArchiveWriter(writer, about.form(), about.day());
  }

  private void settle(PdfWriter writer) {
    writer.setCompressionLevel(COMPRESSION);
    writer.setTagged();
    archive(writer).describe(about.title(), about.author(), about.language());
    writer
        .getExtraCatalog()
        .put(PdfName.LANG, new PdfString(about.language(), PdfString.TEXT_UNICODE));
    PdfDictionary information = writer.getInfo();
    information.put(PdfName.CREATIONDATE, ArchiveWriter.noon(about.day()));
    information.put(PdfName.MODDATE, ArchiveWriter.noon(about.day()));
  }
}
