package clenchbook.tax.jurisdiction.uk;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.NamedRates;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** VAT by period, turnover against the threshold, the short form, and what is only named. */
final class UkTables {
  private final YearFigures figures;
  private final RateLookup rates;

  UkTables(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  List<TaxTable> all(List<SummaryLine> summary) {
    return List.of(
        TaxTable.byPeriod(
                Message.literal("VAT by period"),
                new VatTable(figures, rates).table(),
                List.of("1", "4", "5", "6", "7"))
            .placedOnPage(),
        TaxTable.asIs(
            Message.literal("Twelve months' turnover and the registration threshold"), turnover()),
        TaxTable.asIs(
            Message.literal("The same in the boxes of the short form"), shortForm(summary)),
        paymentsOnAccount(),
        NamedRates.of(figures, rates, "uk/allowances", "uk/national-insurance"));
  }

  /**
   * When the tax of this year is paid: two halves of the bill of the year before, then the rest.
   */
  private TaxTable paymentsOnAccount() {
    TaxYear year = figures.input().taxYear();
    List<List<String>> rows = new ArrayList<>();
    addPayment(rows, "first payment", year.year(), "half of the bill of the year before");
    addPayment(rows, "second payment", year.year(), "half of the bill of the year before");
    addPayment(rows, "balance", year.year() + 1, "what is left of this year's bill");
    return TaxTable.asIs(
            Message.literal("Payments on account of this tax year"),
            new FigureTable(
                "payments-on-account", List.of("payment", "due", "how_much", "source"), rows))
        .placedOnPage()
        .without("source");
  }

  private void addPayment(List<List<String>> rows, String code, int year, String howMuch) {
    rates
        .ask("uk/payments-on-account", code, figures.input().taxYear().first())
        .ifPresent(
            rate ->
                rows.add(
                    List.of(rate.name(), rate.dayIn(year).toString(), howMuch, rate.citation())));
  }

  private FigureTable turnover() {
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
}
