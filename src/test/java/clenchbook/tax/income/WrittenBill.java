package clenchbook.tax.income;

import clenchbook.book.PaymentKind;
import clenchbook.book.SourceRow;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Bills and receipts of Ruth's written down in a test. */
final class WrittenBill {
  private WrittenBill() {}

  /** A line at 20 % or, where its tax is 0.00, without a tax code. */
  static BilledLine line(int row, String day, String net, String tax) {
    BigDecimal part = new BigDecimal(tax);
    boolean taxed = part.signum() != 0;
    return new BilledLine(
        "Visits",
        row,
        LocalDate.parse(day),
        "",
        taxed ? "S" : "",
        new BigDecimal(taxed ? "20" : "0"),
        new BigDecimal(net),
        part);
  }

  static Billed invoice(String number, String day, BilledLine... lines) {
    return bill(Billed.Standing.INVOICE, number, day, lines);
  }

  static Billed creditNote(String number, String day, BilledLine... lines) {
    return bill(Billed.Standing.CREDIT_NOTE, number, day, lines);
  }

  static Billed bill(Billed.Standing standing, String number, String day, BilledLine... lines) {
    return new Billed(standing, number, LocalDate.parse(day), "Ruth", List.of(lines));
  }

  static Receipt payment(int row, String day, String amount) {
    return receipt("Payments", row, day, amount, "", false);
  }

  static Receipt naming(String invoice) {
    return receipt("Payments", 2, "2026-04-10", "60", invoice, false);
  }

  static Receipt atTruck(String sheet, int row) {
    return receipt(sheet, row, "2026-03-02", "60", "", true);
  }

  private static Receipt receipt(
      String sheet, int row, String day, String amount, String invoice, boolean atTruck) {
    return new Receipt(
        new SourceRow(sheet, 0, row, Map.of()),
        LocalDate.parse(day),
        "Ruth",
        PaymentKind.PAYMENT,
        new BigDecimal(amount),
        invoice,
        atTruck);
  }
}
