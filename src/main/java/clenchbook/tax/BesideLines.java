package clenchbook.tax;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.rates.RateLookup;
import java.util.ArrayList;
import java.util.List;

/**
 * What the summary shows beside its lines: the parts of the income, the vehicle both ways, and what
 * does not count.
 */
final class BesideLines {
  private BesideLines() {}

  static void add(
      YearFigures figures, Jurisdiction jurisdiction, SummaryBuilder lines, RateLookup rates) {
    income(figures, lines);
    jurisdiction
        .mileageWay()
        .ifPresent(
            way -> vehicle(way, figures, jurisdiction.besideActualCost(figures, rates), lines));
    left(figures, lines);
  }

  private static void income(YearFigures figures, SummaryBuilder lines) {
    LineHead head = lines.scheme().head(figures.regime().codes().work());
    figures
        .income()
        .parts()
        .forEach(
            (part, items) ->
                lines.beside(named(head, part, "of which " + part), items, figures.basis().word()));
  }

  private static void vehicle(
      String way, YearFigures figures, List<LineItem> more, SummaryBuilder lines) {
    LineHead head = lines.scheme().head(figures.regime().codes().vehicle());
    List<LineItem> mileage = LineItem.within(figures.period(), figures.vehicle().mileage().items());
    String counted = figures.vehicle().byMileage() ? "counted" : "not counted";
    String sources = Explanations.mileageSources(figures);
    LineHead byMile = new LineHead(head.line() + " " + way, "Vehicle by " + way, sources);
    lines.beside(byMile, mileage, "by day driven, " + counted);
    List<LineItem> actual = new ArrayList<>(figures.vehicle().actual());
    actual.addAll(more);
    String other = figures.vehicle().byMileage() ? "not counted" : "counted";
    lines.beside(
        named(head, "actual cost", "Vehicle by actual cost at the business share"),
        actual,
        figures.basis().costWord() + ", " + other);
  }

  private static void left(YearFigures figures, SummaryBuilder lines) {
    figures.expenses().left().stream()
        .map(LineItem::code)
        .distinct()
        .sorted()
        .forEach(
            code ->
                lines.beside(
                    new LineHead(
                        "not counted: " + code, "Not counted: " + code, "categories of the regime"),
                    LineItem.of(code, figures.expenses().left()),
                    figures.basis().costWord()));
  }

  private static LineHead named(LineHead head, String suffix, String name) {
    return new LineHead(head.line() + " " + suffix, name, head.source());
  }
}
