package clenchbook.tax.jurisdiction;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.tax.assets.AssetList;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.expenses.CostRule;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.IncomeLines;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.SalesTaxLines;
import clenchbook.tax.sales.Turnover;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A country's tax regime: everything in which its year's end differs from another's. All methods
 * are pure; rates come by {@link RateLookup}, which remembers what was used and what was missing.
 */
public interface Jurisdiction {

  /** Its word, its folder of rates, and its codes for the lines that every regime has. */
  Regime regime();

  /**
   * What the business trips of a tax year come to at its money for a mile or kilometre.
   *
   * @param driven the business trips of some distance, by date
   * @param unit the book's unit of distance
   * @return none where the regime has no such money
   */
  default MileageAllowance mileage(
      List<Trip> driven, DistanceUnit unit, RateLookup rates, MinorUnit money) {
    return MileageAllowance.none();
  }

  /**
   * The same where it takes more of the book than its trips, such as who owns the vehicle.
   *
   * @param input what the year's end is made from
   * @param driven the business trips of some distance, by date
   */
  default MileageAllowance mileage(YearEndInput input, List<Trip> driven, RateLookup rates) {
    return mileage(
        driven,
        DistanceUnit.of(input.book().settings().text(Setting.DISTANCE_UNIT)),
        rates,
        input.book().settings().minorUnit());
  }

  /** On which basis income and cost count: the setting's, where the law has both. */
  default TaxBasis basis(Book book) {
    return TaxBasis.of(book);
  }

  /**
   * Whether the tax paid on purchases is no cost because it comes back.
   *
   * @param input what the year's end is made from
   * @param billed everything billed, of any date
   */
  default boolean recoversInputTax(YearEndInput input, List<Billed> billed) {
    return input.book().settings().inputTaxRecovered();
  }

  /**
   * On which of its lines income counts.
   *
   * @param input what the year's end is made from
   * @param billed everything billed, of any date
   */
  default IncomeLines incomeLines(YearEndInput input, List<Billed> billed, RateLookup rates) {
    return IncomeLines.of(regime().codes());
  }

  /**
   * What it calls that way of counting a vehicle: in files, as {@code standard mileage}, and on a
   * page as a line's name, {@code Vehicle by standard mileage}; empty where it has none and the
   * vehicle is not shown both ways.
   */
  default Optional<Wording> mileageWay() {
    return Optional.empty();
  }

  /** Its rules for single codes of cost, by code. */
  default Map<String, CostRule> costRules(RateLookup rates, MinorUnit unit) {
    return Map.of();
  }

  /**
   * The asset register: every asset bought up to the year's end, by date bought, sheet and row.
   *
   * @param byMileage whether vehicles count by the money for a mile this year
   */
  default List<DepreciatedAsset> assets(YearEndInput input, boolean byMileage, RateLookup rates) {
    return AssetList.undepreciated(input);
  }

  /** Tells the lines that rest on a rate what to say of their basis and source. */
  default void explain(YearFigures figures, SummaryBuilder lines, RateLookup rates) {}

  /**
   * Puts its lines together, totals and estimates included.
   *
   * @return the assets that count as expense or income instead of staying in the register
   */
  CapitalItems build(YearFigures figures, SummaryBuilder lines, RateLookup rates);

  /** The codes of the three lines that stand first on the page: income, expenses, profit. */
  List<String> keyFigures();

  /** What the actual cost of a vehicle has beside its purchases, where both ways are shown. */
  default List<LineItem> besideActualCost(YearFigures figures, RateLookup rates) {
    return List.of();
  }

  /** Adds lines for tax on sales and purchases. */
  default void addSalesTax(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    SalesTaxLines.byRate(figures, lines);
  }

  /** The turnover that its limits count. */
  default Turnover turnover(YearFigures figures, RateLookup rates) {
    return Turnover.of(figures.billed(), figures.taxKinds());
  }

  /**
   * Accounts of the journal that bear another name here, where tax on sales or purchases is itself
   * income or cost; by the name they have elsewhere.
   */
  default Map<String, String> accounts(LineScheme lines) {
    return Map.of();
  }

  /** How it looks at the quarters of a year. */
  default Quarters quarters(TaxYear year, RateLookup rates) {
    return Quarters.APART;
  }

  /** Its tables beside the lines, in order. */
  default List<TaxTable> tables(YearFigures figures, List<SummaryLine> summary, RateLookup rates) {
    return List.of();
  }

  /**
   * What pages say for English words of its own that stand in its files: classes and conventions of
   * assets, why a cost does not count.
   */
  default Map<String, Message> words() {
    return Map.of();
  }

  /**
   * What pages call lines that its form lacks, by code; such a line stands under a word in files
   * and has no number.
   */
  default Map<String, Message> headings() {
    return Map.of();
  }

  /** What the farrier or preparer should look at, the most pressing first. */
  List<Message> notes(YearFigures figures, RateLookup rates);

  /** What the preparer must not expect to find worked out, one thing or group of things each. */
  List<Message> notComputed(YearFigures figures);

  /**
   * The languages in which a preparer there gets the page beside the farrier's own, as two-letter
   * codes; English is always one of them.
   */
  default List<String> languages() {
    return List.of(Texts.ENGLISH);
  }

  /**
   * The days over which its files of a quarter run, where they are not the quarter's own.
   *
   * @return empty where it has no such file
   */
  default Optional<Period> cumulative(TaxYear year, int quarter) {
    return Optional.empty();
  }

  /**
   * Files of its own beside the tables of a quarter.
   *
   * @param figures the figures of the cumulative days
   * @param lines the lines built from them
   */
  default List<TextFile> files(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    return List.of();
  }
}
