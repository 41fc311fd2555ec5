package clenchbook.tax.income;

import static clenchbook.tax.income.WrittenBill.atTruck;
import static clenchbook.tax.income.WrittenBill.invoice;
import static clenchbook.tax.income.WrittenBill.line;
import static clenchbook.tax.income.WrittenBill.naming;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A bill while it is being paid, by hand from the stated rules (common practice, no source). */
class OpenBillTest {
  private static final MinorUnit CENTS = new MinorUnit(2);

  /** 100.00 and 20 % of tax: 120.00. */
  private static final BilledLine MARCH = line(7, "2026-03-02", "100.00", "20.00");

  private static OpenBill open() {
    return parts(invoice("RA-1", "2026-03-31", MARCH)).get(0);
  }

  private static List<OpenBill> parts(Billed bill) {
    return OpenBill.of(bill, LocalDate::getYear, CENTS);
  }

  /** The parts as {@code year left}. */
  private static List<String> written(Billed bill) {
    return parts(bill).stream()
        .map(part -> part.year() + " " + part.left().toPlainString())
        .toList();
  }

  @Test
  void work_of_two_years_on_one_bill_is_two_bills() {
    assertEquals(
        List.of("2025 60.00", "2026 120.00"),
        written(invoice("1", "2026-03-31", line(2, "2025-12-30", "50.00", "10.00"), MARCH)));
  }

  @Test
  void a_bill_is_whole_where_the_work_of_one_year_asks_for_nothing() {
    BilledLine free = line(2, "2025-12-30", "0.00", "0.00");
    assertEquals(List.of("2026 120.00"), written(invoice("1", "2026-03-31", free, MARCH)));
  }

  @Test
  void a_bill_is_whole_where_the_work_of_one_year_takes_away() {
    BilledLine allowance = line(2, "2025-12-30", "-10.00", "-2.00");
    assertEquals(List.of("2026 108.00"), written(invoice("1", "2026-03-31", allowance, MARCH)));
  }

  @Test
  void the_year_is_the_works_or_the_bills_whichever_is_earlier() {
    assertEquals(2025, parts(invoice("1", "2025-12-31", MARCH)).get(0).year());
    BilledLine december = line(2, "2025-12-30", "50.00", "10.00");
    assertEquals(2025, parts(invoice("1", "2026-01-31", december)).get(0).year());
  }

  @Test
  void money_at_the_truck_names_the_bill_of_its_own_row() {
    assertTrue(open().isNamedBy(atTruck("Visits", 7)));
    assertFalse(open().isNamedBy(atTruck("Visits", 8)));
    assertFalse(open().isNamedBy(atTruck("Visits 2025", 7)));
  }

  @Test
  void a_payment_names_a_bill_by_its_number_in_any_case() {
    assertTrue(open().isNamedBy(naming(" ra-1 ")));
    assertFalse(open().isNamedBy(naming("RA-2")));
    Billed withoutNumber = invoice("", "2026-03-31", MARCH);
    assertFalse(parts(withoutNumber).get(0).isNamedBy(naming("")));
  }

  /** Half of 120.00 given up leaves 50.00 and 10.00 of tax. */
  @Test
  void a_credit_lowers_what_is_open_and_its_tax_alike() {
    OpenBill bill = open();
    assertEquals(new BigDecimal("60.00"), bill.lower(new BigDecimal("60.00")));
    assertEquals(new BigDecimal("60.00"), bill.left());
    SoldShare share = bill.receive(new BigDecimal("60.00")).get(0);
    assertEquals(new BigDecimal("50.00"), share.net());
    assertEquals(new BigDecimal("10.00"), share.tax());
    assertEquals(0, bill.left().signum());
  }

  @Test
  void a_credit_takes_no_more_than_is_open_and_a_negative_one_nothing() {
    OpenBill bill = open();
    assertEquals(BigDecimal.ZERO, bill.lower(new BigDecimal("-60.00")));
    assertEquals(new BigDecimal("120.00"), bill.left());
    assertEquals(new BigDecimal("120.00"), bill.lower(new BigDecimal("200.00")));
    assertEquals(0, bill.left().signum());
  }
}
