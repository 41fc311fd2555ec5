package clenchbook.tax.jurisdiction.uk;

import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import java.util.Locale;

/** The flat rates of VAT that are shown side by side, since no category names farriers. */
enum FlatRate {
  /** For trades that no category names. */
  OTHER_ACTIVITY("other activity", "britain.scheme.otherActivity"),
  /** For traders who buy few goods. */
  LIMITED_COST("limited cost", "britain.scheme.limitedCost");

  private final String code;
  private final String key;

  FlatRate(String code, String key) {
    this.code = code;
    this.key = key;
  }

  /** Its code in the table of flat rates. */
  String code() {
    return code;
  }

  /** What files and pages call the scheme at a rate. */
  Wording scheme(Rate rate) {
    String name = rate.name().toLowerCase(Locale.ROOT);
    return Wording.of("flat rate " + rate.value() + " % (" + name + ")", key, rate.amount());
  }
}
