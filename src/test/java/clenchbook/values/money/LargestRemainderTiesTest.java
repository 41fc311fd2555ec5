package clenchbook.values.money;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ties and halves that a division cut to some digits would tip over; worked out on paper. */
class LargestRemainderTiesTest {
  private static final MinorUnit CENTS = new MinorUnit(2);

  @Test
  void equal_remainders_of_unequal_parts_go_to_the_earlier_row() {
    List<BigDecimal> weights = List.of(of("130"), of("145"), of("16"));
    // 242.50 in 291 parts: 108.333..., 120.833..., 13.333...: three equal remainders, one cent.
    assertEquals(
        List.of(of("108.34"), of("120.83"), of("13.33")),
        LargestRemainder.split(of("242.50"), weights, CENTS));
  }

  @Test
  void a_half_reached_by_thirds_still_rounds_up() {
    BigDecimal third = BigDecimal.ONE.divide(of("3"), MathContext.DECIMAL128);
    assertEquals(of("0.02"), CENTS.round(third.multiply(of("0.045"))));
  }

  @Test
  void what_is_truly_below_the_half_rounds_down() {
    assertEquals(of("0.01"), CENTS.round(of("0.0149999999999")));
  }

  private static BigDecimal of(String amount) {
    return new BigDecimal(amount);
  }
}
