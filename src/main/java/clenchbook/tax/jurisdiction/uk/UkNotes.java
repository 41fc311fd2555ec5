package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Setting;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a farrier in the United Kingdom or a preparer should look at. */
final class UkNotes {
  private final YearFigures figures;
  private final RateLookup rates;
  private final List<String> notes = new ArrayList<>();

  private UkNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static List<String> of(YearFigures figures, RateLookup rates) {
    UkNotes notes = new UkNotes(figures, rates);
    notes.vehicle();
    notes.uk();
    return List.copyOf(notes.notes);
  }

  private void vehicle() {
    if (figures.vehicle().byMileage()) {
      notes.add(
          "The vehicle counts by mileage; the actual cost stands beside it. Which may be used, and"
              + " whether one may change, depends on the vehicle's first year: ask the preparer.");
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
    List<RollingTurnover> over =
        RollingTurnover.of(figures.period(), figures.billed(), figures.taxKinds(), rates).stream()
            .filter(RollingTurnover::isOver)
            .toList();
    if (!registered && !over.isEmpty()) {
      notes.add(
          "Twelve months' turnover passes the VAT registration threshold at the end of "
              + over.get(0).month()
              + ": registration may be due at once.");
    }
    trading();
    if (!figures.basis().cashCost()) {
      notes.add(
          "Capital allowances take the place of depreciation; they are named below, not computed.");
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
