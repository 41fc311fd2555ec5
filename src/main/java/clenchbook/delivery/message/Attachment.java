package clenchbook.delivery.message;

/**
 * A file that goes with a mail.
 *
 * @param fileName the name the owner sees, without a folder
 * @param mediaType such as {@code application/pdf}
 * @param bytes the file; copied in and out
 */
public record Attachment(String fileName, String mediaType, byte[] bytes) {
  /**
   * @throws IllegalArgumentException where the name is blank, holds a folder, a control character
   *     or a direction mark, or the type is no media type
   */
  public Attachment {
    HeaderText.requireSafe("a file name", fileName);
    if (fileName.isBlank() || fileName.indexOf('/') >= 0 || fileName.indexOf('\\') >= 0) {
      throw new IllegalArgumentException("an attachment's name is a plain file name");
    }
    if (!mediaType.matches("[a-z]+/[a-z0-9.+-]+")) {
      throw new IllegalArgumentException("not a media type: " + mediaType);
    }
    bytes = bytes.clone();
  }

  /** A PDF under the given name. */
  public static Attachment pdf(String fileName, byte[] bytes) {
    return new Attachment(fileName, "application/pdf", bytes);
  }

  /**
   * A file whose kind its name tells.
   *
   * @param fileName the name, ending in {@code .xml} for a structured invoice
   * @param bytes the file
   * @return a structured invoice, else a PDF
   */
  public static Attachment of(String fileName, byte[] bytes) {
    return fileName.endsWith(".xml")
        ? new Attachment(fileName, "application/xml", bytes)
        : pdf(fileName, bytes);
  }

  /** The file's bytes, a fresh copy. */
  @Override
  public byte[] bytes() {
    return bytes.clone();
  }

  /** The name and the size; never the content. */
  @Override
  public String toString() {
    return fileName + " (" + bytes.length + " bytes)";
  }
}
