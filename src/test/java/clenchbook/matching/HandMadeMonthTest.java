package clenchbook.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.matching.bank.BankEntry.Standing;
import clenchbook.texts.InEnglish;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each rule of matching on a statement of a few lines. */
class HandMadeMonthTest {
  private static HandMadeMonth month() {
    return new HandMadeMonth()
        .owner("Anna Ahorn", "Hof Ahorn GbR", "Anna Birk")
        .owner("Emil Eschweg")
        .owner("Hanna Hövel");
  }

  private static String why(HandMadeMonth month, int entry) {
    return InEnglish.said(month.matched().toAdd().get(entry).why());
  }

  @Test
  void the_number_or_the_checked_reference_is_enough_whoever_pays() {
    assertEquals(
        List.of(
            "1 | Anna Ahorn | 2026-0001 | 120.00 | sure",
            "2 | Emil Eschweg | 2026-0002 | 95.00 | sure"),
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "120.00")
            .invoice("2026-0002", "Emil Eschweg", 10, "95.00")
            .entry("Somebody Else", "Invoice 2026-0001", "120.00")
            .entry("Nobody Known", "RF04 2026 0002", "95.00")
            .proposed());
  }

  /**
   * ISO 11649: check digits that do not fit say that a sign is wrong, and it may be the number's.
   */
  @Test
  void a_reference_that_does_not_check_is_a_slip() {
    HandMadeMonth month =
        month()
            .invoice("2026-0002", "Emil Eschweg", 10, "95.00")
            .entry("Nobody Known", "RF05 2026 0002", "40.00");
    assertEquals(List.of("1 |  |  | 40.00 | unsure"), month.proposed());
    assertTrue(why(month, 0).contains("the number with one slip of 2026-0002"), why(month, 0));
  }

  @Test
  void a_number_with_one_slip_needs_the_amount() {
    HandMadeMonth month =
        month()
            .invoice("2026-0041", "Anna Ahorn", 10, "120.00")
            .entry("A. Ahorn", "Invoice 2026-0014", "120.00");
    assertEquals(List.of("1 | Anna Ahorn | 2026-0041 | 120.00 | sure"), month.proposed());
    assertTrue(why(month, 0).contains("the number with one slip of 2026-0041"), why(month, 0));
  }

  @Test
  void a_sum_is_a_row_for_each_invoice() {
    assertEquals(
        List.of(
            "1 | Anna Ahorn | 2026-0001 | 120.00 | sure",
            "1 | Anna Ahorn | 2026-0007 | 77.50 | sure"),
        month()
            .invoice("2026-0001", "Anna Ahorn", 9, "120.00")
            .invoice("2026-0007", "Anna Ahorn", 10, "77.50")
            .entry("Anna Ahorn", "all so far", "197.50")
            .proposed());
  }

  @Test
  void every_name_of_an_owner_speaks_for_them() {
    for (String who :
        List.of("ANNA AHORN", "Ahorn, Anna", "Hof Ahorn GbR", "Anna Birk", "Frau Anna Ahorn")) {
      assertEquals(
          List.of("1 | Anna Ahorn | 2026-0001 | 120.00 | sure"),
          month()
              .invoice("2026-0001", "Anna Ahorn", 10, "120.00")
              .entry(who, "", "120.00")
              .proposed(),
          who);
    }
  }

  @Test
  void a_name_that_paid_for_the_owner_before_speaks_for_them() {
    assertEquals(
        List.of("1 | Anna Ahorn | 2026-0001 | 120.00 | sure"),
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "120.00")
            .entered("2026-08-03", "Anna Ahorn", "77.00", "", "Quirin Xaver; B99")
            .entry("Quirin Xaver", "", "120.00")
            .proposed());
  }

  @Test
  void a_payer_is_no_witness_for_themselves_but_for_their_other_payments() {
    HandMadeMonth month =
        month()
            .invoice("2026-0001", "Anna Ahorn", 9, "120.00")
            .invoice("2026-0007", "Anna Ahorn", 10, "77.50")
            .entry("Quirin Xaver", "2026-0001", "120.00")
            .entry("Quirin Xaver", "", "77.50");
    assertTrue(why(month, 0).contains("the payer's name is not known"), why(month, 0));
    assertTrue(why(month, 1).contains("a payer who pays for this owner elsewhere"), why(month, 1));
  }

  @Test
  void parts_and_too_much_go_to_the_invoice_whose_number_they_bear() {
    assertEquals(
        List.of(
            "1 | Anna Ahorn | 2026-0001 | 50.00 | sure",
            "2 | Emil Eschweg | 2026-0002 | 100.00 | sure"),
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "120.00")
            .invoice("2026-0002", "Emil Eschweg", 10, "95.00")
            .entry("Anna Ahorn", "first part of 2026-0001", "50.00")
            .entry("Emil Eschweg", "2026-0002, keep the change", "100.00")
            .proposed());
  }

  @Test
  void two_owners_of_one_amount_and_two_nameless_payments_stay_unsure() {
    assertEquals(
        List.of("1 |  |  | 120.00 | unsure", "2 |  |  | 120.00 | unsure"),
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "120.00")
            .invoice("2026-0002", "Emil Eschweg", 10, "120.00")
            .entry("", "horses", "120.00")
            .entry("", "horses", "120.00")
            .proposed());
  }

  @Test
  void one_named_payment_leaves_the_nameless_one_of_the_amount_unsure_all_the_same() {
    assertEquals(
        List.of("1 | Anna Ahorn | 2026-0001 | 120.00 | sure", "2 |  |  | 120.00 | unsure"),
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "120.00")
            .invoice("2026-0002", "Emil Eschweg", 10, "120.00")
            .entry("Anna Ahorn", "", "120.00")
            .entry("", "horses", "120.00")
            .proposed());
  }

  @Test
  void what_an_older_invoice_has_open_may_be_a_part_of_a_larger_latest_one() {
    HandMadeMonth month =
        month()
            .invoice("2026-0001", "Anna Ahorn", 9, "139.40")
            .invoice("2026-0007", "Anna Ahorn", 10, "340.00")
            .entry("Anna Ahorn", "", "139.40");
    assertEquals(List.of("1 | Anna Ahorn |  | 139.40 | unsure"), month.proposed());
    assertTrue(why(month, 0).contains("it may be a part of 2026-0007"), why(month, 0));
    assertEquals(
        List.of("1 | Anna Ahorn | 2026-0007 | 139.40 | sure"),
        month()
            .invoice("2026-0001", "Anna Ahorn", 9, "340.00")
            .invoice("2026-0007", "Anna Ahorn", 10, "139.40")
            .entry("Anna Ahorn", "", "139.40")
            .proposed());
  }

  @Test
  void anothers_number_from_one_of_two_namesakes_who_owes_the_same_is_not_sure() {
    assertEquals(
        List.of("1 | Emil Eschweg |  | 420.00 | unsure"),
        new HandMadeMonth()
            .owner("Reitstall Ahorn", "Dr. Hanna Hövel GmbH")
            .owner("Hanna Hövel")
            .owner("Emil Eschweg")
            .invoice("2026-0123", "Hanna Hövel", 10, "420.00")
            .invoice("2026-0132", "Emil Eschweg", 10, "420.00")
            .entry("Hanna Hövel", "Invoice 2026-0132", "420.00")
            .proposed());
  }

  @Test
  void nothing_is_sure_that_rests_on_an_entry_that_is_not() {
    assertEquals(
        List.of("1 | Anna Ahorn |  | 180.00 | unsure", "2 | Anna Ahorn |  | 180.00 | unsure"),
        month()
            .invoice("2026-0117", "Anna Ahorn", 9, "180.00")
            .invoice("2026-0158", "Anna Ahorn", 10, "180.00")
            .invoice("2026-0159", "Emil Eschweg", 10, "180.00")
            .entry("Emil Eschweg", "Invoice 2026-0158", "180.00")
            .entry("Anna Ahorn", "thank you", "180.00")
            .proposed());
  }

  @Test
  void what_came_back_and_refunds_are_refunds_and_other_money_is_left_alone() {
    MatchResult result =
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "120.00")
            .entry("Anna Ahorn", "Invoice 2026-0001", "120.00")
            .entry("Anna Ahorn", "returned item", "-120.00", Standing.RETURNED)
            .entry("", "account fee", "-4.90", Standing.CHARGE)
            .entry("Steel Merchant", "order 77", "-310.00")
            .entry("Grandmother", "birthday", "50.00")
            .matched();
    assertEquals(
        List.of("payment 2026-0001", "refund 2026-0001"),
        result.toAdd().stream()
            .map(p -> p.rows().get(0).kind().word() + " " + p.rows().get(0).invoice())
            .toList());
    assertEquals(3, result.unmatched().size());
  }

  @Test
  void what_payments_hold_within_five_days_is_never_proposed_again() {
    HandMadeMonth month =
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "0.00")
            .entered("2026-11-07", "Anna Ahorn", "120.00", "2026-0001", "")
            .entry("Anna Ahorn", "Invoice 2026-0001", "120.00")
            .entry("Anna Ahorn", "Invoice 2026-0001", "120.00");
    assertEquals(1, month.matched().alreadyThere().size());
    assertEquals(List.of("2 | Anna Ahorn |  | 120.00 | unsure"), month.proposed());
    HandMadeMonth later =
        month()
            .invoice("2026-0001", "Anna Ahorn", 10, "0.00")
            .entered("2026-11-09", "Anna Ahorn", "120.00", "2026-0001", "")
            .entry("Anna Ahorn", "Invoice 2026-0001", "120.00");
    assertEquals(0, later.matched().alreadyThere().size());
  }
}
