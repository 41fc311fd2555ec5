package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Receipt;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the farrier or preparer should look at before using the figures, in plain sentences. */
final class YearNotes {
  private final YearFigures figures;
  private final RateLookup rates;
  private final List<String> notes = new ArrayList<>();

  private YearNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static List<String> of(
      YearFigures figures, Jurisdiction jurisdiction, Reconciliation ties, RateLookup rates) {
    YearNotes notes = new YearNotes(figures, rates);
    notes.income();
    notes.costs();
    notes.vehicle();
    notes.notes.addAll(jurisdiction.notes(figures, rates));
    notes.ties(ties);
    return List.copyOf(notes.notes);
  }

  private void income() {
    boolean cashWanted = figures.input().book().settings().text(Setting.TAX_BASIS).equals("cash");
    if (cashWanted && !figures.basis().cashIncome()) {
      BigDecimal truck = truck();
      notes.add(
          "The book has no Payments sheet, so income on the cash basis can't be told: what was"
              + " invoiced stands in its place, marked so. Taken at the truck, from the visits: "
              + truck.toPlainString()
              + ".");
    }
    part(
        "from visits before the register",
        "comes from visits before the register begins, not from invoices");
    part(
        "received on account",
        "was received on account as deposits; it counts as income when received");
    part(
        "matched with no bill",
        "received or given back matches no invoice or visit; no tax is taken out of it");
  }

  private BigDecimal truck() {
    return figures.income().receipts().stream()
        .filter(Receipt::atTruck)
        .map(Receipt::cash)
        .reduce(figures.unit().zero(), BigDecimal::add);
  }

  private void part(String name, String words) {
    Optional.ofNullable(figures.income().parts().get(name))
        .map(LineItem::sum)
        .filter(sum -> sum.signum() != 0)
        .ifPresent(sum -> notes.add(sum.toPlainString() + " " + words + "."));
  }

  private void costs() {
    figures.expenses().mapping().stream()
        .filter(mapped -> mapped.code().equals(CategoryMap.UNKNOWN))
        .forEach(mapped -> notes.add(unknown(mapped)));
    if (figures.basis().cashCost() && figures.expenses().withoutPaidOn() > 0) {
      notes.add(
          figures.expenses().withoutPaidOn()
              + " purchases have no Paid on; they count as paid on their Date.");
    }
    if (!figures.basis().cashCost() && !figures.input().stock().counted()) {
      notes.add(
          "No count of the stock stands in the book: stock at the year's end is what purchases and"
              + " visits leave over.");
    }
    unregisteredAssets();
  }

  private static String unknown(Expenses.Mapped mapped) {
    return "Category '"
        + mapped.word()
        + "' ("
        + mapped.rows()
        + " rows, "
        + mapped.amount().toPlainString()
        + ") is unknown: it stands on a line of its own and counts as a cost. Teach it in"
        + " rates/<regime>/categories.csv.";
  }

  private void unregisteredAssets() {
    long bought = LineItem.of("asset", figures.expenses().left()).size();
    if (bought > 0) {
      notes.add(
          bought + " purchases are marked as assets: they count through the Assets sheet only.");
    }
  }

  private void vehicle() {
    MileageLog log = figures.log();
    if (!log.flags().isEmpty()) {
      notes.add(
          log.flags().size()
              + " oddities in the mileage log (gaps, overlaps, jumps) are listed below.");
    }
    if (!figures.reconstructed().isEmpty()) {
      String distance =
          Reconstructed.total(figures.reconstructed()).stripTrailingZeros().toPlainString();
      notes.add(
          "On days with visits but no business trip in the log about "
              + distance
              + " "
              + figures.distanceUnit().word()
              + " must have been driven, as reconstructed from Places. It is not counted: mileage"
              + " is proved by a record made at the time.");
    }
  }

  private void ties(Reconciliation ties) {
    if (!ties.left().isEmpty()) {
      notes.add(
          ties.left().size()
              + " rows are left over between book and register; they are listed below.");
    }
    long own = rates.used().stream().filter(Rate::overlaid).count();
    if (own > 0) {
      notes.add(own + " rates come from your own rates files: " + ownTables() + ".");
    }
    long unchecked = rates.used().stream().filter(rate -> rate.checked().isEmpty()).count();
    if (unchecked > 0) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%d of %d rates and line numbers used were not checked against their source; the"
                  + " table of rates marks them.",
              unchecked,
              rates.used().size()));
    }
  }

  private String ownTables() {
    return String.join(
        ", ",
        rates.used().stream().filter(Rate::overlaid).map(Rate::table).distinct().sorted().toList());
  }
}
