package clenchbook.reports.month;

import clenchbook.values.Basis;
import java.util.Locale;

/** Words that stand in figure tables. */
final class BasisText {
  private BasisText() {}

  static String basis(Basis basis) {
    return basis.name().toLowerCase(Locale.ROOT);
  }
}
