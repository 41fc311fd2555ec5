package clenchbook.stock.bar;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.stock.ledger.Quantity;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How lengths stand on pages: millimetres, or inches at two decimals where Units asks.
 *
 * @param inches whether it is inches
 */
public record ShopLength(boolean inches) {

  static final ShopLength MM = new ShopLength(false);
  public static final ShopLength INCHES = new ShopLength(true);

  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

  public static ShopLength of(Settings settings) {
    return settings.text(Setting.UNITS).equals("imperial") ? INCHES : MM;
  }

  /** Gives a length for people, half-up. */
  public String text(BigDecimal mm) {
    return inches
        ? mm.divide(MM_PER_INCH, 2, RoundingMode.HALF_UP).toPlainString()
        : Quantity.text(mm);
  }

  /** Gives the unit as the pages have it. */
  public Message said() {
    return inches ? Message.of("stock.unit.inch") : Message.literal("mm");
  }
}
