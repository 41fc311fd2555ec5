package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

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
    add(
        document.number(),
        document.series(),
        document.sequence(),
        document.kind(),
        document.owner(),
        document.month(),
        document.date(),
        document.due(),
        document.corrects(),
        document.net().toPlainString(),
        document.tax().toPlainString(),
        document.gross().toPlainString());
  }

  private void line(DocumentLine line) {
    add(
        line.visit().line(),
        line.formerly(),
        line.own(),
        line.sheet(),
        line.row(),
        line.horse(),
        line.work(),
        line.kind(),
        line.part(),
        line.item(),
        line.count(),
        line.shoeing(),
        line.reason(),
        line.sharePercent().toPlainString(),
        line.discountPercent().toPlainString(),
        line.amount().toPlainString(),
        line.net().toPlainString(),
        line.tax().code(),
        line.tax().name(),
        line.tax().ratePercent().toPlainString(),
        line.tax().exempt(),
        line.tax().included());
  }

  private void total(TaxTotal total) {
    add(
        total.code(),
        total.name(),
        total.ratePercent().toPlainString(),
        total.net().toPlainString(),
        total.tax().toPlainString());
  }

  private void add(Object... values) {
    for (Object value : values) {
      digest.update(value.toString().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
    }
    digest.update((byte) 1);
  }
}
