package clenchbook.tax;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import java.util.ArrayList;
import java.util.List;

/**
 * What the summary shows beside its lines: the parts of the income, the vehicle both ways, and what
 * does not count.
 */
final class BesideLines {
  private static final Wording ACTUAL_COST =
      Wording.of("Vehicle by actual cost at the business share", "tax.beside.actualCost");

  private BesideLines() {}

  static void add(
      YearFigures figures, Jurisdiction jurisdiction, SummaryBuilder lines, RateLookup rates) {
    income(figures, lines);
    jurisdiction
        .mileageWay()
        .ifPresent(
            way -> vehicle(way, figures, jurisdiction.besideActualCost(figures, rates), lines));
    left(figures, new FileWords(jurisdiction), lines);
  }

  private static void income(YearFigures figures, SummaryBuilder lines) {
    LineHead head = lines.scheme().head(figures.regime().codes().work());
    figures
        .income()
        .parts()
        .forEach(
            (part, items) ->
                lines.beside(
                    named(head, part.word(), new Wording("of which " + part.word(), part.said())),
                    items,
                    figures.basis().word()));
  }

  private static void vehicle(
      Wording way, YearFigures figures, List<LineItem> more, SummaryBuilder lines) {
    LineHead head = lines.scheme().head(figures.regime().codes().vehicle());
    List<LineItem> mileage = LineItem.within(figures.period(), figures.vehicle().mileage().items());
    boolean byMileage = figures.vehicle().byMileage();
    String sources = Explanations.mileageSources(figures);
    LineHead byMile =
        named(head, way.file(), new Wording("Vehicle by " + way.file(), way.said())).from(sources);
    lines.beside(byMile, mileage, Bases.counted(Bases.BY_DAY, byMileage));
    List<LineItem> actual = new ArrayList<>(figures.vehicle().actual());
    actual.addAll(more);
    lines.beside(
        named(head, "actual cost", ACTUAL_COST),
        actual,
        Bases.counted(figures.basis().costWord(), !byMileage));
  }

  private static void left(YearFigures figures, FileWords words, SummaryBuilder lines) {
    figures.expenses().left().stream()
        .map(LineItem::code)
        .distinct()
        .sorted()
        .forEach(
            code ->
                lines.beside(
                    notCounted(code, words),
                    LineItem.of(code, figures.expenses().left()),
                    figures.basis().costWord()));
  }

  /** A line for what does not count. */
  private static LineHead notCounted(String code, FileWords words) {
    return LineHead.unnumbered(
        "not counted: " + code,
        Wording.of("Not counted: " + code, "tax.notCounted", words.said(code)),
        "categories of the regime");
  }

  private static LineHead named(LineHead head, String suffix, Wording name) {
    return new LineHead(
        new Wording(head.line() + " " + suffix, head.number().said()), name, head.source());
  }
}
