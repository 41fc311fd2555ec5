package clenchbook.tax.jurisdiction.uk;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.NamedRates;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** VAT by period, turnover against the threshold, the short form, and what is only named. */
final class UkTables {
  private static final Wording HALF =
      Wording.of("half of the bill of the year before", "britain.payment.half");
  private static final Wording REST =
      Wording.of("what is left of this year's bill", "britain.payment.rest");
  private static final String YES = "yes";

  private final YearFigures figures;
  private final RateLookup rates;

  UkTables(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  List<TaxTable> all(List<SummaryLine> summary) {
    return List.of(
        new VatTable(figures, rates).table().placedOnPage(),
        turnover(),
        TaxTable.asIs(Message.of("britain.shortForm"), shortForm(summary)),
        paymentsOnAccount(),
        NamedRates.of(figures, rates, "uk/allowances", "uk/national-insurance"));
  }

  /** A payment of tax: the row that names it and its day, and how much it is. */
  private record Payment(Rate rate, int year, Wording howMuch) {
    String due() {
      return rate.dayIn(year).toString();
    }
  }

  /**
   * When the tax of this year is paid: two halves of the bill of the year before, then the rest.
   */
  private TaxTable paymentsOnAccount() {
    int year = figures.input().taxYear().year();
    List<Payment> payments =
        Stream.of(
                payment("first payment", year, HALF),
                payment("second payment", year, HALF),
                payment("balance", year + 1, REST))
            .flatMap(Optional::stream)
            .toList();
    FigureTable table =
        FiguresOf.rows(payments)
            .column("payment", payment -> payment.rate().name())
            .column("due", Payment::due)
            .column("how_much", payment -> payment.howMuch().file())
            .column("source", payment -> payment.rate().citation())
            .named("payments-on-account");
    return TaxTable.asIs(Message.of("britain.payments"), table)
        .headed("payment", Message.of("britain.column.payment"))
        .headed("how_much", Message.of("britain.column.howMuch"))
        .said("payment", payments.stream().map(payment -> payment.rate().said()).toList())
        .said("how_much", payments.stream().map(payment -> payment.howMuch().said()).toList())
        .placedOnPage()
        .without("source");
  }

  private Optional<Payment> payment(String code, int year, Wording howMuch) {
    return rates
        .ask("uk/payments-on-account", code, figures.input().taxYear().first())
        .map(rate -> new Payment(rate, year, howMuch));
  }

  private TaxTable turnover() {
    FigureTable table =
        FiguresOf.rows(
                RollingTurnover.of(figures.period(), figures.billed(), figures.taxKinds(), rates))
            .column("month", row -> row.month().toString())
            .amount("twelve_months", RollingTurnover::turnover)
            .amount("threshold", RollingTurnover::threshold)
            .column("over", row -> yesOrNo(row.isOver()))
            .column("all_twelve_months_in_the_book", row -> yesOrNo(row.complete()))
            .named("turnover");
    return TaxTable.asIs(Message.of("britain.turnover"), table)
        .headed("month", Message.of("britain.column.month"))
        .headed("twelve_months", Message.of("britain.column.twelveMonths"))
        .headed("threshold", Message.of("britain.column.threshold"))
        .headed("over", Message.of("britain.column.over"))
        .headed("all_twelve_months_in_the_book", Message.of("britain.column.allTwelve"))
        .said("over", UkTables::said)
        .said("all_twelve_months_in_the_book", UkTables::said);
  }

  private static String yesOrNo(boolean so) {
    return so ? YES : "no";
  }

  private static Message said(String yesOrNo) {
    return Message.of(yesOrNo.equals(YES) ? "britain.yes" : "britain.no");
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
    return FiguresOf.rows(List.copyOf(boxes.entrySet()))
        .column("box", Map.Entry::getKey)
        .column("name", box -> names.getOrDefault(box.getKey(), ""))
        .amount("amount", Map.Entry::getValue)
        .named("short-form");
  }

  private static Optional<BigDecimal> amount(List<SummaryLine> summary, String line) {
    return summary.stream()
        .filter(row -> row.head().line().equals(line) && row.kind() != SummaryLine.Kind.BESIDE)
        .map(SummaryLine::amount)
        .findFirst();
  }
}
