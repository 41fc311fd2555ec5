package clenchbook.tax;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import java.util.stream.Collectors;

/** What the vehicle's line says of its basis, and the sources of the rates in it. */
final class Explanations {
  private Explanations() {}

  static void add(YearFigures figures, SummaryBuilder lines) {
    boolean byMileage = figures.vehicle().byMileage();
    String code = figures.regime().codes().vehicle();
    boolean onOtherLine =
        figures.vehicle().mileage().items().stream().anyMatch(item -> !item.code().equals(code));
    Wording basis = byMileage ? Bases.BY_DAY_AND_PAID : actual(figures);
    String sources = byMileage ? mileageSources(figures) : "";
    if (!onOtherLine) {
      lines.explain(code, basis, sources);
    }
    figures.vehicle().mileage().items().stream()
        .map(LineItem::code)
        .distinct()
        .filter(other -> !other.equals(code))
        .forEach(other -> lines.explain(other, Bases.BY_DAY, sources));
  }

  private static Wording actual(YearFigures figures) {
    Wording cost = figures.basis().costWord();
    return figures.regime().codes().vehicleShared() ? Bases.shared(cost) : cost;
  }

  /** The sources of the money for a mile that the trips took. */
  static String mileageSources(YearFigures figures) {
    return figures.vehicle().mileage().steps().stream()
        .map(step -> step.rate())
        .map(Rate::citation)
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
