package clenchbook.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  /** Newcombe, Statistics in Medicine 17:857-872, 1998, table I, method 3; from memory. */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  void wilsons_interval_is_the_published_one(double part, double whole, double low, double high) {
    Interval wilson = new Proportion(part, whole).wilson();
    assertEquals(low, wilson.low(), 5e-5);
    assertEquals(high, wilson.high(), 5e-5);
  }

  /**
   * Newcombe, Statistics in Medicine 17:873-890, 1998, table II, method 10: (a) 56/70 and 48/80,
   * (b) 9/10 and 3/10.
   */
  @ParameterizedTest
  @CsvSource({"56, 70, 48, 80, 0.0524, 0.3339", "9, 10, 3, 10, 0.1705, 0.8090"})
  void the_difference_of_two_shares_is_the_published_one(
      double partA, double wholeA, double partB, double wholeB, double low, double high) {
    Interval interval = new Proportion(partA, wholeA).differenceFrom(new Proportion(partB, wholeB));
    assertEquals(low, interval.low(), 5e-5);
    assertEquals(high, interval.high(), 5e-5);
  }

  @Test
  void the_difference_turned_round_is_the_interval_turned_round() {
    Proportion a = new Proportion(3, 140);
    Proportion b = new Proportion(9.5, 160);
    assertEquals(-a.differenceFrom(b).low(), b.differenceFrom(a).high(), 1e-15);
    assertEquals(-a.differenceFrom(b).high(), b.differenceFrom(a).low(), 1e-15);
  }

  @Test
  void all_and_none_stay_inside_nought_and_one() {
    assertEquals(1.0, new Proportion(8, 8).wilson().high());
    assertEquals(0.0, new Proportion(0, 8).wilson().low());
  }

  @Test
  void a_share_of_nothing_is_refused() {
    assertThrows(IllegalArgumentException.class, () -> new Proportion(0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Proportion(3, 2));
  }
}
