package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.accounts.EnteredPayments;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.book.SourceRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EnteredPaymentsTest {
  private static final LocalDate LAST = LocalDate.of(2026, 10, 31);

  private static Payment row(int month, int day, PaymentKind kind, String how) {
    return new Payment(
        new SourceRow("Payments", 1, 2, Map.of()),
        LocalDate.of(2026, month, day),
        "Ruth",
        BigDecimal.TEN,
        "",
        kind,
        how,
        "");
  }

  private static Optional<LocalDate> upTo(Payment... rows) {
    return EnteredPayments.upTo(List.of(rows), LAST);
  }

  private static Optional<LocalDate> day(int day) {
    return Optional.of(LocalDate.of(2026, 10, day));
  }

  @Test
  void the_latest_row_up_to_the_month_s_end_counts() {
    Payment first = row(10, 3, PaymentKind.PAYMENT, "");
    Payment second = row(10, 9, PaymentKind.REFUND, "transfer");
    assertEquals(day(9), upTo(second, first, row(11, 2, PaymentKind.PAYMENT, "")));
    assertEquals(Optional.empty(), upTo(row(11, 2, PaymentKind.PAYMENT, "")));
    assertEquals(Optional.empty(), upTo());
  }

  @Test
  void what_passed_from_hand_to_hand_says_nothing_of_the_bank() {
    Payment bank = row(10, 3, PaymentKind.PAYMENT, "transfer");
    assertEquals(day(3), upTo(bank, row(10, 20, PaymentKind.PAYMENT, "Cash")));
    assertEquals(day(3), upTo(bank, row(10, 20, PaymentKind.PAYMENT, "Bar")));
    assertEquals(day(20), upTo(row(10, 20, PaymentKind.PAYMENT, "cash")));
  }

  @Test
  void what_moves_no_money_does_not_count() {
    Payment bank = row(10, 3, PaymentKind.PAYMENT, "transfer");
    assertEquals(
        day(3),
        upTo(
            bank,
            row(10, 21, PaymentKind.WRITTEN_OFF, ""),
            row(10, 22, PaymentKind.TIP, "transfer")));
  }
}
