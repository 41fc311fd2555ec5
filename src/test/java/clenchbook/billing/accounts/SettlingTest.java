package clenchbook.billing.accounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.Ledger;
import clenchbook.billing.accounts.Account.Movement;
import clenchbook.billing.accounts.Account.Source;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.WrittenDocument;
import clenchbook.book.PaymentKind;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What settles what, and how old the rest is, added up on paper. The ages 1 to 30, 31 to 60 and
 * over 60 days past due are those of an ordinary list of debtors; a payment that names no invoice
 * goes to the oldest (common practice, no source).
 */
class SettlingTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 10, 1);
  private static final LocalDate LAST = LocalDate.of(2026, 10, 31);

  private static Settling settling(String opening, List<BilledDocument> documents, Movement... m) {
    return new Settling(
        new BigDecimal(opening),
        LocalDate.of(2026, 7, 1),
        documents,
        List.of(m),
        FIRST,
        new MinorUnit(2));
  }

  private static List<BilledDocument> documents(String... texts) {
    return Arrays.stream(texts).map(WrittenDocument::of).toList();
  }

  /** Money that came in; the amount as it is, not as it changes the balance. */
  private static Movement money(String date, String amount, String names) {
    return money(date, amount, names, PaymentKind.PAYMENT);
  }

  private static Movement money(String date, String amount, String names, PaymentKind kind) {
    BigDecimal change = new BigDecimal(amount).negate();
    return new Movement(LocalDate.parse(date), Source.PAYMENT, kind, names, change);
  }

  private static String ages(Settling settling) {
    return Ledger.ages(settling.ages(LAST));
  }

  @ParameterizedTest(name = "due on {0}")
  @CsvSource({
    "2026-11-01, 50.00 0.00 0.00 0.00",
    "2026-10-31, 50.00 0.00 0.00 0.00",
    "2026-10-30, 0.00 50.00 0.00 0.00",
    "2026-10-01, 0.00 50.00 0.00 0.00",
    "2026-09-30, 0.00 0.00 50.00 0.00",
    "2026-09-01, 0.00 0.00 50.00 0.00",
    "2026-08-31, 0.00 0.00 0.00 50.00"
  })
  void a_debt_is_as_old_as_the_days_since_it_fell_due(String due, String ages) {
    String document = "Number: 2026-0001, Month: 2026-07, Gross: 50.00, Due: " + due;
    assertEquals(ages, ages(settling("0", documents(document))));
  }

  @Test
  void what_names_no_invoice_goes_to_the_oldest_whatever_the_order_of_the_list() {
    List<BilledDocument> documents =
        documents(
            "Number: 2026-0003, Month: 2026-09, Gross: 30",
            "Number: 2026-0001, Month: 2026-07, Gross: 30",
            "Number: 2026-0002, Month: 2026-08, Gross: 30");
    Settling settling = settling("0", documents, money("2026-10-05", "40", ""));
    assertEquals(
        Map.of(
            "2026-0001", new BigDecimal("0"),
            "2026-0002", new BigDecimal("20"),
            "2026-0003", new BigDecimal("30")),
        settling.open());
  }

  @Test
  void what_names_an_invoice_closes_it_first_and_the_rest_goes_to_the_oldest() {
    List<BilledDocument> documents =
        documents(
            "Number: 2026-0001, Month: 2026-08, Gross: 30",
            "Number: 2026-0002, Month: 2026-09, Gross: 30");
    Settling settling = settling("0", documents, money("2026-10-05", "40", " 2026-0002 "));
    assertEquals(
        Map.of("2026-0001", new BigDecimal("20"), "2026-0002", new BigDecimal("0")),
        settling.open());
  }

  @Test
  void the_opening_balance_is_the_oldest_debt_and_no_document() {
    Settling settling =
        settling("25", documents("Number: 2026-0001, Gross: 30"), money("2026-10-05", "40", ""));
    assertEquals(Map.of("2026-0001", new BigDecimal("15")), settling.open());
  }

  @Test
  void an_opening_credit_pays_what_comes_after_it() {
    Settling settling = settling("-25", documents("Number: 2026-0001, Gross: 30"));
    assertEquals(Map.of("2026-0001", new BigDecimal("5")), settling.open());
  }

  @Test
  void a_credit_note_is_set_against_the_invoice_that_it_corrects() {
    List<BilledDocument> documents =
        documents(
            "Number: 2026-0001, Month: 2026-08, Gross: 30",
            "Number: 2026-0002, Month: 2026-09, Gross: 30",
            "Number: 2026-0003, Corrects: 2026-0002, Gross: -30");
    assertEquals(
        Map.of("2026-0001", new BigDecimal("30"), "2026-0002", new BigDecimal("0")),
        settling("0", documents).open());
  }

  @Test
  void a_nil_invoice_is_listed_with_nothing_open() {
    assertEquals(
        Map.of("2026-0001", new BigDecimal("0")),
        settling("0", documents("Number: 2026-0001, Gross: 0")).open());
  }

  @Test
  void a_document_among_the_movements_is_no_money() {
    BigDecimal amount = new BigDecimal("-30");
    Movement document =
        new Movement(FIRST, Source.DOCUMENT, PaymentKind.PAYMENT, "2026-0001", amount);
    assertEquals(
        Map.of("2026-0001", new BigDecimal("30")),
        settling("0", documents("Number: 2026-0001, Gross: 30"), document).open());
  }

  @Test
  void what_is_over_is_credit_and_lowers_what_is_not_yet_due() {
    Settling settling =
        settling(
            "0",
            documents("Number: 2026-0001, Month: 2026-08, Gross: 30.00"),
            money("2026-10-05", "31.50", ""));
    assertEquals("-1.50 0.00 0.00 0.00", ages(settling));
  }

  @Test
  void a_refund_is_owed_again_from_its_day() {
    Movement refund =
        new Movement(
            LocalDate.of(2026, 9, 30),
            Source.PAYMENT,
            PaymentKind.REFUND,
            "",
            new BigDecimal("20.00"));
    assertEquals("0.00 0.00 20.00 0.00", ages(settling("0", List.of(), refund)));
  }

  @Test
  void only_the_invoice_that_a_written_off_amount_reached_is_written_off() {
    List<BilledDocument> documents =
        documents(
            "Number: 2026-0001, Month: 2026-08, Gross: 30",
            "Number: 2026-0002, Month: 2026-09, Gross: 30");
    Movement given = money("2026-10-05", "30", "2026-0001", PaymentKind.WRITTEN_OFF);
    assertEquals(
        Map.of("2026-0001", new BigDecimal("30")), settling("0", documents, given).writtenOff());
  }

  @Test
  void an_opening_balance_written_off_is_no_documents() {
    Movement given = money("2026-10-05", "25", "", PaymentKind.WRITTEN_OFF);
    assertEquals(Map.of(), settling("25", List.of(), given).writtenOff());
  }

  /** A statement is due where money of the month touched an invoice of an earlier one. */
  @ParameterizedTest(name = "paid {0} for an invoice of {1}")
  @CsvSource({
    "2026-10-01, 2026-09, true",
    "2026-09-30, 2026-09, false",
    "2026-10-20, 2026-10, false"
  })
  void a_month_that_touched_an_older_document_says_so(String paid, String month, boolean moved) {
    List<BilledDocument> documents = documents("Number: 2026-0001, Gross: 30, Month: " + month);
    assertEquals(moved, settling("0", documents, money(paid, "30", "")).olderMoved());
  }

  @Test
  void what_once_touched_an_older_document_is_not_forgotten() {
    List<BilledDocument> documents =
        documents(
            "Number: 2026-0001, Month: 2026-09, Gross: 30",
            "Number: 2026-0002, Month: 2026-10, Gross: 30");
    List<Movement> paid = new ArrayList<>();
    paid.add(money("2026-10-20", "30", "2026-0001"));
    paid.add(money("2026-10-21", "30", "2026-0002"));
    assertEquals(true, settling("0", documents, paid.toArray(new Movement[0])).olderMoved());
  }
}
