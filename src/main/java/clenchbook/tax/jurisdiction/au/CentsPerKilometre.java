package clenchbook.tax.jurisdiction.au;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The kilometres of one car and year that count: the first ones up to the cap, in the order driven;
 * those beyond it are lost (Income Tax Assessment Act 1997, s.28-25).
 */
final class CentsPerKilometre {
  private CentsPerKilometre() {}

  /**
   * What counts of each trip.
   *
   * @param driven business kilometres of one car, trip by trip in the order driven; none negative
   * @param cap kilometres that count in a year
   * @return for each trip the kilometres that count, zero once the cap is reached; they never add
   *     to more than the cap
   */
  static List<BigDecimal> counted(List<BigDecimal> driven, BigDecimal cap) {
    List<BigDecimal> counted = new ArrayList<>();
    BigDecimal room = cap;
    for (BigDecimal kilometres : driven) {
      BigDecimal within = kilometres.min(room);
      counted.add(within);
      room = room.subtract(within);
    }
    return List.copyOf(counted);
  }
}
