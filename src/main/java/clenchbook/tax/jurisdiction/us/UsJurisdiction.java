package clenchbook.tax.jurisdiction.us;

import clenchbook.book.Trip;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.expenses.CostRule;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.NamedRates;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.YearEndInput;
import clenchbook.texts.Message;
import clenchbook.values.money.MinorUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The United States: Schedule C, the standard mileage rate, MACRS, self-employment tax. */
public final class UsJurisdiction implements Jurisdiction {
  /** Its word and codes. */
  public static final Regime REGIME =
      new Regime(
          "us",
          "schedule-c",
          new Regime.Codes(
              "gross receipts",
              "gross receipts",
              "returns",
              true,
              "cost of goods",
              "cost of goods",
              "car and truck",
              true));

  /** The code of gifts to clients. */
  static final String GIFTS = "client gifts";

  private static final String MEALS_LEFT = "meals that do not count";
  private static final String GIFTS_LEFT = "client gifts above the limit";

  @Override
  public Regime regime() {
    return REGIME;
  }

  @Override
  public MileageAllowance mileage(
      List<Trip> driven, DistanceUnit unit, RateLookup rates, MinorUnit money) {
    List<MileageAllowance.Stretch> stretches =
        MileageAllowance.stretches(
            driven,
            trip -> rates.find("us/mileage", "business", trip.date()),
            trip -> unit.miles(trip.distance().orElseThrow()));
    return MileageAllowance.of(stretches, REGIME.codes().vehicle(), money);
  }

  @Override
  public Optional<Wording> mileageWay() {
    return Optional.of(Wording.of("standard mileage", "america.way.mileage"));
  }

  @Override
  public Map<String, CostRule> costRules(RateLookup rates, MinorUnit unit) {
    return Map.of(
        "meals",
        meals(rates, unit),
        "restaurant meals",
        meals(rates, unit),
        GIFTS,
        gifts(rates, unit));
  }

  /**
   * The book does not know the persons, so each purchase counts up to the limit for one
   * (Publication 463, chapter 3).
   */
  private static CostRule gifts(RateLookup rates, MinorUnit unit) {
    return new CostRule(
        GIFTS,
        GIFTS_LEFT,
        item ->
            rates
                .find("us/limits", GIFTS, item.date())
                .map(limit -> item.net().min(unit.round(limit.amount())))
                .orElse(unit.zero()));
  }

  private static CostRule meals(RateLookup rates, MinorUnit unit) {
    return new CostRule(
        "meals",
        MEALS_LEFT,
        item ->
            rates
                .find("us/meals", item.code(), item.date())
                .map(rate -> unit.round(item.net().multiply(rate.factor())))
                .orElse(unit.zero()));
  }

  @Override
  public Map<String, Message> words() {
    Map<String, Message> words = new HashMap<>();
    Stream.of(Convention.values()).forEach(one -> words.put(one.code(), one.said()));
    Stream.of(3, 5, 7)
        .forEach(years -> words.put(years + "-year", Message.of("america.kind.years", years)));
    words.put("vehicle", Message.of("america.kind.vehicle"));
    words.put("standard mileage", Message.of("america.convention.mileage"));
    words.put(MEALS_LEFT, Message.of("america.left.meals"));
    words.put(GIFTS_LEFT, Message.of("america.left.gifts"));
    return words;
  }

  @Override
  public List<DepreciatedAsset> assets(YearEndInput input, boolean byMileage, RateLookup rates) {
    return new UsAssets(input, rates).register(byMileage);
  }

  @Override
  public void explain(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    lines.explain(
        DepreciatedAsset.DEPRECIATION,
        Wording.of("percentage tables", "america.basis.tables"),
        joined(
            rates.used().stream()
                .filter(
                    rate ->
                        rate.table().equals("us/depreciation")
                            && rate.section().startsWith("Table"))));
    Wording cost = figures.basis().costWord();
    lines.explain(
        "meals",
        Wording.of(cost.file() + ", the allowed share", "america.basis.allowedShare", cost.said()),
        joined(rates.used().stream().filter(rate -> rate.table().equals("us/meals"))));
  }

  private static String joined(Stream<Rate> rates) {
    return rates.map(Rate::citation).distinct().collect(Collectors.joining("; "));
  }

  @Override
  public CapitalItems build(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    new UsSummary(figures, lines, rates).build();
    return CapitalItems.NONE;
  }

  @Override
  public List<String> keyFigures() {
    return List.of("gross income", "total expenses", "net profit");
  }

  @Override
  public List<LineItem> besideActualCost(YearFigures figures, RateLookup rates) {
    return figures.wholeYear()
        ? new UsAssets(figures.input(), rates)
            .byTables().stream()
                .filter(asset -> asset.vehicle() && asset.thisYear().signum() != 0)
                .map(figures::depreciationItem)
                .toList()
        : List.of();
  }

  @Override
  public List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return List.of(
        TaxTable.asIs(
                Message.of("america.instalments"), new Instalments(figures, rates).table(summary))
            .headed("instalment", Message.of("america.column.instalment"))
            .headed("period_ends", Message.of("america.column.periodEnds"))
            .headed("part_of_self_employment_tax", Message.of("america.column.part"))
            .placedOnPage(),
        NamedRates.of(
            figures, rates, "us/allowances", "us/limits", "us/qualified-business-income"));
  }

  @Override
  public List<Message> notes(YearFigures figures, RateLookup rates) {
    return UsNotes.of(figures, rates);
  }

  @Override
  public List<Message> notComputed(YearFigures figures) {
    return UsNotes.NOT_COMPUTED;
  }
}
