package clenchbook.tax;

import clenchbook.tax.expenses.PurchaseJournal;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What lines that rest on a rate say of their basis, and the sources of those rates. */
final class Explanations {
  private Explanations() {}

  static void add(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    boolean byMileage = figures.vehicle().byMileage();
    lines.explain(
        PurchaseJournal.vehicleCode(figures.regime()),
        byMileage ? "by day driven; the rest when paid" : actual(figures),
        byMileage ? mileageSources(figures) : "");
    lines.explain("depreciation", "percentage tables", depreciationSources(rates));
    lines.explain(
        "meals", figures.basis().costWord() + ", the allowed share", sources(rates, "us/meals"));
  }

  private static String actual(YearFigures figures) {
    String cost = figures.basis().costWord();
    return figures.regime() == Regime.PLAIN ? cost : cost + ", at the business share";
  }

  /** The sources of the money for a mile that the trips took. */
  static String mileageSources(YearFigures figures) {
    return joined(figures.vehicle().mileage().steps().stream().map(step -> step.rate()));
  }

  private static String depreciationSources(RateLookup rates) {
    return joined(
        rates.used().stream()
            .filter(
                rate ->
                    rate.table().equals("us/depreciation") && rate.section().startsWith("Table")));
  }

  private static String sources(RateLookup rates, String table) {
    return joined(rates.used().stream().filter(rate -> rate.table().equals(table)));
  }

  private static String joined(Stream<Rate> rates) {
    List<String> citations = rates.map(Rate::citation).distinct().toList();
    return citations.stream().collect(Collectors.joining("; "));
  }
}
