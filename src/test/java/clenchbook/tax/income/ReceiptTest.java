package clenchbook.tax.income;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.PaymentKind;
import clenchbook.book.SourceRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each kind of receipt adds to the money and takes off a balance (common practice). */
class ReceiptTest {
  @ParameterizedTest
  @CsvSource({
    "PAYMENT, 5, 5, payment",
    "DEPOSIT, 5, 5, deposit",
    "TIP, 5, 0, tip",
    "REFUND, -5, -5, refund",
    "WRITTEN_OFF, 0, 5, written off"
  })
  void money_and_balance_move_by_the_kind(
      PaymentKind kind, BigDecimal cash, BigDecimal off, String word) {
    SourceRow source = new SourceRow("Payments", 1, 2, Map.of());
    Receipt receipt =
        new Receipt(source, LocalDate.of(2026, 3, 2), "Ruth", kind, new BigDecimal("5"), "", false);
    assertEquals(cash, receipt.cash());
    assertEquals(off, receipt.offBalance());
    assertEquals(word, receipt.word());
  }
}
