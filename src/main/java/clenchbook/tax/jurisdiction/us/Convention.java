package clenchbook.tax.jurisdiction.us;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.texts.Message;
import java.util.Optional;
import java.util.stream.Stream;

/** How much of its first year an asset counts, and so which of the percentage tables it goes by. */
enum Convention {
  /** Half of it. */
  HALF_YEAR("half-year", Message.of("america.convention.halfYear")),
  /** From the middle of the first quarter. */
  QUARTER_1("quarter 1", Message.of("america.convention.quarter", 1)),
  /** From the middle of the second quarter. */
  QUARTER_2("quarter 2", Message.of("america.convention.quarter", 2)),
  /** From the middle of the third quarter. */
  QUARTER_3("quarter 3", Message.of("america.convention.quarter", 3)),
  /** From the middle of the last quarter. */
  QUARTER_4("quarter 4", Message.of("america.convention.quarter", 4)),
  /** Evenly, as a vehicle that is not used enough for the faster tables. */
  STRAIGHT_LINE("straight line", Message.of("america.convention.straightLine"));

  private final String code;
  private final Message said;

  Convention(String code, Message said) {
    this.code = code;
    this.said = said;
  }

  /** That of an asset bought in a quarter of a year whose assets came mostly in its last one. */
  static Convention midQuarter(int quarter) {
    return Stream.of(QUARTER_1, QUARTER_2, QUARTER_3, QUARTER_4).toList().get(quarter - 1);
  }

  /** That of an asset in the register; none for one that no table depreciates. */
  static Optional<Convention> of(DepreciatedAsset asset) {
    return Stream.of(values())
        .filter(convention -> convention.code.equals(asset.convention()))
        .findFirst();
  }

  /** Whether it counts by the quarter bought. */
  boolean isMidQuarter() {
    return this != HALF_YEAR && this != STRAIGHT_LINE;
  }

  /** What the tables and files call it. */
  String code() {
    return code;
  }

  /** What pages call it. */
  Message said() {
    return said;
  }
}
