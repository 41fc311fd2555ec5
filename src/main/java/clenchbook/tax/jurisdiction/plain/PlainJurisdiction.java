package clenchbook.tax.jurisdiction.plain;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.VatPeriod;
import clenchbook.tax.sales.VatPurchases;
import clenchbook.tax.year.Regime;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.util.ArrayList;
import java.util.List;

/** No country: categories and value-added tax by rate. */
public final class PlainJurisdiction implements Jurisdiction {
  /** Its word and codes. */
  public static final Regime REGIME =
      new Regime(
          "plain",
          "lines",
          new Regime.Codes(
              "turnover", "tips", "refunds", false, "goods", "goods used", "vehicle", false));

  @Override
  public Regime regime() {
    return REGIME;
  }

  @Override
  public CapitalItems build(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    new PlainSummary(figures, lines).build();
    return CapitalItems.NONE;
  }

  @Override
  public List<String> keyFigures() {
    return List.of("total income", "total expenses", "profit");
  }

  @Override
  public List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return List.of(
        TaxTable.asIs(Message.literal("Tax on purchases that comes back"), inputTax(figures)));
  }

  /** The tax on purchases that comes back, by quarter. */
  private static FigureTable inputTax(YearFigures figures) {
    List<List<String>> rows = new ArrayList<>();
    if (figures.input().book().settings().inputTaxRecovered()) {
      List<LineItem> purchases = VatPurchases.of(figures.input().book());
      for (int quarter = 1; quarter <= 4; quarter++) {
        Period period = figures.input().taxYear().quarter(quarter);
        if (figures.wholeYear() || figures.period().equals(period)) {
          VatPeriod vat = VatPeriod.of(period, List.of(), purchases, figures.unit());
          rows.add(
              List.of(
                  figures.input().taxYear().label() + " Q" + quarter,
                  vat.purchases().toPlainString(),
                  vat.purchaseTax().toPlainString()));
        }
      }
    }
    return new FigureTable("input-tax", List.of("period", "net", "tax"), rows);
  }

  @Override
  public List<Message> notes(YearFigures figures, RateLookup rates) {
    return List.of(
        Sentence.of(
            "No country's rules are applied: no depreciation, no private share, no limits. A"
                + " preparer sets them."));
  }

  @Override
  public List<Message> notComputed(YearFigures figures) {
    return List.of(
        Sentence.of("Depreciation, private shares and limits of any country"),
        Sentence.of("Every tax"));
  }
}
