package clenchbook.tax;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.sales.RollingTurnover;
import clenchbook.tax.sales.VatPeriod;
import clenchbook.tax.sales.VatPurchases;
import clenchbook.tax.sales.VatTable;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a regime asks for beside its lines: tax on sales by rate and period, turnover against the
 * threshold, the short form, allowances, tax on purchases.
 */
final class TaxTables {
  private final YearFigures figures;
  private final RateLookup rates;
  private final QuarterTables quarters;

  TaxTables(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
    this.quarters = new QuarterTables(figures, rates);
  }

  /** What is figured and printed, in order; a table without rows is left out. */
  List<FigureTable> all(List<SummaryLine> summary) {
    List<FigureTable> tables = new ArrayList<>(List.of(salesTax(), quarters.lines(summary)));
    switch (figures.regime()) {
      case US -> {
        tables.add(quarters.instalments(summary));
        tables.add(allowances("us/allowances"));
      }
      case UK -> {
        tables.add(new VatTable(figures, rates).table());
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
