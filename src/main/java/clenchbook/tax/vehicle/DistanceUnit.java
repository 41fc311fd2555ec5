package clenchbook.tax.vehicle;

import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.MathContext;

/** The book's unit of distance, and miles from it. */
public enum DistanceUnit {
  /** Kilometres. */
  KM("km"),
  /** Statute miles. */
  MILE("mile");

  /** Kilometres in a statute mile, exact by the international yard of 1959. */
  private static final BigDecimal KM_PER_MILE = new BigDecimal("1.609344");

  private final String word;

  DistanceUnit(String word) {
    this.word = word;
  }

  public static DistanceUnit of(String setting) {
    return setting.equals("mile") ? MILE : KM;
  }

  /** The distance in miles: itself, or to 34 figures. */
  public BigDecimal miles(BigDecimal distance) {
    return this == MILE ? distance : distance.divide(KM_PER_MILE, MathContext.DECIMAL128);
  }

  /** The distance in kilometres, exact. */
  public BigDecimal kilometres(BigDecimal distance) {
    return this == KM ? distance : distance.multiply(KM_PER_MILE);
  }

  /** A distance on a page, as {@code 12.5 km}. */
  public Message far(BigDecimal distance) {
    return this == MILE
        ? Message.of("tax.distance.miles", distance)
        : Message.of("tax.distance.km", distance);
  }

  /** What a page calls it in the column of units. */
  public Message said() {
    return this == MILE ? Message.of("tax.unit.mile") : Message.of("tax.unit.km");
  }

  /** One of them, as the setting has it. */
  public String word() {
    return word;
  }
}
