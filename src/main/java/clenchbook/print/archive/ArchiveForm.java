package clenchbook.print.archive;

import java.util.Optional;

/**
 * How a document is made to last: the part of PDF/A it keeps to, always at level B, and what is
 * embedded in it.
 *
 * @param part 2, or 3 where a file is embedded
 * @param attachment the embedded file; empty for none
 * @param schemas descriptions of further XMP schemas, each an element {@code rdf:li} of {@code
 *     pdfaExtension:schemas}; empty for none
 * @param metadata what is said in those schemas, each an element {@code rdf:Description}; empty for
 *     none
 */
public record ArchiveForm(
    int part, Optional<Attachment> attachment, String schemas, String metadata) {
  /** Without an embedded file. */
  public static final ArchiveForm PLAIN = new ArchiveForm(2, Optional.empty(), "", "");

  /** Only part 3 lets any kind of file be embedded. */
  public ArchiveForm {
    if ((part != 2 && part != 3) || (part == 2 && attachment.isPresent())) {
      throw new IllegalArgumentException("PDF/A-" + part + " with " + attachment);
    }
  }

  /**
   * A file inside a document.
   *
   * @param name its name, such as {@code factur-x.xml}
   * @param kind its media type, such as {@code text/xml}
   * @param relation what it is to the document, in the words of PDF/A-3: {@code Alternative},
   *     {@code Data}, {@code Source}, {@code Supplement}
   * @param description one line for people
   * @param content its bytes; copied
   */
  public record Attachment(
      String name, String kind, String relation, String description, byte[] content) {
    /** Copies the content. */
    public Attachment {
      content = content.clone();
    }

    @Override
    public byte[] content() {
      return content.clone();
    }
  }
}
