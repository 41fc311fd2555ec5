package clenchbook.tax.jurisdiction.au;

import clenchbook.book.Trip;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.NamedRates;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.YearEndInput;
import clenchbook.texts.Message;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Australia: item P8 by names, activity statements, cents per kilometre, simplified assets. */
public final class AuJurisdiction implements Jurisdiction {
  /** Its word and codes. */
  public static final Regime REGIME =
      new Regime(
          "au",
          "business-schedule",
          new Regime.Codes(
              "turnover",
              "turnover",
              "turnover",
              false,
              "purchases",
              "purchases",
              "motor vehicle",
              true));

  @Override
  public Regime regime() {
    return REGIME;
  }

  @Override
  public MileageAllowance mileage(YearEndInput input, List<Trip> driven, RateLookup rates) {
    return new AuVehicles(input, rates).allowance(driven, input.book().settings().minorUnit());
  }

  @Override
  public Optional<Wording> mileageWay() {
    return Optional.of(Wording.of("cents per kilometre", "australia.vehicle.byKilometre"));
  }

  @Override
  public List<DepreciatedAsset> assets(YearEndInput input, boolean byMileage, RateLookup rates) {
    return simplified(input, byMileage, rates).register();
  }

  private static AuAssets simplified(YearEndInput input, boolean byMileage, RateLookup rates) {
    return new AuAssets(
        input.book().assets(),
        new AuVehicles(input, rates),
        input.taxYear(),
        byMileage,
        rates,
        input.book().settings().minorUnit());
  }

  @Override
  public CapitalItems build(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    boolean byMileage = figures.vehicle().byMileage();
    return new AuSummary(figures, lines, simplified(figures.input(), byMileage, rates)).build();
  }

  @Override
  public List<String> keyFigures() {
    return List.of("gross income", "total expenses", "net profit");
  }

  @Override
  public void addSalesTax(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    new ActivityStatement(figures, rates).addTo(lines);
  }

  @Override
  public List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return List.of(
        new ActivityStatement(figures, rates).table(summary),
        NamedRates.of(figures, rates, "au/allowances"));
  }

  @Override
  public Map<String, Message> words() {
    return Map.of(
        AuAssets.AT_ONCE, Message.of("australia.kind.writtenOff"),
        AuAssets.POOL, Message.of("australia.kind.pool"),
        AuAssets.IN_FULL, Message.of("australia.kind.atOnce"),
        AuVehicles.CAR, Message.of("australia.kind.car"),
        AuVehicles.OTHER, Message.of("australia.kind.goodsVehicle"));
  }

  @Override
  public List<Message> notes(YearFigures figures, RateLookup rates) {
    YearEndInput input = figures.input();
    return new AuNotes(figures, new AuVehicles(input, rates), rates)
        .all(simplified(input, figures.vehicle().byMileage(), rates));
  }

  @Override
  public List<Message> notComputed(YearFigures figures) {
    return AuNotes.NOT_COMPUTED;
  }
}
