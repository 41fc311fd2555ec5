package clenchbook.month;

import clenchbook.measure.Basis;
import java.util.Locale;

/** Words that stand in figure tables. */
final class Texts {
  private Texts() {}

  static String basis(Basis basis) {
    return basis.name().toLowerCase(Locale.ROOT);
  }
}
