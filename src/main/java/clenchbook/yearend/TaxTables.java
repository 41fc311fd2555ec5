package clenchbook.yearend;

import clenchbook.book.Setting;
import clenchbook.money.LargestRemainder;
import clenchbook.rates.Rate;
import clenchbook.rates.RateUnit;
import clenchbook.report.FigureTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Tax on sales by rate and period, VAT boxes, turnover against the threshold, due days and the
 * figures by quarter.
 */
final class TaxTables {
  private final YearFigures figures;
  private final RateLookup rates;

  TaxTables(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  /** What is figured and printed, in order; a table without rows is left out. */
  List<FigureTable> all(List<SummaryLine> summary) {
    List<FigureTable> tables = new ArrayList<>(List.of(salesTax(), quarters(summary)));
    switch (figures.regime()) {
      case US -> {
        tables.add(instalments(summary));
        tables.add(allowances("us/allowances"));
      }
      case UK -> {
        tables.add(vat());
        tables.add(turnover());
        tables.add(shortForm(summary));
        tables.add(allowances("uk/allowances"));
      }
      case PLAIN -> tables.add(inputTax());
    }
    return tables.stream().filter(table -> !table.rows().isEmpty()).toList();
  }

  /**
   * Sales by quarter of the year, tax code and rate, goods and services apart, by the date of the
   * bill.
   */
  FigureTable salesTax() {
    TreeMap<String, Sum> sums = new TreeMap<>();
    for (Billed bill : figures.billed()) {
      if (bill.isIncome() && figures.period().holds(bill.date())) {
        bill.lines().forEach(line -> add(sums, bill.date(), line));
      }
    }
    List<List<String>> rows = sums.values().stream().map(Sum::row).toList();
    return new FigureTable(
        "sales-tax", List.of("period", "tax_code", "rate", "part", "net", "tax"), rows);
  }

  private void add(TreeMap<String, Sum> sums, LocalDate date, BilledLine line) {
    String quarter = figures.input().taxYear().label() + " Q" + quarterOf(date);
    String rate =
        line.taxCode().isEmpty() ? "" : line.ratePercent().stripTrailingZeros().toPlainString();
    String part = line.part().isEmpty() ? "not divided" : line.part();
    String key = String.join("\n", quarter, line.taxCode(), rate, part);
    sums.computeIfAbsent(
            key,
            unused -> new Sum(List.of(quarter, line.taxCode(), rate, part), figures.unit().zero()))
        .add(line);
  }

  private int quarterOf(LocalDate date) {
    for (int quarter = 1; quarter < 4; quarter++) {
      if (!date.isAfter(figures.input().taxYear().quarter(quarter).last())) {
        return quarter;
      }
    }
    return 4;
  }

  /** One row of the sales tax; mutable while it is added up. */
  private static final class Sum {
    private final List<String> key;
    private BigDecimal net;
    private BigDecimal tax;

    Sum(List<String> key, BigDecimal zero) {
      this.key = key;
      this.net = zero;
      this.tax = zero;
    }

    void add(BilledLine line) {
      net = net.add(line.net());
      tax = tax.add(line.tax());
    }

    List<String> row() {
      List<String> row = new ArrayList<>(key);
      row.add(net.toPlainString());
      row.add(tax.toPlainString());
      return row;
    }
  }

  /**
   * Each line of rows by quarter; in the United Kingdom cumulative, as the quarterly updates are.
   */
  FigureTable quarters(List<SummaryLine> summary) {
    boolean cumulative = figures.regime() == Regime.UK;
    TaxYear year = figures.input().taxYear();
    List<List<String>> rows = new ArrayList<>();
    for (int quarter = 1; quarter <= 4; quarter++) {
      Period period = cumulative ? year.toEndOfQuarter(quarter) : year.quarter(quarter);
      if (figures.wholeYear() || figures.period().holds(year.quarter(quarter).last())) {
        addQuarter(rows, quarter, period, summary);
      }
    }
    return new FigureTable(
        cumulative ? "quarterly-updates" : "quarters",
        List.of("quarter", "from", "to", "due", "line", "name", "amount"),
        rows);
  }

  private void addQuarter(
      List<List<String>> rows, int quarter, Period period, List<SummaryLine> summary) {
    String due = figures.regime() == Regime.UK ? updateDue(quarter) : "";
    for (SummaryLine line : summary) {
      if (line.kind() == SummaryLine.Kind.TOTAL || line.kind() == SummaryLine.Kind.BESIDE) {
        continue;
      }
      BigDecimal amount =
          figures.unit().zero().add(LineItem.sum(LineItem.within(period, line.items())));
      rows.add(
          List.of(
              String.valueOf(quarter),
              period.first().toString(),
              period.last().toString(),
              due,
              line.head().line(),
              line.head().name(),
              amount.toPlainString()));
    }
  }

  private String updateDue(int quarter) {
    LocalDate first = figures.input().taxYear().first();
    return rates
        .find("uk/year", "update " + quarter, first)
        .map(rate -> rate.dayIn(first.getYear()).toString())
        .orElse("");
  }

  /**
   * The four instalments with an equal part of the self-employment tax; income tax is not in it.
   */
  FigureTable instalments(List<SummaryLine> summary) {
    TaxYear year = figures.input().taxYear();
    Optional<BigDecimal> tax =
        summary.stream()
            .filter(line -> line.head().line().equals("SE 12"))
            .map(SummaryLine::amount)
            .findFirst();
    List<Instalment> found = Instalment.of(year.year(), rates);
    List<BigDecimal> parts =
        tax.isEmpty() || found.isEmpty()
            ? List.of()
            : LargestRemainder.splitEqually(tax.get(), found.size(), figures.unit());
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      Instalment instalment = found.get(i);
      rows.add(
          List.of(
              String.valueOf(instalment.number()),
              instalment.periodEnds().toString(),
              instalment.due().toString(),
              parts.isEmpty() ? "" : parts.get(i).toPlainString()));
    }
    return new FigureTable(
        "instalments",
        List.of("instalment", "period_ends", "due", "part_of_self_employment_tax"),
        rows);
  }

  private FigureTable allowances(String table) {
    List<List<String>> rows = new ArrayList<>();
    Period year = figures.input().taxYear().days();
    for (Rate rate : rates.within(table, year)) {
      String unit =
          rate.unit() == RateUnit.MONEY
              ? figures.input().book().settings().currency()
              : rate.unit().text();
      rows.add(List.of(nameWithin(rate, year), rate.value(), unit, rate.citation()));
    }
    return new FigureTable("allowances", List.of("name", "value", "unit", "source"), rows);
  }

  /** The name, with the days where the row holds for a part of the year only. */
  private static String nameWithin(Rate rate, Period year) {
    String from = rate.from().isAfter(year.first()) ? ", from " + rate.from() : "";
    String to = rate.to().isBefore(year.last()) ? ", to " + rate.to() : "";
    return rate.name() + from + to;
  }

  private boolean isRegistered() {
    return !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
  }

  /** VAT by calendar quarter, on the standard method and at both flat rates. */
  FigureTable vat() {
    List<List<String>> rows = new ArrayList<>();
    if (isRegistered()) {
      vatPeriods().stream().filter(VatPeriod::isUsed).forEach(period -> addVat(rows, period));
    }
    return new FigureTable("vat", List.of("from", "to", "scheme", "box", "name", "amount"), rows);
  }

  /** The VAT periods of the figures, those without any sale or purchase included. */
  List<VatPeriod> vatPeriods() {
    List<VatPeriod> periods = new ArrayList<>();
    List<LineItem> sales = figures.sales();
    List<LineItem> purchases = VatPurchases.of(figures.input().book());
    YearMonth first = YearMonth.from(figures.period().first());
    YearMonth start = first.minusMonths((first.getMonthValue() - 1) % 3);
    int quarters = figures.wholeYear() ? 4 : 1;
    for (int i = 0; i < quarters; i++) {
      YearMonth from = start.plusMonths(3L * i);
      Period period = new Period(from.atDay(1), from.plusMonths(2).atEndOfMonth());
      periods.add(VatPeriod.of(period, sales, purchases, figures.unit()));
    }
    return periods;
  }

  private void addVat(List<List<String>> rows, VatPeriod vat) {
    add(rows, vat, "standard", "1", "VAT due on sales", vat.salesTax());
    add(rows, vat, "standard", "2", "VAT due on acquisitions", figures.unit().zero());
    add(rows, vat, "standard", "3", "Total VAT due", vat.salesTax());
    add(rows, vat, "standard", "4", "VAT reclaimed on purchases", vat.purchaseTax());
    add(rows, vat, "standard", "5", "Net VAT to pay (below zero: to reclaim)", vat.payable());
    add(
        rows,
        vat,
        "standard",
        "6",
        "Sales without VAT, whole pounds",
        VatPeriod.wholePounds(vat.sales()));
    add(
        rows,
        vat,
        "standard",
        "7",
        "Purchases without VAT, whole pounds",
        VatPeriod.wholePounds(vat.purchases()));
    add(rows, vat, "standard", "8", "Supplies to the European Union", BigDecimal.ZERO);
    add(rows, vat, "standard", "9", "Acquisitions from the European Union", BigDecimal.ZERO);
    for (String code : List.of("other activity", "limited cost")) {
      rates
          .find("uk/flat-rate", code, vat.period().last())
          .ifPresent(rate -> addFlat(rows, vat, rate));
    }
  }

  private void addFlat(List<List<String>> rows, VatPeriod vat, Rate rate) {
    String scheme =
        "flat rate " + rate.value() + " % (" + rate.name().toLowerCase(Locale.ROOT) + ")";
    BigDecimal due = vat.flatRateTax(rate.factor(), figures.unit());
    add(rows, vat, scheme, "1", "VAT due at the flat rate", due);
    add(rows, vat, scheme, "3", "Total VAT due", due);
    add(rows, vat, scheme, "4", "VAT reclaimed (large equipment only)", figures.unit().zero());
    add(rows, vat, scheme, "5", "Net VAT to pay", due);
    add(
        rows,
        vat,
        scheme,
        "6",
        "Turnover with VAT, whole pounds",
        VatPeriod.wholePounds(vat.flatRateTurnover()));
    add(rows, vat, scheme, "7", "Purchases", BigDecimal.ZERO);
  }

  private static void add(
      List<List<String>> rows,
      VatPeriod vat,
      String scheme,
      String box,
      String name,
      BigDecimal amount) {
    rows.add(
        List.of(
            vat.period().first().toString(),
            vat.period().last().toString(),
            scheme,
            box,
            name,
            amount.toPlainString()));
  }

  FigureTable turnover() {
    List<List<String>> rows =
        RollingTurnover.of(figures.period(), figures.billed(), figures.taxKinds(), rates).stream()
            .map(
                row ->
                    List.of(
                        row.month().toString(),
                        row.turnover().toPlainString(),
                        row.threshold().toPlainString(),
                        row.isOver() ? "yes" : "no",
                        row.complete() ? "yes" : "no"))
            .toList();
    return new FigureTable(
        "turnover",
        List.of("month", "twelve_months", "threshold", "over", "all_twelve_months_in_the_book"),
        rows);
  }

  /** The same figures in the boxes of the short form. */
  private FigureTable shortForm(List<SummaryLine> summary) {
    TreeMap<String, BigDecimal> boxes = new TreeMap<>(SummaryBuilder.BY_NUMBER);
    TreeMap<String, String> names = new TreeMap<>();
    LocalDate day = figures.input().taxYear().last();
    for (Rate full : rates.inForce("uk/sa103f", day)) {
      rates.inForce("uk/sa103s", day).stream()
          .filter(rate -> rate.code().equals(full.code()) && !full.code().equals("equipment"))
          .findFirst()
          .ifPresent(
              box ->
                  amount(summary, full.value())
                      .ifPresent(
                          amount -> {
                            boxes.merge(box.value(), amount, BigDecimal::add);
                            names.putIfAbsent(box.value(), box.name());
                          }));
    }
    List<List<String>> rows = new ArrayList<>();
    boxes.forEach(
        (box, amount) ->
            rows.add(List.of(box, names.getOrDefault(box, ""), amount.toPlainString())));
    return new FigureTable("short-form", List.of("box", "name", "amount"), rows);
  }

  private static Optional<BigDecimal> amount(List<SummaryLine> summary, String line) {
    return summary.stream()
        .filter(row -> row.head().line().equals(line) && row.kind() != SummaryLine.Kind.BESIDE)
        .map(SummaryLine::amount)
        .findFirst();
  }

  /** In any country: the tax on purchases that comes back, by quarter. */
  private FigureTable inputTax() {
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
}
