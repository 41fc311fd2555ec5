package clenchbook.values.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The method of largest remainders (Hamilton's), as an apportionment of minor units. The first case
 * is the encyclopaedia's of ten seats over six parties with 47,000, 16,000, 15,800, 12,000, 6,100
 * and 3,100 votes, which get 5, 2, 1, 1, 1 and none (Wikipedia, "Largest remainder method", from
 * memory); the rest of the first table is worked out on paper.
 */
class LargestRemainderTest {
  private static final MinorUnit CENTS = new MinorUnit(2);

  @ParameterizedTest(name = "{0} by {1}")
  @CsvSource({
    "0.10,  47000 16000 15800 12000 6100 3100, 0.05 0.02 0.01 0.01 0.01 0.00",
    "10.00, 1 1 1,     3.34 3.33 3.33",
    "-10.00, 1 1 1,   -3.34 -3.33 -3.33",
    "10.00, 0 0,       5.00 5.00",
    "10.00, 0 3 0,     0.00 10.00 0.00",
    "0.02,  1 1 1,     0.01 0.01 0.00",
    "0.00,  1 2,       0.00 0.00",
    "9.999, 7,         10.00",
    "10.004, 1 3,      2.50 7.50"
  })
  void the_parts_add_to_the_whole_and_the_largest_remainders_take_what_is_over(
      BigDecimal whole, String weights, String parts) {
    assertEquals(numbers(parts), LargestRemainder.split(whole, numbers(weights), CENTS));
  }

  /**
   * The census of 1790, fifteen states from Virginia down (populations as in tutorsglobe.com, "The
   * First Apportionment of the House of Representatives"). 120 seats: the bill that Washington
   * vetoed, Table 14.5 of COMAP, For All Practical Purposes, 10th edition, chapter 14, example 6;
   * the same seats stand in "The 1790 Census and the First Veto" (archives.gov, 4 April 2022). 60
   * seats: by the same rule on paper, 52 whole seats and eight to the largest remainders, the last
   * of them Virginia's 0.463 before South Carolina's 0.422; no page of its own was seen.
   */
  @ParameterizedTest(name = "{0} seats")
  @CsvSource({"120, 21 16 14 12 11 9 8 7 6 5 3 2 2 2 2", " 60, 11  8  7  6  6 5 4 3 3 2 1 1 1 1 1"})
  void the_first_census_gives_the_seats_of_the_vetoed_bill(BigDecimal seats, String expected) {
    String populations =
        "630560 475327 432879 353523 331589 278514 236841 206236 179570 141822 85533 70835 68705"
            + " 68446 55540";
    assertEquals(
        numbers(expected.replaceAll(" +", " ")),
        LargestRemainder.split(seats, numbers(populations), new MinorUnit(0)));
  }

  @Test
  void a_currency_without_decimals_is_split_in_whole_units() {
    assertEquals(
        numbers("34 33 33"),
        LargestRemainder.splitEqually(new BigDecimal("100"), 3, new MinorUnit(0)));
  }

  @Test
  void nothing_is_split_over_nobody() {
    assertEquals(List.of(), LargestRemainder.split(BigDecimal.TEN, List.of(), CENTS));
  }

  /** ISO 4217, list one: JPY 0, EUR 2, BHD 3 decimals. */
  @ParameterizedTest
  @CsvSource({"JPY, 0", "EUR, 2", "BHD, 3"})
  void a_currency_has_its_own_number_of_decimals(String currency, int digits) {
    MinorUnit unit = MinorUnit.of(currency);
    assertEquals(digits, unit.digits());
    assertEquals(digits, unit.zero().scale());
  }

  /** XXX stands for no currency (ISO 4217): it has no minor unit. */
  @Test
  void what_is_no_currency_has_no_minor_unit() {
    assertThrows(IllegalArgumentException.class, () -> MinorUnit.of("XXX"));
  }

  /** EN 16931 example invoice 2: 365.125 is 365.13, where half to even would give 365.12. */
  @ParameterizedTest
  @CsvSource({"365.125, 365.13", "-365.125, -365.13", "0.004, 0.00", "2, 2.00"})
  void a_half_is_rounded_away_from_zero(BigDecimal exact, BigDecimal rounded) {
    assertEquals(rounded, CENTS.round(exact));
  }

  private static List<BigDecimal> numbers(String text) {
    return Arrays.stream(text.split(" ")).map(BigDecimal::new).toList();
  }
}
