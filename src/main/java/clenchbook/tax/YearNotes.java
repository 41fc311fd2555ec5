package clenchbook.tax;

import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Receipt;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the farrier or preparer should look at before using the figures, in plain sentences. */
final class YearNotes {
  /** Up to so many unknown words each have a sentence of their own. */
  private static final int FEW = 3;

  private final YearFigures figures;
  private final RateLookup rates;
  private final List<Sentence> notes = new ArrayList<>();

  private YearNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static List<Sentence> of(
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
    boolean cashWanted = figures.input().book().settings().countsCash();
    if (cashWanted && !figures.basis().cashIncome()) {
      BigDecimal truck = truck();
      notes.add(
          Sentence.of(
              "The book has no Payments sheet, so income on the cash basis can't be told: what was"
                  + " invoiced stands in its place, marked so. Taken at the truck, from the visits:"
                  + " {0}.",
              truck.toPlainString()));
    }
    part(
        "from visits before the register",
        "{0} comes from visits before the register begins, not from invoices.");
    part(
        "received on account",
        "{0} was received on account as deposits; it counts as income when received.");
    part(
        "matched with no bill",
        "{0} received or given back matches no invoice or visit; no tax is taken out of it.");
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
        .ifPresent(sum -> notes.add(Sentence.of(words, sum.toPlainString())));
  }

  private void costs() {
    List<Expenses.Mapped> unknown =
        figures.expenses().mapping().stream()
            .filter(mapped -> mapped.code().equals(CategoryMap.UNKNOWN))
            .toList();
    if (unknown.size() > FEW) {
      notes.add(unknown(unknown));
    } else {
      unknown.forEach(mapped -> notes.add(unknown(mapped)));
    }
    if (figures.basis().cashCost() && figures.expenses().withoutPaidOn() > 0) {
      notes.add(
          Sentence.of(
              "{0} purchases have no Paid on; they count as paid on their Date.",
              String.valueOf(figures.expenses().withoutPaidOn())));
    }
    if (!figures.basis().cashCost() && !figures.input().stock().counted()) {
      notes.add(
          Sentence.of(
              "No count of the stock stands in the book: stock at the year's end is what purchases"
                  + " and visits leave over."));
    }
    unregisteredAssets();
  }

  private static Sentence unknown(List<Expenses.Mapped> all) {
    return Sentence.of(
        "{0} categories are unknown, {1} among them ({2} rows, {3}): they stand on a line of their"
            + " own and count as costs. Teach them in rates/<regime>/categories.csv.",
        String.valueOf(all.size()),
        all.stream().limit(FEW).map(Expenses.Mapped::word).collect(Collectors.joining(", ")),
        String.valueOf(all.stream().mapToInt(Expenses.Mapped::rows).sum()),
        all.stream()
            .map(Expenses.Mapped::amount)
            .reduce(BigDecimal.ZERO, BigDecimal::add)
            .toPlainString());
  }

  private static Sentence unknown(Expenses.Mapped mapped) {
    return Sentence.of(
        "Category '{0}' ({1} rows, {2}) is unknown: it stands on a line of its own and counts as a"
            + " cost. Teach it in rates/<regime>/categories.csv.",
        mapped.word(), String.valueOf(mapped.rows()), mapped.amount().toPlainString());
  }

  private void unregisteredAssets() {
    long bought = LineItem.of("asset", figures.expenses().left()).size();
    if (bought > 0) {
      notes.add(
          Sentence.of(
              "{0} purchases are marked as assets: they count through the Assets sheet only.",
              String.valueOf(bought)));
    }
  }

  private void vehicle() {
    MileageLog log = figures.log();
    if (!log.flags().isEmpty()) {
      notes.add(
          Sentence.of(
              "{0} oddities in the mileage log (gaps, overlaps, jumps) are listed in the annex.",
              String.valueOf(log.flags().size())));
    }
    if (!figures.reconstructed().isEmpty()) {
      String distance =
          Reconstructed.total(figures.reconstructed()).stripTrailingZeros().toPlainString();
      notes.add(
          Sentence.of(
              "On days with visits but no business trip in the log about {0} {1} must have been"
                  + " driven, as reconstructed from Places. It is not counted: mileage is proved by"
                  + " a record made at the time.",
              distance, figures.distanceUnit().plural()));
    }
  }

  private void ties(Reconciliation ties) {
    if (!ties.left().isEmpty()) {
      notes.add(
          Sentence.of(
              "{0} rows are left over between book and register; they are listed in the annex.",
              String.valueOf(ties.left().size())));
    }
    long own = rates.used().stream().filter(Rate::overlaid).count();
    if (own > 0) {
      notes.add(
          Sentence.of(
              "{0} rates come from your own rates files: {1}.", String.valueOf(own), ownTables()));
    }
    long unchecked = rates.used().stream().filter(rate -> rate.checked().isEmpty()).count();
    if (unchecked > 0) {
      notes.add(
          Sentence.of(
              "{0} of {1} rates and line numbers used were not checked against their source; the"
                  + " annex marks them.",
              String.valueOf(unchecked), String.valueOf(rates.used().size())));
    }
  }

  private String ownTables() {
    return String.join(
        ", ",
        rates.used().stream().filter(Rate::overlaid).map(Rate::table).distinct().sorted().toList());
  }
}
