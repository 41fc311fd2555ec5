package clenchbook.tax;

import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.IncomePart;
import clenchbook.tax.income.Receipt;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the farrier or preparer should look at before using the figures, in plain sentences. */
final class YearNotes {
  /** Up to so many unknown words each have a sentence of their own. */
  private static final int FEW = 3;

  private final YearFigures figures;
  private final RateLookup rates;
  private final List<Message> notes = new ArrayList<>();

  private YearNotes(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  static List<Message> of(
      YearFigures figures, Jurisdiction jurisdiction, Reconciliation ties, RateLookup rates) {
    YearNotes notes = new YearNotes(figures, rates);
    notes.income();
    notes.costs();
    notes.vehicle();
    notes.notes.addAll(jurisdiction.notes(figures, rates));
    notes.ties(ties);
    return List.copyOf(notes.notes);
  }

  private void note(String key, Object... gaps) {
    notes.add(Message.of(key, gaps));
  }

  private void income() {
    boolean cashWanted = figures.input().book().settings().countsCash();
    if (cashWanted && !figures.basis().cashIncome()) {
      note("tax.note.noPayments", truck());
    }
    part(IncomePart.BEFORE_REGISTER).ifPresent(amount -> note("tax.note.beforeRegister", amount));
    part(IncomePart.ON_ACCOUNT).ifPresent(amount -> note("tax.note.onAccount", amount));
    part(IncomePart.NO_BILL).ifPresent(amount -> note("tax.note.noBill", amount));
  }

  private BigDecimal truck() {
    return figures.income().receipts().stream()
        .filter(Receipt::atTruck)
        .map(Receipt::cash)
        .reduce(figures.unit().zero(), BigDecimal::add);
  }

  private Optional<BigDecimal> part(IncomePart part) {
    return Optional.ofNullable(figures.income().parts().get(part))
        .map(LineItem::sum)
        .filter(sum -> sum.signum() != 0);
  }

  private void costs() {
    List<Expenses.Mapped> unknown =
        figures.expenses().mapping().stream()
            .filter(mapped -> mapped.code().equals(CategoryMap.UNKNOWN))
            .toList();
    if (unknown.size() > FEW) {
      unknown(unknown);
    } else {
      unknown.forEach(this::unknown);
    }
    if (figures.basis().cashCost() && figures.expenses().withoutPaidOn() > 0) {
      note("tax.note.noPaidOn", figures.expenses().withoutPaidOn());
    }
    if (!figures.basis().cashCost() && !figures.input().stock().counted()) {
      note("tax.note.noCount");
    }
    int assets = LineItem.of("asset", figures.expenses().left()).size();
    if (assets > 0) {
      note("tax.note.assetPurchases", assets);
    }
  }

  private void unknown(List<Expenses.Mapped> all) {
    note(
        "tax.note.unknownCategories",
        all.size(),
        all.stream().limit(FEW).map(Expenses.Mapped::word).toList(),
        all.stream().mapToInt(Expenses.Mapped::rows).sum(),
        all.stream().map(Expenses.Mapped::amount).reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  private void unknown(Expenses.Mapped mapped) {
    note("tax.note.unknownCategory", mapped.word(), mapped.rows(), mapped.amount());
  }

  private void vehicle() {
    MileageLog log = figures.log();
    if (!log.flags().isEmpty()) {
      note("tax.note.logOddities", log.flags().size());
    }
    if (!figures.reconstructed().isEmpty()) {
      BigDecimal distance = Reconstructed.total(figures.reconstructed()).stripTrailingZeros();
      note("tax.note.reconstructed", figures.distanceUnit().far(distance));
    }
  }

  private void ties(Reconciliation ties) {
    if (!ties.left().isEmpty()) {
      note("tax.note.leftOver", ties.left().size());
    }
    long own = rates.used().stream().filter(Rate::overlaid).count();
    if (own > 0) {
      note("tax.note.ownRates", own, ownTables());
    }
    long unchecked = rates.used().stream().filter(rate -> rate.checked().isEmpty()).count();
    if (unchecked > 0) {
      note("tax.note.unchecked", unchecked, rates.used().size());
    }
  }

  private List<String> ownTables() {
    return rates.used().stream()
        .filter(Rate::overlaid)
        .map(Rate::table)
        .distinct()
        .sorted()
        .toList();
  }
}
