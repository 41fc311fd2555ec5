package clenchbook.print.scripts;

import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;

/**
 * A form of a document that is written apart: the PDF library puts it into the page's resources and
 * leaves its content to us.
 */
final class GlyphForm extends PdfTemplate {
  /** None of the kinds that the library writes. */
  private static final int WRITTEN_APART = 100;

  GlyphForm(PdfWriter writer) {
    super();
    type = WRITTEN_APART;
    thisReference = writer.getPdfIndirectReference();
  }
}
