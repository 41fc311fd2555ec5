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
import java.util.stream.Stream;

/**
 * The digest of a stored document: of all that it says, of its PDF and of its structured invoice,
 * its state left out.
 */
final class DocumentDigest {
  private final MessageDigest digest;
  private final boolean whole;

  private DocumentDigest(boolean whole) {
    this.whole = whole;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** What is stored of a document besides its words; no bytes where there is no such file. */
  record Files(byte[] pdf, byte[] eInvoice) {}

  /** SHA-256 in hexadecimal digits. */
  static String of(BilledDocument document, Files files) {
    DocumentDigest all = new DocumentDigest(true);
    all.words(document, document.taxes());
    all.add(List.of(files.pdf().length));
    all.digest.update(files.pdf());
    all.digest.update(files.eInvoice());
    return all.inHex();
  }

  /**
   * The digests that registers may have kept up to version 4, without the kinds and reasons of
   * taxes and without the structured invoice. Version 3 wrote an exempt owner's tax under the rate
   * of its lines, where zero stands now.
   */
  static List<String> untilVersion4(BilledDocument document, byte[] pdf) {
    return Stream.of(document.taxes(), ratesOfLines(document))
        .map(
            taxes -> {
              DocumentDigest all = new DocumentDigest(false);
              all.words(document, taxes);
              all.digest.update(pdf);
              return all.inHex();
            })
        .toList();
  }

  private static List<TaxTotal> ratesOfLines(BilledDocument document) {
    return document.taxes().stream().map(total -> atRateOfLines(total, document)).toList();
  }

  private static TaxTotal atRateOfLines(TaxTotal total, BilledDocument document) {
    return document.lines().stream()
        .map(DocumentLine::tax)
        .filter(tax -> tax.exempt() && tax.code().equals(total.code()))
        .findFirst()
        .map(
            tax ->
                new TaxTotal(
                    total.code(),
                    total.name(),
                    tax.ratePercent(),
                    total.net(),
                    total.tax(),
                    total.category(),
                    total.reason()))
        .orElse(total);
  }

  private void words(BilledDocument document, List<TaxTotal> taxes) {
    head(document);
    document.lines().forEach(this::line);
    taxes.forEach(this::total);
  }

  private String inHex() {
    return HexFormat.of().formatHex(digest.digest());
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
    if (whole) {
      add(List.of(line.tax().kind(), line.tax().reason()));
    }
  }

  private void total(TaxTotal total) {
    add(DocumentValues.total(total));
    if (whole) {
      add(List.of(total.category(), total.reason()));
    }
  }

  private void add(List<Object> values) {
    for (Object value : values) {
      digest.update(value.toString().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
    }
    digest.update((byte) 1);
  }
}
