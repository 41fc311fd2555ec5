package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Setting;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a farrier in the United Kingdom or a preparer should look at. */
final class UkNotes {
  private static final BigDecimal USUAL_GIFT = BigDecimal.valueOf(50);
  private static final BigDecimal USUAL_SHARE = BigDecimal.valueOf(80);

  private final YearFigures figures;
  private final RateLookup rates;
  private final List<Message> notes = new ArrayList<>();

  private UkNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static final List<Message> NOT_COMPUTED =
      List.of(
          Message.of("britain.notComputed.incomeTax"),
          Message.of("britain.notComputed.allowances"),
          Message.of("britain.notComputed.home"));

  static List<Message> of(YearFigures figures, RateLookup rates) {
    UkNotes notes = new UkNotes(figures, rates);
    notes.vehicle();
    notes.gifts();
    notes.updates();
    notes.updateFile();
    notes.uk();
    return List.copyOf(notes.notes);
  }

  private void add(String key, Object... gaps) {
    notes.add(Message.of(key, gaps));
  }

  private void vehicle() {
    if (!figures.vehicle().byMileage()) {
      return;
    }
    add("britain.note.vehicle");
    rates
        .ask("uk/mileage", "employee rate", figures.input().taxYear().last())
        .ifPresent(this::employeeRate);
  }

  /** The rate for employees rose; whether that of the self-employed followed was not found. */
  private void employeeRate(Rate employee) {
    TaxYear year = figures.input().taxYear();
    rates
        .ask("uk/mileage", "first miles", year.last())
        .ifPresent(
            own -> add("britain.note.employeeRate", year.label(), pence(employee), pence(own)));
  }

  private static BigDecimal pence(Rate rate) {
    return rate.amount().movePointRight(2).stripTrailingZeros();
  }

  /** Gifts and entertaining: listed, never counted, with the exception that a preparer may know. */
  private void gifts() {
    if (!LineItem.of(UkJurisdiction.GIFTS, figures.expenses().left()).isEmpty()) {
      BigDecimal most =
          rates
              .ask("uk/allowances", "gift exception", figures.input().taxYear().last())
              .map(Rate::amount)
              .orElse(USUAL_GIFT);
      add("britain.note.gifts", most);
    }
  }

  /** Who has the duty of quarterly updates, and from when. */
  private void updates() {
    List<Rate> thresholds = rates.all(QuarterlyUpdates.TABLE, "qualifying income");
    if (thresholds.isEmpty()) {
      return;
    }
    Message duty =
        Message.joined(
            "; ",
            thresholds.stream()
                .map(
                    rate ->
                        Message.of("britain.note.duty", rate.said(), rate.amount(), rate.from()))
                .toList());
    if (QuarterlyUpdates.begun(figures.input().taxYear(), rates)) {
      add("britain.note.updates", duty);
    } else {
      add("britain.note.updatesNotYet", duty);
    }
  }

  /** What the file for a quarter holds and leaves out. */
  private void updateFile() {
    if (figures.wholeYear()) {
      return;
    }
    add("britain.note.updateFile");
    if (!LineItem.of(CategoryMap.UNKNOWN, figures.expenses().items()).isEmpty()) {
      add("britain.note.unknownCosts");
    }
  }

  private void uk() {
    boolean registered = !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
    if (registered) {
      add("britain.note.vatPeriods");
    }
    insurance();
    paymentsOnAccount();
    cashBasis();
    trading();
    if (!figures.basis().cashCost()) {
      add("britain.note.capitalAllowances");
    }
  }

  /** What is owed beside income tax. */
  private void insurance() {
    LocalDate last = figures.input().taxYear().last();
    Optional<Rate> limit = rates.ask("uk/national-insurance", "small profits", last);
    if (limit.isEmpty()) {
      return;
    }
    BigDecimal profit = limit.get().amount();
    Optional<Rate> year = rates.ask("uk/national-insurance", "class 2 year", last);
    if (year.isPresent()) {
      add("britain.note.class2Year", profit, year.get().amount());
    } else {
      add("britain.note.class2", profit);
    }
  }

  /** When income tax is paid. */
  private void paymentsOnAccount() {
    LocalDate first = figures.input().taxYear().first();
    Optional<Rate> least = rates.ask("uk/payments-on-account", "least bill", first);
    if (least.isPresent()) {
      BigDecimal share =
          rates
              .ask("uk/payments-on-account", "share at source", first)
              .map(Rate::amount)
              .orElse(USUAL_SHARE);
      add("britain.note.paymentsOnAccount", least.get().amount(), share);
    }
  }

  /** What the cash basis asked for until its limits went. */
  private void cashBasis() {
    LocalDate first = figures.input().taxYear().first();
    Optional<Rate> turnover = rates.ask("uk/allowances", "cash basis turnover", first);
    Optional<Rate> interest = rates.ask("uk/allowances", "cash basis interest", first);
    if (turnover.isPresent() && interest.isPresent()) {
      add("britain.note.cashBasisLimits", turnover.get().amount(), interest.get().amount());
    } else if (rates.all("uk/allowances", "cash basis turnover").stream()
        .allMatch(limit -> limit.to().isBefore(first))) {
      add("britain.note.cashBasisNoLimits");
    }
  }

  private void trading() {
    rates
        .ask("uk/allowances", "trading allowance", figures.input().taxYear().last())
        .ifPresent(rate -> add("britain.note.tradingAllowance", rate.amount()));
  }
}
