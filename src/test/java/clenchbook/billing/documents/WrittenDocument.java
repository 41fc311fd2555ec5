package clenchbook.billing.documents;

import clenchbook.billing.documents.BilledDocument.Kind;
import clenchbook.jobs.WrittenRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/**
 * A document written down in a test as {@code "Number: 2026-0001, Gross: 50"}: an issued invoice of
 * Ruth's dated the last day of its month and due on that day, without lines, where not said.
 */
public final class WrittenDocument {
  private WrittenDocument() {}

  /** An invoice, or with {@code Corrects} a credit note, whose Gross is then below zero. */
  public static BilledDocument of(String text) {
    WrittenRow row = new WrittenRow("Documents", 0, 0, text);
    String number = row.text("Number");
    YearMonth month = YearMonth.parse(row.text("Month").isEmpty() ? "2026-10" : row.text("Month"));
    LocalDate date = row.day("Date").orElse(month.atEndOfMonth());
    BigDecimal gross = row.number("Gross").orElse(BigDecimal.ZERO);
    return new BilledDocument(
        number,
        row.text("Series").isEmpty() ? number.substring(0, 4) : row.text("Series"),
        row.number("Sequence")
            .map(BigDecimal::intValue)
            .orElse(Integer.valueOf(number.substring(5))),
        row.text("Corrects").isEmpty() ? Kind.INVOICE : Kind.CREDIT_NOTE,
        row.text("Owner").isEmpty() ? "Ruth" : row.text("Owner"),
        month,
        date,
        row.day("Due").orElse(date),
        row.text("Corrects"),
        row.choice(DocumentState.class, "State").orElse(DocumentState.ISSUED),
        List.of(),
        List.of(),
        gross,
        BigDecimal.ZERO,
        gross);
  }

  /** The document as a version before owners stood in a visit's key left it. */
  public static BilledDocument withoutOwnersOfVisits(BilledDocument document) {
    return document.bearing(
        document.lines().stream().map(line -> line.of(withoutOwner(line.visit()))).toList());
  }

  private static VisitKey withoutOwner(VisitKey visit) {
    return new VisitKey(visit.date(), visit.horse(), visit.work(), "", visit.occurrence());
  }
}
