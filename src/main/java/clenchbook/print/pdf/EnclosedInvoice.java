package clenchbook.print.pdf;

import static java.time.format.DateTimeFormatter.BASIC_ISO_DATE;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.time.LocalDate;

/**
 * A structured invoice inside the PDF that shows it.
 *
 * <p>Source: Factur-X 1.08 / ZUGFeRD 2.4, technical appendix, PDF/A-3 and XMP; ISO 19005-3:2012,
 * section 6.8 and annex E (associated files).
 *
 * @param xml the structured invoice in UTF-8; not changed
 * @param day the document's day, which stands for the file's own time
 */
record EnclosedInvoice(byte[] xml, LocalDate day) {
  /** The name that readers look for. */
  static final String FILE_NAME = "factur-x.xml";

  private static final String DESCRIPTION = "Factur-X invoice";
  private static final String MEDIA_TYPE = "text/xml";
  private static final int COMPRESSION = 6;
  private static final PdfName RELATIONSHIP = new PdfName("AFRelationship");
  private static final PdfName ALTERNATIVE = new PdfName("Alternative");

  /** Puts the file into a document that is being written. */
  void encloseIn(PdfWriter writer) throws IOException {
    PdfDictionary facts = new PdfDictionary();
    facts.put(PdfName.MODDATE, new PdfString("D:" + day.format(BASIC_ISO_DATE) + "120000Z"));
    facts.put(PdfName.SIZE, new PdfNumber(xml.length));
    PdfFileSpecification file =
        PdfFileSpecification.fileEmbedded(
            writer, "", FILE_NAME, xml, MEDIA_TYPE, facts, COMPRESSION);
    file.setUnicodeFileName(FILE_NAME, false);
    file.addDescription(DESCRIPTION, true);
    file.put(RELATIONSHIP, ALTERNATIVE);
    writer.addFileAttachment(DESCRIPTION, file);
    writer.getExtraCatalog().put(PdfName.AF, new PdfArray(file.getReference()));
  }

  /**
   * What the document's metadata say of the file: its values, and the schema that explains them.
   *
   * @return two descriptions in XMP
   */
  static String metadata() {
    return """
    <rdf:Description rdf:about="" xmlns:fx="%1$s">
    <fx:DocumentType>INVOICE</fx:DocumentType>
    <fx:DocumentFileName>%2$s</fx:DocumentFileName>
    <fx:Version>1.0</fx:Version>
    <fx:ConformanceLevel>EN 16931</fx:ConformanceLevel>
    </rdf:Description>
    """
        .formatted(NAMESPACE, FILE_NAME);
  }

  private static final String NAMESPACE = "urn:factur-x:pdfa:CrossIndustryDocument:invoice:1p0#";

  /**
   * The entry that explains these values among a document's extension schemas.
   *
   * @return a list item in XMP
   */
  static String schema() {
    return """
    <rdf:li rdf:parseType="Resource">
    <pdfaSchema:schema>Factur-X PDFA Extension Schema</pdfaSchema:schema>
    <pdfaSchema:namespaceURI>%s</pdfaSchema:namespaceURI>
    <pdfaSchema:prefix>fx</pdfaSchema:prefix>
    <pdfaSchema:property><rdf:Seq>
    %s%s%s%s</rdf:Seq></pdfaSchema:property>
    </rdf:li>
    """
        .formatted(
            NAMESPACE,
            property("DocumentFileName", "The name of the embedded XML document"),
            property("DocumentType", "The type of the hybrid document in capital letters"),
            property("Version", "The version of the standard that the embedded XML follows"),
            property("ConformanceLevel", "The profile that the embedded XML follows"));
  }

  private static String property(String name, String what) {
    return """
    <rdf:li rdf:parseType="Resource">
    <pdfaProperty:name>%s</pdfaProperty:name>
    <pdfaProperty:valueType>Text</pdfaProperty:valueType>
    <pdfaProperty:category>external</pdfaProperty:category>
    <pdfaProperty:description>%s</pdfaProperty:description>
    </rdf:li>
    """
        .formatted(name, what);
  }
}
