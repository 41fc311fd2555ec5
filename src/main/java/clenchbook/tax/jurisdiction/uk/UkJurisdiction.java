package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Trip;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.assets.AssetList;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.expenses.CostRule;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.Quarters;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.jurisdiction.TextFile;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The United Kingdom: the self-employment pages, simplified mileage, VAT. */
public final class UkJurisdiction implements Jurisdiction {
  /** Its word and codes. */
  public static final Regime REGIME =
      new Regime(
          "uk",
          "sa103f",
          new Regime.Codes(
              "turnover",
              "turnover",
              "turnover",
              false,
              "cost of goods",
              "cost of goods",
              "car and travel",
              true));

  /** The code of gifts to clients. */
  static final String GIFTS = "client gifts";

  /** The code of entertaining clients. */
  static final String ENTERTAINMENT = "entertainment";

  @Override
  public Regime regime() {
    return REGIME;
  }

  @Override
  public MileageAllowance mileage(
      List<Trip> driven, DistanceUnit unit, RateLookup rates, MinorUnit money) {
    return MileageAllowance.of(
        new SimplifiedMileage(unit, rates).of(driven), REGIME.codes().vehicle(), money);
  }

  @Override
  public Optional<Wording> mileageWay() {
    return Optional.of(Wording.of("simplified mileage", "britain.way.mileage"));
  }

  /** Gifts and entertaining never count; both are listed (ITTOIA 2005 s.45). */
  @Override
  public Map<String, CostRule> costRules(RateLookup rates, MinorUnit unit) {
    return Map.of(GIFTS, CostRule.never(GIFTS), ENTERTAINMENT, CostRule.never(ENTERTAINMENT));
  }

  @Override
  public Map<String, Message> words() {
    Map<String, Message> words = new HashMap<>();
    Stream.of(AssetKind.values()).forEach(kind -> words.put(kind.word(), kind.said()));
    words.put(GIFTS, Message.of("britain.left.gifts"));
    words.put(ENTERTAINMENT, Message.of("britain.left.entertainment"));
    return words;
  }

  @Override
  public List<DepreciatedAsset> assets(YearEndInput input, boolean byMileage, RateLookup rates) {
    AssetClasses classes = new AssetClasses(REGIME, rates);
    MinorUnit unit = input.book().settings().minorUnit();
    return AssetList.until(input.taxYear().last(), input.book().assets()).stream()
        .map(
            asset -> {
              AssetKind kind = AssetKind.of(asset, classes);
              return DepreciatedAsset.without(
                  asset, AssetList.basis(asset, unit), kind.word(), kind != AssetKind.EQUIPMENT);
            })
        .toList();
  }

  @Override
  public CapitalItems build(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    UkSummary summary = new UkSummary(figures, lines, rates);
    summary.build();
    return new CapitalItems(summary.equipment(), summary.proceeds());
  }

  @Override
  public List<String> keyFigures() {
    return List.of("turnover", "total expenses", "net profit");
  }

  @Override
  public void addSalesTax(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    VatTable vat = new VatTable(figures, rates);
    if (vat.isRegistered()) {
      VatLines boxes = new VatLines(figures, lines);
      vat.periods().forEach(period -> boxes.add(period.period()));
    }
  }

  @Override
  public Quarters quarters(TaxYear year, RateLookup rates) {
    return QuarterlyUpdates.begun(year, rates) ? QuarterlyUpdates.of(year, rates) : Quarters.APART;
  }

  @Override
  public List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return new UkTables(figures, rates).all(summary);
  }

  @Override
  public Optional<Period> cumulative(TaxYear year, int quarter) {
    return Optional.of(year.toEndOfQuarter(quarter));
  }

  @Override
  public List<TextFile> files(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    return new UpdateBody(figures, lines, rates)
        .json().stream().map(json -> new TextFile("quarterly-update.json", json)).toList();
  }

  @Override
  public List<Message> notes(YearFigures figures, RateLookup rates) {
    return UkNotes.of(figures, rates);
  }

  @Override
  public List<Message> notComputed(YearFigures figures) {
    return UkNotes.NOT_COMPUTED;
  }
}
