package clenchbook.print.pdf;

import clenchbook.print.archive.ArchiveForm;
import java.util.Optional;

/**
 * A structured invoice inside the PDF that shows it.
 *
 * <p>Source: Factur-X 1.08 / ZUGFeRD 2.4, technical appendix, PDF/A-3 and XMP; ISO 19005-3:2012,
 * section 6.8 and annex E (associated files).
 */
final class EnclosedInvoice {
  /** The name that readers look for. */
  static final String FILE_NAME = "factur-x.xml";

  private static final String DESCRIPTION = "Factur-X invoice";
  private static final String MEDIA_TYPE = "text/xml";

  private EnclosedInvoice() {}

  /** How a document is made to last that holds the structured invoice. */
  static ArchiveForm formOf(byte[] xml) {
    return new ArchiveForm(
        3,
        Optional.of(
            new ArchiveForm.Attachment(FILE_NAME, MEDIA_TYPE, "Alternative", DESCRIPTION, xml)),
        schema(),
        metadata());
  }

  /**
   * What the document's metadata say of the file: its values.
   *
   * @return a description in XMP
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
