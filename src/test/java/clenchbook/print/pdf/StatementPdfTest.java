package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reports.letters.Ageing;
import clenchbook.reports.letters.StatementDocument;
import clenchbook.reports.letters.StatementEntry;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StatementPdfTest {
  private static String print(StatementDocument statement) throws IOException {
    return InvoicePdfTest.textOf(
        new PdfDocuments(SampleDocuments.settings("en", "GB")).statement(statement));
  }

  private static StatementDocument aged(String current, String d30, String d60, String older) {
    StatementDocument usual = SampleDocuments.statement("en", "GB", "GBP");
    Ageing ageing =
        new Ageing(
            new BigDecimal(current),
            new BigDecimal(d30),
            new BigDecimal(d60),
            new BigDecimal(older));
    BigDecimal balance =
        ageing
            .current()
            .add(ageing.pastDue1To30())
            .add(ageing.pastDue31To60())
            .add(ageing.pastDueOver60());
    return new StatementDocument(
        usual.head(),
        usual.from(),
        usual.broughtForward(),
        usual.entries(),
        balance,
        ageing,
        ageing,
        Optional.empty(),
        Optional.of(new BigDecimal("1.5")),
        usual.pay());
  }

  @Test
  void every_kind_of_movement_is_named_with_its_amount_and_balance() throws IOException {
    String text = print(SampleDocuments.statement("en", "GB", "GBP"));
    for (String line :
        List.of(
            "1 Oct 2026 Balance brought forward 185.00",
            "2 Oct 2026 Paid at the truck 110.00 75.00",
            "5 Oct 2026 Payment received BACS 7731 40.00 35.00",
            "12 Oct 2026 Received on account 50.00 \u221215.00",
            "20 Oct 2026 Paid back to you cheque 114 15.00 0.00",
            "28 Oct 2026 Written off 2026-0003 12.00 \u221212.00",
            "31 Oct 2026 Credit note 2026-0047 110.00 \u2212122.00",
            "31 Oct 2026 Invoice 2026-0041 417.50 295.50",
            "Balance to pay £295.50")) {
      assertTrue(text.contains(line), line + " in " + text);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10.00|0|0|0|Nothing is overdue|false",
        "0|20.00|0|0|A small reminder: £20.00|true",
        "0|20.00|30.00|0|A reminder: £30.00 is more than 30 days|true",
        "0|20.00|30.00|40.00|£40.00 is more than 60 days|true",
        "0|0|0|0|Thank you for paying on time|false",
        "-5.00|0|0|0|Thank you for paying on time|false"
      })
  void the_reminder_speaks_of_the_oldest_part(
      String current, String d30, String d60, String older, String words, boolean fee)
      throws IOException {
    String text = print(aged(current, d30, d60, older));
    assertTrue(text.contains(words), text);
    assertEquals(fee, text.contains("1.5% a month"), text);
  }

  /** What fell due after payments were last entered may lie in the bank. */
  @Test
  void nobody_is_pressed_for_what_fell_due_since_payments_were_entered() throws IOException {
    StatementDocument usual = aged("0", "20.00", "30.00", "0");
    String none = print(asked(usual, "50.00", "0", Optional.empty()));
    assertTrue(none.contains("By the payments entered so far, £50.00 is past its due date"), none);
    assertFalse(none.contains("Payments entered up to"), none);
    assertFalse(none.contains("1.5% a month"), none);
    String some =
        print(asked(usual, "20.00", "30.00", Optional.of(java.time.LocalDate.of(2026, 10, 9))))
            .replaceAll("\\s+", " ");
    assertTrue(some.contains("A small reminder: £30.00"), some);
    assertTrue(some.contains("Payments entered up to 9 October 2026."), some);
  }

  private static StatementDocument asked(
      StatementDocument usual, String current, String d30, Optional<java.time.LocalDate> day) {
    return new StatementDocument(
        usual.head(),
        usual.from(),
        usual.broughtForward(),
        usual.entries(),
        usual.balance(),
        usual.ageing(),
        new Ageing(new BigDecimal(current), new BigDecimal(d30), BigDecimal.ZERO, BigDecimal.ZERO),
        day,
        usual.lateFeePercentPerMonth(),
        usual.pay());
  }

  @Test
  void a_credit_asks_for_nothing() throws IOException {
    String text = print(aged("-5.00", "0", "0", "0"));
    assertTrue(text.contains("Balance in your favour £5.00"), text);
    assertFalse(text.contains("How to pay"), text);
  }

  @Test
  void a_long_statement_goes_over_pages_and_keeps_every_line() throws IOException {
    StatementDocument usual = SampleDocuments.statement("en", "GB", "GBP");
    List<StatementEntry> many = new ArrayList<>();
    for (int i = 0; i < 15; i++) {
      many.addAll(usual.entries());
    }
    StatementDocument statement = SampleDocuments.listing(many, usual);
    PdfDocuments documents = new PdfDocuments(SampleDocuments.settings("en", "US"));
    byte[] pdf = documents.statement(statement);
    assertArrayEquals(pdf, documents.statement(statement));
    assertTrue(InvoicePdfTest.pagesOf(pdf) > 2);
    assertEquals(15, InvoicePdfTest.textOf(pdf).split("BACS 7731", -1).length - 1);
  }
}
