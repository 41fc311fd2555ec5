package clenchbook.jobs.charge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.TaxCategory;
import clenchbook.book.TaxKind;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How a line's tax is treated, by the categories of EN 16931-1 (BT-151, UNTDID 5305) and the ground
 * that each but S and Z needs (BR-E-10, BR-AE-10, BR-O-10: an exemption reason is given).
 */
class LineTaxTest {
  private static LineTax tax(TaxKind kind, String rate, boolean exempt) {
    return new LineTax("C", "Tax", new BigDecimal(rate), kind, "code's", exempt, false);
  }

  @ParameterizedTest
  @CsvSource({
    "STANDARD, 20, false, S",
    "REDUCED, 5, false, S",
    "STANDARD, 0, false, Z",
    "STANDARD, 20, true, E",
    "REDUCED, 0, true, E",
    "ZERO, 0, false, Z",
    "ZERO, 0, true, Z",
    "EXEMPT, 0, false, E",
    "EXEMPT, 0, true, E",
    "OUTSIDE_SCOPE, 0, false, O",
    "OUTSIDE_SCOPE, 0, true, O",
    "REVERSE_CHARGE, 0, false, AE",
    "REVERSE_CHARGE, 0, true, E"
  })
  void an_exempt_owners_line_is_exempt_unless_its_code_is_zero_or_outside(
      TaxKind kind, String rate, boolean exempt, TaxCategory category) {
    assertEquals(category, tax(kind, rate, exempt).category());
  }

  @ParameterizedTest
  @CsvSource({
    "STANDARD, 20, false, '', ''",
    "ZERO, 0, false, '', ''",
    "STANDARD, 20, true, owner's, owner's",
    "STANDARD, 20, true, '', ''",
    "EXEMPT, 0, false, , code's",
    "EXEMPT, 0, true, owner's, owner's",
    "EXEMPT, 0, true, '', code's",
    "OUTSIDE_SCOPE, 0, true, owner's, code's",
    "REVERSE_CHARGE, 0, false, , code's",
    "REVERSE_CHARGE, 0, true, owner's, owner's"
  })
  void the_ground_is_the_owners_where_the_owner_is_what_makes_it_exempt(
      TaxKind kind, String rate, boolean exempt, String owners, String ground) {
    LineTax because = tax(kind, rate, exempt).because(Optional.ofNullable(owners));
    assertEquals(ground, because.reason());
    assertEquals(kind, because.kind());
  }

  @Test
  void a_rate_is_a_fraction_of_its_per_cent_and_nothing_for_an_exempt_owner() {
    assertEquals(new BigDecimal("0.055"), tax(TaxKind.REDUCED, "5.5", false).rate());
    assertEquals(new BigDecimal("5.5"), tax(TaxKind.REDUCED, "5.5", false).chargedPercent());
    assertEquals(BigDecimal.ZERO, tax(TaxKind.REDUCED, "5.5", true).chargedPercent());
  }

  @Test
  void a_plain_rate_is_standard_and_one_of_zero_is_zero() {
    assertEquals(TaxKind.STANDARD, new LineTax("S", "", BigDecimal.TEN, false, false).kind());
    assertEquals(TaxKind.ZERO, new LineTax("Z", "", BigDecimal.ZERO, false, false).kind());
  }

  /** A business without a tax number is outside it altogether: all its lines stand together. */
  @Test
  void only_a_code_puts_a_line_outside_the_scope() {
    assertEquals(true, tax(TaxKind.OUTSIDE_SCOPE, "0", false).outsideScope());
    assertEquals(false, tax(TaxKind.ZERO, "0", false).outsideScope());
    assertEquals(false, LineTax.NONE.outsideScope());
    assertEquals(TaxCategory.O, LineTax.NONE.category());
    assertEquals(TaxCategory.E, LineTax.UNCODED.category());
  }
}
