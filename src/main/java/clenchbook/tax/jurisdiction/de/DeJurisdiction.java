package clenchbook.tax.jurisdiction.de;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledBook;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.CostRule;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.IncomeLines;
import clenchbook.tax.journal.AccountNames;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.NamedRates;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.InputTax;
import clenchbook.tax.sales.Turnover;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.YearEndInput;
import clenchbook.texts.Message;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Germany: the income-surplus statement by the names of its lines, and advance returns. */
public final class DeJurisdiction implements Jurisdiction {
  /** Its word and codes. */
  public static final Regime REGIME =
      new Regime(
          "de",
          "euer",
          new Regime.Codes(
              DeIncomeLines.TAXED,
              DeIncomeLines.TAXED,
              DeIncomeLines.TAXED,
              false,
              "goods",
              "goods",
              "vehicle",
              true));

  static final String GIFTS = "gifts";
  static final String GIFTS_ABOVE = "gifts above the limit";
  static final String MEALS = "client meals";
  static final String MEALS_REST = "client meals, the part that does not count";
  private static final BigDecimal ZERO = BigDecimal.ZERO;
  private static final String TAX_PAID_OVER = "tax paid over";

  @Override
  public Regime regime() {
    return REGIME;
  }

  /** The statement goes by the money alone; the setting decides for value-added tax only. */
  @Override
  public TaxBasis basis(Book book) {
    return TaxBasis.ofCash(book);
  }

  @Override
  public IncomeLines incomeLines(YearEndInput input, List<Billed> billed, RateLookup rates) {
    return new DeIncomeLines(SmallBusiness.of(input.book(), billed, rates));
  }

  /** Never for a small business, unless Settings say so. */
  @Override
  public boolean recoversInputTax(YearEndInput input, List<Billed> billed) {
    boolean given = input.book().settings().isGiven(Setting.INPUT_TAX_RECOVERED);
    boolean recovered = input.book().settings().inputTaxRecovered();
    if (given || !recovered) {
      return recovered;
    }
    SmallBusiness small = SmallBusiness.of(input.book(), billed, new RateLookup(input.rates()));
    return !small.inYear(input.taxYear().year());
  }

  @Override
  public MileageAllowance mileage(YearEndInput input, List<Trip> driven, RateLookup rates) {
    return new DeVehicles(input, rates)
        .allowance(driven, input.taxYear().days(), input.book().settings().minorUnit());
  }

  @Override
  public Optional<Wording> mileageWay() {
    return Optional.of(Wording.of("money for a kilometre", "germany.vehicle.byKilometre"));
  }

  @Override
  public Map<String, CostRule> costRules(RateLookup rates, MinorUnit unit) {
    return Map.of(
        GIFTS,
        new CostRule(
            GIFTS, GIFTS_ABOVE, item -> withinLimit(item, rates) ? item.net() : ZERO, true),
        "private",
        CostRule.neverWithTax("private"),
        "not allowed",
        CostRule.neverWithTax("not allowed"),
        MEALS,
        new CostRule(MEALS, MEALS_REST, item -> unit.round(share(item, rates))),
        TAX_PAID_OVER,
        new CostRule(DeSummary.PAID_OVER, TAX_PAID_OVER, LineItem::net));
  }

  /** A gift above the limit counts not at all. */
  private static boolean withinLimit(LineItem gift, RateLookup rates) {
    return rates
        .find("de/limits", GIFTS, gift.date())
        .filter(limit -> gift.net().compareTo(limit.amount()) <= 0)
        .isPresent();
  }

  private static BigDecimal share(LineItem meal, RateLookup rates) {
    return rates
        .find("de/limits", MEALS, meal.date())
        .map(rate -> meal.net().multiply(rate.factor()))
        .orElse(ZERO);
  }

  @Override
  public List<DepreciatedAsset> assets(YearEndInput input, boolean byMileage, RateLookup rates) {
    return assets(input, rates).register();
  }

  private DeAssets assets(YearEndInput input, RateLookup rates) {
    List<Billed> billed = BilledBook.of(input.jobs(), input.register());
    return new DeAssets(
        input.book().assets(),
        new DeVehicles(input, rates),
        input.taxYear(),
        recoversInputTax(input, billed),
        rates,
        input.book().settings().minorUnit());
  }

  @Override
  public CapitalItems build(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    return new DeSummary(figures, lines, inputTax(figures, rates, true))
        .build(assets(figures.input(), rates));
  }

  /** The tax on purchases that comes back: none on gifts above the limit (§ 15 Abs. 1a UStG). */
  private List<LineItem> inputTax(YearFigures figures, RateLookup rates, boolean byPayment) {
    YearEndInput input = figures.input();
    if (!recoversInputTax(input, figures.billed())) {
      return List.of();
    }
    CategoryMap categories = new CategoryMap(REGIME, input.taxYear().last(), rates);
    List<LineItem> giftsAbove = LineItem.of(GIFTS_ABOVE, figures.expenses().left());
    return InputTax.of(input.book(), categories, byPayment).stream()
        .filter(item -> giftsAbove.stream().noneMatch(gift -> isSameRow(gift, item)))
        .toList();
  }

  private static boolean isSameRow(LineItem one, LineItem other) {
    return one.row() == other.row() && one.sheet().equals(other.sheet());
  }

  @Override
  public List<String> keyFigures() {
    return List.of("total income", "total expenses", "profit");
  }

  @Override
  public void addSalesTax(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    returns(figures, rates).addTo(lines);
  }

  private AdvanceReturns returns(YearFigures figures, RateLookup rates) {
    SmallBusiness small = SmallBusiness.of(figures.input().book(), figures.billed(), rates);
    return new AdvanceReturns(figures, small, inputTax(figures, rates, false), rates);
  }

  /** Small businesses are told by what they received (§ 19 UStG). */
  @Override
  public Turnover turnover(YearFigures figures, RateLookup rates) {
    return figures.basis().cashIncome()
        ? ReceivedTurnover.of(figures, incomeLines(figures.input(), figures.billed(), rates), rates)
        : Jurisdiction.super.turnover(figures, rates);
  }

  @Override
  public Map<String, String> accounts(LineScheme lines) {
    return Map.of(
        AccountNames.TAX_DUE, AccountNames.income(lines.head("vat received")),
        AccountNames.TAX_PAID, AccountNames.cost(lines.head("input tax")));
  }

  @Override
  public List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return List.of(
        returns(figures, rates).table(summary), NamedRates.of(figures, rates, "de/allowances"));
  }

  @Override
  public List<Message> notes(YearFigures figures, RateLookup rates) {
    SmallBusiness small = SmallBusiness.of(figures.input().book(), figures.billed(), rates);
    return new DeNotes(figures, new DeVehicles(figures.input(), rates), small, rates)
        .all(returns(figures, rates).elsewhere());
  }

  @Override
  public List<Message> notComputed(YearFigures figures) {
    return DeNotes.NOT_COMPUTED;
  }

  @Override
  public Map<String, Message> words() {
    return DeWords.ALL;
  }

  @Override
  public List<String> languages() {
    return List.of("en", "de");
  }
}
