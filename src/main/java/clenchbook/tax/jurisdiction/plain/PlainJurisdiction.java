package clenchbook.tax.jurisdiction.plain;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.VatPeriod;
import clenchbook.tax.sales.VatPurchases;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

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
  public Map<String, Message> headings() {
    return Headings.SAID;
  }

  @Override
  public List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return List.of(TaxTable.asIs(Message.of("plain.inputTax"), inputTax(figures)));
  }

  /** The tax on purchases that comes back, by quarter. */
  private static FigureTable inputTax(YearFigures figures) {
    List<LineItem> purchases = VatPurchases.of(figures.input().book());
    TaxYear year = figures.input().taxYear();
    return FiguresOf.rows(quarters(figures))
        .column("period", quarter -> year.label() + " Q" + quarter)
        .amount("net", quarter -> of(quarter, purchases, figures).purchases())
        .amount("tax", quarter -> of(quarter, purchases, figures).purchaseTax())
        .named("input-tax");
  }

  /** The quarters that the figures hold; none where tax on purchases does not come back. */
  private static List<Integer> quarters(YearFigures figures) {
    TaxYear year = figures.input().taxYear();
    return figures.input().book().settings().inputTaxRecovered()
        ? Stream.of(1, 2, 3, 4)
            .filter(
                quarter -> figures.wholeYear() || figures.period().equals(year.quarter(quarter)))
            .toList()
        : List.of();
  }

  private static VatPeriod of(int quarter, List<LineItem> purchases, YearFigures figures) {
    Period period = figures.input().taxYear().quarter(quarter);
    return VatPeriod.of(period, List.of(), purchases, figures.unit());
  }

  @Override
  public List<Message> notes(YearFigures figures, RateLookup rates) {
    return List.of(Message.of("plain.note.noCountry"));
  }

  @Override
  public List<Message> notComputed(YearFigures figures) {
    return List.of(Message.of("plain.notComputed.rules"), Message.of("plain.notComputed.tax"));
  }
}
