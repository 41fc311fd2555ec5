package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Setting;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a farrier in the United Kingdom or a preparer should look at. */
final class UkNotes {
  private final YearFigures figures;
  private final RateLookup rates;
  private final List<String> notes = new ArrayList<>();

  private UkNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static final List<Message> NOT_COMPUTED =
      List.of(
          Sentence.of("Income tax, student loans, other income; Class 2, which is voluntary"),
          Sentence.of("Capital allowances and the trading allowance: named in the annex"),
          Sentence.of("Use of the home, and which flat rate of VAT applies"));

  static List<Message> of(YearFigures figures, RateLookup rates) {
    UkNotes notes = new UkNotes(figures, rates);
    notes.vehicle();
    notes.gifts();
    notes.updates();
    notes.updateFile();
    notes.uk();
    return notes.notes.stream().map(note -> Sentence.of(note)).toList();
  }

  private void vehicle() {
    if (!figures.vehicle().byMileage()) {
      return;
    }
    notes.add(
        "The vehicle counts at the flat rate for miles; parking and tolls stand beside it, the"
            + " actual cost for comparison. The flat rate is barred for a vehicle on which capital"
            + " allowances were ever claimed or whose cost was counted as an expense; once used for"
            + " a vehicle it is kept for that vehicle.");
    rates
        .ask("uk/mileage", "employee rate", figures.input().taxYear().last())
        .ifPresent(this::employeeRate);
  }

  /** The rate for employees rose; whether that of the self-employed followed was not found. */
  private void employeeRate(Rate employee) {
    rates
        .ask("uk/mileage", "first miles", figures.input().taxYear().last())
        .ifPresent(
            own ->
                notes.add(
                    "In "
                        + figures.input().taxYear().label()
                        + " the rate for employees rose to "
                        + pence(employee)
                        + " for the first 10,000 miles. No page was found that says whether the"
                        + " rate of the self-employed followed: "
                        + pence(own)
                        + " is kept here, unconfirmed. The preparer must confirm it (11,000 miles:"
                        + " 4,750 or 5,750)."));
  }

  private static String pence(Rate rate) {
    return rate.amount().movePointRight(2).stripTrailingZeros().toPlainString() + "p";
  }

  /** Gifts and entertaining: listed, never counted, with the exception that a preparer may know. */
  private void gifts() {
    if (!LineItem.of(UkJurisdiction.GIFTS, figures.expenses().left()).isEmpty()) {
      String most =
          rates
              .ask("uk/allowances", "gift exception", figures.input().taxYear().last())
              .map(Rate::value)
              .orElse("50");
      notes.add(
          "Gifts to clients are listed and not counted. An exception may apply: a gift that"
              + " conspicuously advertises the business, is no food, drink, tobacco or voucher, and"
              + " comes to no more than "
              + most
              + " pounds a person and tax year. Ask the preparer.");
    }
  }

  /** Who has the duty of quarterly updates, and from when. */
  private void updates() {
    TaxYear year = figures.input().taxYear();
    List<Rate> thresholds = rates.all(QuarterlyUpdates.TABLE, "qualifying income");
    if (thresholds.isEmpty()) {
      return;
    }
    String duty =
        thresholds.stream()
            .map(rate -> rate.name() + " " + rate.value() + ": from " + rate.from())
            .collect(Collectors.joining("; "));
    String now =
        QuarterlyUpdates.begun(year, rates)
            ? "The due days stand with the updates in the annex, cumulative from the year's first"
                + " day."
            : "No update is due in this tax year: the duty had not begun.";
    notes.add(
        "Quarterly updates are a duty by the income of an earlier year. " + duty + ". " + now);
  }

  /** What the file for a quarter holds and leaves out. */
  private void updateFile() {
    if (figures.wholeYear()) {
      return;
    }
    notes.add(
        "quarterly-update.json holds the figures from the year's first day to this quarter's end in"
            + " the fields of the authority's request. Nothing is sent: whoever files it checks it"
            + " first.");
    if (!LineItem.of(CategoryMap.UNKNOWN, figures.expenses().items()).isEmpty()) {
      notes.add("Costs of an unknown category stand in none of its fields: teach the words first.");
    }
  }

  private void uk() {
    boolean registered = !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
    if (registered) {
      notes.add(
          "VAT periods are taken to end in March, June, September and December, and box 1 goes by"
              + " the invoice's date. No flat-rate category names farriers: both rates shown are"
              + " examples, and the limited-cost test is the adviser's.");
    }
    insurance();
    trading();
    if (!figures.basis().cashCost()) {
      notes.add(
          "Capital allowances take the place of depreciation; they are named in the annex, not"
              + " computed.");
    }
  }

  /** What is owed beside income tax, when it is paid, and the lesser rules of the cash basis. */
  private void insurance() {
    LocalDate last = figures.input().taxYear().last();
    rates
        .ask("uk/national-insurance", "small profits", last)
        .ifPresent(
            limit ->
                notes.add(
                    "Class 4 stands beside the profit as an estimate. Class 2 is voluntary below a"
                        + " profit of "
                        + limit.value()
                        + rates
                            .ask("uk/national-insurance", "class 2 year", last)
                            .map(rate -> " (" + rate.value() + " a year)")
                            .orElse("")
                        + "."));
    rates
        .ask("uk/payments-on-account", "least bill", figures.input().taxYear().first())
        .ifPresent(
            least ->
                notes.add(
                    "Payments on account: none where last year's bill was below "
                        + least.value()
                        + " or more than "
                        + rates
                            .ask(
                                "uk/payments-on-account",
                                "share at source",
                                figures.input().taxYear().first())
                            .map(Rate::value)
                            .orElse("80")
                        + " % of the tax was taken off at source."));
    cashBasis();
  }

  /** What the cash basis asked for until its limits went. */
  private void cashBasis() {
    LocalDate first = figures.input().taxYear().first();
    Optional<Rate> turnover = rates.ask("uk/allowances", "cash basis turnover", first);
    Optional<Rate> interest = rates.ask("uk/allowances", "cash basis interest", first);
    if (turnover.isPresent() && interest.isPresent()) {
      notes.add(
          "The cash basis may be joined up to a turnover of "
              + turnover.get().value()
              + ", and interest counts on it up to "
              + interest.get().value()
              + ".");
    } else if (rates.all("uk/allowances", "cash basis turnover").stream()
        .allMatch(limit -> limit.to().isBefore(first))) {
      notes.add(
          "Since 2024-25 the cash basis has no limit of turnover and none of interest; it is the"
              + " rule unless one opts out.");
    }
  }

  private void trading() {
    Optional<Rate> allowance =
        rates.ask("uk/allowances", "trading allowance", figures.input().taxYear().last());
    allowance.ifPresent(
        rate ->
            notes.add(
                "The trading allowance of "
                    + rate.value()
                    + " may be taken instead of all expenses: named, not computed."));
  }
}
