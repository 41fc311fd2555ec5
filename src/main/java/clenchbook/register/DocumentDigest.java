package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** The digest of a stored document: of all that it says and of its PDF, its state left out. */
final class DocumentDigest {
  private final MessageDigest digest;

  private DocumentDigest() {
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** SHA-256 in hexadecimal digits; a document without PDF is given no bytes. */
  static String of(BilledDocument document, byte[] pdf) {
    DocumentDigest all = new DocumentDigest();
    all.head(document);
    document.lines().forEach(all::line);
    document.taxes().forEach(all::total);
    all.digest.update(pdf);
    return HexFormat.of().formatHex(all.digest.digest());
  }

  private void head(BilledDocument document) {
    List<Object> values = new ArrayList<>(DocumentValues.head(document));
    values.addAll(DocumentValues.sums(document));
    add(values);
  }

  private void line(DocumentLine line) {
    List<Object> values = new ArrayList<>(List.of(line.visit().line(), line.formerly()));
    values.addAll(DocumentValues.line(line));
    add(values);
  }

  private void total(TaxTotal total) {
    add(DocumentValues.total(total));
  }

  private void add(List<Object> values) {
    for (Object value : values) {
      digest.update(value.toString().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
    }
    digest.update((byte) 1);
  }
}
