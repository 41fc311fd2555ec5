package clenchbook.tax.income;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.PaymentKind;
import clenchbook.book.SourceRow;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReceiptTaxTest {
  private static final MinorUnit CENTS = new MinorUnit(2);
  private static final LocalDate DAY = LocalDate.of(2026, 1, 31);

  private static Billed bill(String number, String net, String tax) {
    BilledLine line =
        new BilledLine(
            "Visits",
            2,
            DAY,
            "",
            "S",
            new BigDecimal("20"),
            new BigDecimal(net),
            new BigDecimal(tax));
    boolean credit = new BigDecimal(net).signum() < 0;
    Billed.Standing standing = credit ? Billed.Standing.CREDIT_NOTE : Billed.Standing.INVOICE;
    return new Billed(standing, number, DAY, "Ash", List.of(line));
  }

  private static Receipt receipt(int row, PaymentKind kind, String amount, String invoice) {
    SourceRow source = new SourceRow("Payments", 4, row, Map.of());
    return new Receipt(
        source, DAY.plusDays(row), "Ash", kind, new BigDecimal(amount), invoice, false);
  }

  @Test
  void a_bill_paid_in_full_has_given_up_its_tax_to_the_cent() {
    Receipt first = receipt(2, PaymentKind.PAYMENT, "33.33", "");
    Receipt second = receipt(3, PaymentKind.PAYMENT, "66.68", "");
    ReceiptTax tax =
        ReceiptTax.of(
            List.of(first, second),
            List.of(bill("1", "83.34", "16.67")),
            LocalDate::getYear,
            CENTS);
    assertEquals(new BigDecimal("5.56"), tax.taxOf(first));
    assertEquals(new BigDecimal("11.11"), tax.taxOf(second));
    assertEquals(0, tax.unmatched(second).signum());
  }

  @Test
  void a_payment_pays_the_bill_it_names_before_the_oldest() {
    Receipt named = receipt(2, PaymentKind.PAYMENT, "50", "2");
    ReceiptTax tax =
        ReceiptTax.of(
            List.of(named),
            List.of(bill("1", "100.00", "20.00"), bill("2", "50.00", "0.00")),
            LocalDate::getYear,
            CENTS);
    assertEquals(0, tax.taxOf(named).signum());
  }

  @Test
  void what_no_bill_takes_bears_no_tax_and_goes_back_first() {
    Receipt paid = receipt(2, PaymentKind.PAYMENT, "150", "");
    Receipt back = receipt(3, PaymentKind.REFUND, "42", "");
    ReceiptTax tax =
        ReceiptTax.of(
            List.of(paid, back), List.of(bill("1", "100.00", "20.00")), LocalDate::getYear, CENTS);
    assertEquals(new BigDecimal("20.00"), tax.taxOf(paid));
    assertEquals(0, new BigDecimal("30").compareTo(tax.unmatched(paid)));
    assertEquals(new BigDecimal("-2.00"), tax.taxOf(back));
    assertEquals(0, new BigDecimal("-30").compareTo(tax.unmatched(back)));
  }

  @Test
  void a_credit_note_takes_its_part_of_the_tax_away() {
    Receipt paid = receipt(2, PaymentKind.PAYMENT, "60", "");
    ReceiptTax tax =
        ReceiptTax.of(
            List.of(paid),
            List.of(bill("1", "100.00", "20.00"), bill("2", "-50.00", "-10.00")),
            LocalDate::getYear,
            CENTS);
    assertEquals(new BigDecimal("10.00"), tax.taxOf(paid));
  }

  /** A hundred seeded runs: any number of part payments that pay a bill add to its tax. */
  @Test
  void part_payments_add_to_the_tax_whatever_their_size() {
    Random random = new Random(20260131);
    for (int run = 0; run < 100; run++) {
      BigDecimal net = BigDecimal.valueOf(1 + random.nextInt(50_000), 2);
      BigDecimal tax = CENTS.round(net.multiply(new BigDecimal("0.2")));
      List<Receipt> receipts = parts(net.add(tax), random);
      ReceiptTax found =
          ReceiptTax.of(
              receipts,
              List.of(bill("1", net.toPlainString(), tax.toPlainString())),
              LocalDate::getYear,
              CENTS);
      BigDecimal sum = receipts.stream().map(found::taxOf).reduce(BigDecimal.ZERO, BigDecimal::add);
      assertEquals(0, tax.compareTo(sum), "run " + run + ", net " + net);
    }
  }

  private static List<Receipt> parts(BigDecimal whole, Random random) {
    List<Receipt> receipts = new ArrayList<>();
    BigDecimal left = whole;
    for (int row = 2; left.signum() > 0; row++) {
      BigDecimal part =
          row > 8 ? left : left.min(BigDecimal.valueOf(1 + random.nextInt(20_000), 2));
      receipts.add(receipt(row, PaymentKind.PAYMENT, part.toPlainString(), ""));
      left = left.subtract(part);
    }
    return receipts;
  }
}
