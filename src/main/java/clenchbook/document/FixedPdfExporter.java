package clenchbook.document;

import com.lowagie.text.Font;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.OutputStream;
import java.text.AttributedCharacterIterator;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.zip.Deflater;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.pdf.JRPdfExporter;
import net.sf.jasperreports.pdf.classic.ClassicPdfProducer;
import net.sf.jasperreports.pdf.common.PdfDocumentWriter;
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

  FixedPdfExporter(JasperReportsContext context, LocalDate day, String language) {
    super(context);
    this.day = day;
    this.language = language;
  }

  @Override
  protected PdfProducer createPdfProducer() {
    return new FixedProducer(createPdfProducerContext());
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

  private void settle(PdfWriter writer) {
    writer.setCompressionLevel(COMPRESSION);
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString(language, PdfString.TEXT_UNICODE));
    GregorianCalendar noon = GregorianCalendar.from(day.atTime(12, 0).atZone(ZoneOffset.UTC));
    PdfDictionary information = writer.getInfo();
    information.put(PdfName.CREATIONDATE, new PdfDate(noon));
    information.put(PdfName.MODDATE, new PdfDate(noon));
  }
}
