package clenchbook.tax.jurisdiction.ca;

import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.CostRule;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.NamedRates;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.InputTax;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.YearEndInput;
import clenchbook.texts.Message;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Canada: Form T2125 by its four-digit lines, and GST/HST by the province of the work. */
public final class CaJurisdiction implements Jurisdiction {
  /** Its word and codes. */
  public static final Regime REGIME =
      new Regime(
          "ca",
          "t2125",
          new Regime.Codes(
              "sales", "sales", "sales", false, "purchases", "purchases", "motor vehicle", true));

  static final String MEALS = "meals";
  static final String MEALS_REST = "meals, the part that does not count";

  @Override
  public Regime regime() {
    return REGIME;
  }

  @Override
  public Map<String, CostRule> costRules(RateLookup rates, MinorUnit unit) {
    return Map.of(
        MEALS,
        new CostRule(
            MEALS,
            MEALS_REST,
            item ->
                rates
                    .find("ca/limits", MEALS, item.date())
                    .map(rate -> unit.round(item.net().multiply(rate.factor())))
                    .orElse(BigDecimal.ZERO)));
  }

  @Override
  public List<DepreciatedAsset> assets(YearEndInput input, boolean byMileage, RateLookup rates) {
    return classes(input, rates).register();
  }

  private static CcaClasses classes(YearEndInput input, RateLookup rates) {
    return new CcaClasses(
        input.book().assets(), input.taxYear(), rates, input.book().settings().minorUnit());
  }

  @Override
  public CapitalItems build(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    return new CaSummary(figures, lines).build(classes(figures.input(), rates));
  }

  @Override
  public List<String> keyFigures() {
    return List.of("gross income", "total expenses", "net income");
  }

  @Override
  public void addSalesTax(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    gst(figures, rates).addTo(lines);
  }

  private static GstReturn gst(YearFigures figures, RateLookup rates) {
    YearEndInput input = figures.input();
    CategoryMap categories = new CategoryMap(REGIME, input.taxYear().last(), rates);
    List<LineItem> bought =
        input.book().settings().inputTaxRecovered()
            ? InputTax.of(input.book(), categories, false)
            : List.of();
    return new GstReturn(figures, bought, rates);
  }

  @Override
  public List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return List.of(
        gst(figures, rates).table(summary),
        new GstByProvince(figures, rates).table(),
        classes(figures.input(), rates).table(),
        NamedRates.of(figures, rates, "ca/due", "ca/allowances"));
  }

  @Override
  public List<Message> notes(YearFigures figures, RateLookup rates) {
    return new CaNotes(figures, rates)
        .all(new GstByProvince(figures, rates), classes(figures.input(), rates));
  }

  @Override
  public List<Message> notComputed(YearFigures figures) {
    return CaNotes.NOT_COMPUTED;
  }

  @Override
  public Map<String, Message> words() {
    return CaWords.ALL;
  }

  @Override
  public List<String> languages() {
    return List.of("en", "fr");
  }
}
