package clenchbook.tax;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.rates.Rate;
import java.util.stream.Collectors;

/** What the vehicle's line says of its basis, and the sources of the rates in it. */
final class Explanations {
  private Explanations() {}

  static void add(YearFigures figures, SummaryBuilder lines) {
    boolean byMileage = figures.vehicle().byMileage();
    lines.explain(
        figures.regime().codes().vehicle(),
        byMileage ? "by day driven; the rest when paid" : actual(figures),
        byMileage ? mileageSources(figures) : "");
  }

  private static String actual(YearFigures figures) {
    String cost = figures.basis().costWord();
    return figures.regime().codes().vehicleShared() ? cost + ", at the business share" : cost;
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
