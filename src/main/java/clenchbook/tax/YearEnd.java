package clenchbook.tax;

import clenchbook.book.Asset;
import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.tax.assets.AssetClasses;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.assets.Depreciation;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledBook;
import clenchbook.tax.billed.OwnerDebts;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Income;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.jurisdiction.plain.PlainSummary;
import clenchbook.tax.jurisdiction.uk.UkSummary;
import clenchbook.tax.jurisdiction.us.UsSummary;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.VatPeriod;
import clenchbook.tax.sales.VatTable;
import clenchbook.tax.vehicle.DistanceUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.vehicle.MileageChecks;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import clenchbook.tax.vehicle.Vehicle;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The year's end: from the frozen book to every figure, row and page of the tax summary. */
public final class YearEnd {
  private final YearEndInput input;
  private final RateLookup rates;
  private final Regime regime;
  private final MinorUnit unit;
  private final LocalDate lastDay;

  private YearEnd(YearEndInput input) {
    this.input = input;
    this.rates = new RateLookup(input.rates());
    this.regime = input.taxYear().regime();
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
    LineScheme lines = new LineScheme(regime, lastDay, rates);
    YearFigures figures = figures(lines);
    SummaryBuilder builder = new SummaryBuilder(lines, unit, input.period().last());
    Explanations.add(figures, builder, rates);
    UkSummary uk = new UkSummary(figures, builder, rates);
    switch (regime) {
      case US -> new UsSummary(figures, builder, rates).build();
      case UK -> uk.build();
      case PLAIN -> new PlainSummary(figures, builder).build();
    }
    BesideLines.add(figures, builder);
    TaxLines.add(
        figures,
        builder,
        new VatTable(figures, rates).periods().stream().map(VatPeriod::period).toList());
    boolean britain = regime == Regime.UK;
    List<JournalEntry> journal =
        YearJournal.of(
            figures,
            lines,
            britain ? uk.equipment() : List.of(),
            britain ? uk.proceeds() : List.of());
    Reconciliation ties =
        Reconciliation.of(figures, OwnerDebts.of(input.jobs(), input.register(), input.period()));
    YearTables tables = new YearTables(figures, lines, rates);
    return new YearEndReport(figures, builder, journal, ties, tables, rates).findings();
  }

  private YearFigures figures(LineScheme lines) {
    Book book = input.book();
    Period period = input.period();
    TaxBasis basis = TaxBasis.of(book);
    List<Billed> billed = BilledBook.of(input.jobs(), input.register());
    Income income = Income.of(input, billed, period, basis, lines);
    CategoryMap categories = new CategoryMap(regime, lastDay, rates);
    Expenses expenses = Expenses.of(book, period, basis, regime, categories, rates);
    DistanceUnit distance = DistanceUnit.of(book.settings().text(Setting.DISTANCE_UNIT));
    MileageChecks checks = new MileageChecks(distance, rates, lastDay);
    MileageLog log = MileageLog.of(book.trips(), period, checks);
    List<DepreciatedAsset> assets = register(book);
    return new YearFigures(
        input,
        billed,
        period,
        basis,
        income,
        expenses,
        log,
        vehicle(book, log, expenses, assets, distance),
        assets,
        Reconstructed.of(input.jobs().all(), book.trips(), book.places(), period));
  }

  private Vehicle vehicle(
      Book book,
      MileageLog log,
      Expenses expenses,
      List<DepreciatedAsset> assets,
      DistanceUnit distance) {
    MileageAllowance mileage =
        MileageAllowance.of(
            book.trips().stream()
                .filter(trip -> input.taxYear().days().holds(trip.date()))
                .toList(),
            regime,
            distance,
            rates,
            unit);
    List<Asset> vehicles =
        assets.stream().filter(DepreciatedAsset::vehicle).map(DepreciatedAsset::asset).toList();
    return Vehicle.of(mileage, log, expenses.vehicleRows(), vehicles, regime, unit);
  }

  private List<DepreciatedAsset> register(Book book) {
    if (regime == Regime.US) {
      return new Depreciation(book.assets(), input.taxYear(), rates, unit).register();
    }
    List<DepreciatedAsset> register = new ArrayList<>();
    book.assets().stream()
        .filter(asset -> !asset.bought().isAfter(lastDay))
        .sorted(Comparator.comparing(Asset::bought).thenComparing(Asset::source))
        .forEach(asset -> register.add(undepreciated(asset)));
    return List.copyOf(register);
  }

  private DepreciatedAsset undepreciated(Asset asset) {
    String kind = regime == Regime.UK ? new AssetClasses(regime, rates).kind(asset) : "";
    boolean vehicle =
        Optional.of(kind)
            .filter(found -> !found.equals("equipment") && !found.isEmpty())
            .isPresent();
    BigDecimal use = asset.businessUsePercent().orElse(BigDecimal.valueOf(100));
    BigDecimal basis =
        unit.round(asset.cost().orElse(BigDecimal.ZERO).multiply(use).movePointLeft(2));
    return DepreciatedAsset.without(asset, basis, kind, vehicle);
  }
}
