package clenchbook.print.pdf;

import static java.time.format.DateTimeFormatter.BASIC_ISO_DATE;

import com.lowagie.text.Font;
import com.lowagie.text.Image;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.text.AttributedCharacterIterator;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.Deflater;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JRPrintImage;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.type.ModeEnum;
import net.sf.jasperreports.engine.util.JRLoader;
import net.sf.jasperreports.pdf.JRPdfExporter;
import net.sf.jasperreports.pdf.classic.ClassicImage;
import net.sf.jasperreports.pdf.classic.ClassicPdfProducer;
import net.sf.jasperreports.pdf.common.PdfDocumentWriter;
import net.sf.jasperreports.pdf.common.PdfImage;
import net.sf.jasperreports.pdf.common.PdfPhrase;
import net.sf.jasperreports.pdf.common.PdfProducer;
import net.sf.jasperreports.pdf.common.PdfProducerContext;

/** Writes a filled report as PDF with its language, and with the document's day for the clock's. */
final class FixedPdfExporter extends JRPdfExporter {
  /**
   * The quickest: packing the embedded fonts harder would take a tenth of an invoice's time to save
   * a twentieth of its size.
   */
  private static final int COMPRESSION = Deflater.BEST_SPEED;

  private final LocalDate day;
  private final String language;
  private final Optional<EnclosedInvoice> enclosed;

  FixedPdfExporter(
      JasperReportsContext context,
      LocalDate day,
      String language,
      Optional<EnclosedInvoice> enclosed) {
    super(context);
    this.enclosed = enclosed;
    this.day = day;
    this.language = language;
  }

  @Override
  protected PdfProducer createPdfProducer() {
    return new FixedProducer(createPdfProducerContext());
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

  private final class FixedProducer extends ClassicPdfProducer {
    FixedProducer(PdfProducerContext context) {
      super(context);
    }

    @Override
    public PdfDocumentWriter createWriter(OutputStream out) throws JRException {
      PdfDocumentWriter created = super.createWriter(out);
      settle(getPdfWriter());
      return created;
    }

    /** The enclosed file comes last, when all pages are written. */
    @Override
    public void close() {
      enclosed.ifPresent(invoice -> enclose(invoice, getPdfWriter()));
      super.close();
    }

    @Override
    public PdfPhrase createPhrase() {
      return new PlainPhrase(this, new Phrase());
    }

    @Override
    public Font getFont(
        Map<AttributedCharacterIterator.Attribute, Object> attributes, Locale locale) {
      Font font = super.getFont(attributes, locale);
      BaseFont embedded = font.getBaseFont();
      if (embedded != null) {
        embedded.setCompressionLevel(COMPRESSION);
      }
      return font;
    }
  }

  private static void enclose(EnclosedInvoice invoice, PdfWriter writer) {
    try {
      invoice.encloseIn(writer);
    } catch (IOException e) {
      throw new IllegalStateException("bytes in memory can be read", e);
    }
  }

  private void settle(PdfWriter writer) {
    writer.setCompressionLevel(COMPRESSION);
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString(language, PdfString.TEXT_UNICODE));
    PdfString noon = new PdfString("D:" + day.format(BASIC_ISO_DATE) + "120000Z");
    PdfDictionary information = writer.getInfo();
    information.put(PdfName.CREATIONDATE, noon);
    information.put(PdfName.MODDATE, noon);
  }
}
