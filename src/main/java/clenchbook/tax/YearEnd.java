package clenchbook.tax;

import clenchbook.book.Asset;
import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.Trip;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledBook;
import clenchbook.tax.billed.OwnerDebts;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Income;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TextFile;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.vehicle.MileageChecks;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import clenchbook.tax.vehicle.Vehicle;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.time.LocalDate;
import java.util.List;

/** The year's end: from the frozen book to every figure, row and page of the tax summary. */
public final class YearEnd {
  private final YearEndInput input;
  private final RateLookup rates;
  private final Jurisdiction jurisdiction;
  private final Regime regime;
  private final MinorUnit unit;
  private final LocalDate lastDay;

  private YearEnd(YearEndInput input) {
    this.input = input;
    this.rates = new RateLookup(input.rates());
    this.regime = input.taxYear().regime();
    this.jurisdiction = Jurisdictions.find(regime.word()).orElseThrow();
    this.unit = input.book().settings().minorUnit();
    this.lastDay = input.taxYear().last();
  }

  /**
   * Makes the year's end. A figure whose rate the tables lack for its day is left out, and the
   * findings' errors name the table; no figure ever rests on another year's rate.
   */
  public static YearEndFindings of(YearEndInput input) {
    return new YearEnd(input).findings();
  }

  private YearEndFindings findings() {
    LineScheme lines = new LineScheme(regime, lastDay, rates, jurisdiction.headings());
    YearFigures figures = figures(lines, input, input.period());
    SummaryBuilder builder = new SummaryBuilder(lines, unit, input.period().last());
    Explanations.add(figures, builder);
    jurisdiction.explain(figures, builder, rates);
    CapitalItems capital = jurisdiction.build(figures, builder, rates);
    BesideLines.add(figures, jurisdiction, builder, rates);
    jurisdiction.addSalesTax(figures, builder, rates);
    List<JournalEntry> journal =
        YearJournal.of(figures, lines, capital, jurisdiction.accounts(lines));
    Reconciliation ties =
        Reconciliation.of(figures, OwnerDebts.of(input.jobs(), input.register(), input.period()));
    YearTables tables = new YearTables(figures, jurisdiction, lines, rates);
    return new YearEndReport(figures, jurisdiction, builder, journal, ties, tables, rates)
        .findings(files(lines));
  }

  /** What the regime writes for a quarter, from figures over its cumulative days. */
  private List<TextFile> files(LineScheme lines) {
    return input
        .quarter()
        .flatMap(quarter -> jurisdiction.cumulative(input.taxYear(), quarter))
        .map(days -> files(lines, days))
        .orElse(List.of());
  }

  private List<TextFile> files(LineScheme lines, Period days) {
    YearFigures figures = figures(lines, input.withStock(StockValue.of(input.jobs(), days)), days);
    SummaryBuilder builder = new SummaryBuilder(lines, unit, days.last());
    jurisdiction.build(figures, builder, rates);
    return jurisdiction.files(figures, builder, rates);
  }

  private YearFigures figures(LineScheme lines, YearEndInput input, Period period) {
    Book book = input.book();
    TaxBasis basis = jurisdiction.basis(book);
    List<Billed> billed = BilledBook.of(input.jobs(), input.register());
    Income income =
        Income.of(
            input, billed, period, basis, lines, jurisdiction.incomeLines(input, billed, rates));
    CategoryMap categories = new CategoryMap(regime, lastDay, rates);
    Expenses expenses =
        Expenses.of(
            book,
            period,
            basis,
            jurisdiction.recoversInputTax(input, billed),
            categories,
            jurisdiction.costRules(rates, unit));
    DistanceUnit distance = DistanceUnit.of(book.settings().text(Setting.DISTANCE_UNIT));
    MileageChecks checks = new MileageChecks(distance, rates, lastDay);
    MileageLog log = MileageLog.of(book.trips(), period, checks);
    MileageAllowance mileage = mileage(book.trips());
    List<DepreciatedAsset> assets = jurisdiction.assets(input, !mileage.items().isEmpty(), rates);
    List<Asset> vehicles =
        assets.stream().filter(DepreciatedAsset::vehicle).map(DepreciatedAsset::asset).toList();
    return new YearFigures(
        input,
        billed,
        period,
        basis,
        income,
        expenses,
        log,
        Vehicle.of(mileage, log, expenses.vehicleRows(), vehicles, regime, unit),
        assets,
        Reconstructed.of(input.jobs().all(), book.trips(), book.places(), period));
  }

  private MileageAllowance mileage(List<Trip> trips) {
    Period days = input.taxYear().toEndOfQuarter(4);
    LocalDate last = days.last().isAfter(lastDay) ? days.last() : lastDay;
    Period year = new Period(days.first(), last);
    List<Trip> ofYear = trips.stream().filter(trip -> year.holds(trip.date())).toList();
    return jurisdiction.mileage(input, MileageAllowance.driven(ofYear), rates);
  }
}
