package clenchbook.tax;

import clenchbook.book.Asset;
import clenchbook.book.Purchase;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.expenses.PurchaseJournal;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.journal.AccountNames;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.journal.Posting;
import clenchbook.tax.jurisdiction.CapitalItems;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.year.StockValue;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The double-entry journal of a period: every row that moved money or cost, and the year's own
 * figures.
 */
final class YearJournal {
  private final YearFigures figures;
  private final LineScheme lines;
  private final MinorUnit unit;
  private final List<JournalEntry> entries = new ArrayList<>();

  private YearJournal(YearFigures figures, LineScheme lines) {
    this.figures = figures;
    this.lines = lines;
    this.unit = figures.unit();
  }

  /** The entries by date, sheet, row and description; each balances. */
  static List<JournalEntry> of(
      YearFigures figures, LineScheme lines, CapitalItems capital, Map<String, String> otherNames) {
    YearJournal journal = new YearJournal(figures, lines);
    journal.entries.addAll(figures.income().journal());
    journal.purchases();
    journal.mileage();
    journal.assets(capital);
    journal.stock();
    return journal.entries.stream()
        .filter(entry -> !entry.postings().isEmpty())
        .map(entry -> entry.renamed(otherNames))
        .sorted(JournalEntry.BY_DATE)
        .toList();
  }

  private void purchases() {
    PurchaseJournal purchases = new PurchaseJournal(lines, figures.basis(), figures.regime());
    Expenses expenses = figures.expenses();
    List<LineItem> counted = new ArrayList<>(expenses.items());
    counted.addAll(figures.vehicle().forJournal(expenses.vehicleRows()));
    entries.addAll(purchases.costs(counted, expenses.left()));
    entries.addAll(purchases.payments(figures.input().book(), figures.period()));
    unregisteredAssets().forEach(this::unregistered);
  }

  /** Purchases of Category asset that no row of Assets repeats. */
  List<LineItem> unregisteredAssets() {
    return LineItem.of("asset", figures.expenses().left()).stream()
        .filter(
            item ->
                figures.input().book().assets().stream().noneMatch(asset -> repeats(asset, item)))
        .toList();
  }

  private boolean repeats(Asset asset, LineItem item) {
    boolean sameDay =
        figures.input().book().purchases().stream()
            .filter(purchase -> isRow(purchase, item))
            .anyMatch(purchase -> purchase.date().equals(asset.bought()));
    BigDecimal cost = asset.cost().map(unit::round).orElse(unit.zero());
    return sameDay && (cost.compareTo(item.net()) == 0 || cost.compareTo(item.gross()) == 0);
  }

  private static boolean isRow(Purchase purchase, LineItem item) {
    return purchase.source().row() == item.row() && purchase.source().sheet().equals(item.sheet());
  }

  private void unregistered(LineItem item) {
    entries.add(
        JournalEntry.of(
            item.date(),
            item.who() + ", not in Assets",
            item.sheet(),
            item.row(),
            Posting.debit(AccountNames.ASSETS, item.net()),
            Posting.debit(AccountNames.TAX_PAID, item.tax()),
            Posting.credit(
                figures.basis().cashCost() ? AccountNames.BANK : AccountNames.PAYABLE,
                item.gross())));
  }

  private void mileage() {
    if (!figures.vehicle().byMileage()) {
      return;
    }
    for (LineItem trip : LineItem.within(figures.period(), figures.vehicle().mileage().items())) {
      entries.add(
          JournalEntry.of(
              trip.date(),
              "mileage, " + trip.who(),
              trip.sheet(),
              trip.row(),
              Posting.debit(AccountNames.cost(lines.head(trip.code())), trip.net()),
              Posting.credit(AccountNames.OWNER, trip.net())));
    }
  }

  private void assets(CapitalItems capital) {
    for (Asset asset : figures.input().book().assets()) {
      List<LineItem> expensed = rowsOf(capital.bought(), asset);
      if (figures.period().holds(asset.bought())) {
        bought(asset, expensed);
      }
      asset
          .sold()
          .filter(figures.period()::holds)
          .ifPresent(day -> sold(asset, day, rowsOf(capital.sold(), asset)));
    }
    capital.retired().forEach(this::retired);
    figures.depreciation().forEach(this::depreciation);
  }

  private static boolean isRow(Asset asset, LineItem item) {
    return asset.source().row() == item.row() && asset.source().sheet().equals(item.sheet());
  }

  private static List<LineItem> rowsOf(List<LineItem> items, Asset asset) {
    return items.stream().filter(item -> isRow(asset, item)).toList();
  }

  private void bought(Asset asset, List<LineItem> expensed) {
    BigDecimal cost = asset.cost().map(unit::round).orElse(unit.zero());
    BigDecimal counted = LineItem.sum(expensed);
    List<Posting> postings = new ArrayList<>();
    expensed.forEach(
        item ->
            postings.add(Posting.debit(AccountNames.cost(lines.head(item.code())), item.net())));
    postings.add(
        Posting.debit(
            expensed.isEmpty() ? AccountNames.ASSETS : AccountNames.OWNER, cost.subtract(counted)));
    postings.add(Posting.credit(AccountNames.BANK, cost));
    entries.add(entry(asset, asset.bought(), "bought: " + asset.name(), postings));
  }

  private void sold(Asset asset, LocalDate day, List<LineItem> income) {
    BigDecimal proceeds = asset.proceeds().map(unit::round).orElse(unit.zero());
    List<Posting> postings = new ArrayList<>(List.of(Posting.debit(AccountNames.BANK, proceeds)));
    income.forEach(
        item ->
            postings.add(Posting.credit(AccountNames.income(lines.head(item.code())), item.net())));
    postings.add(Posting.credit(AccountNames.DISPOSALS, proceeds.subtract(LineItem.sum(income))));
    entries.add(entry(asset, day, "sold: " + asset.name(), postings));
  }

  /** What was left in the books of an asset that is gone, as an expense. */
  private void retired(LineItem item) {
    entries.add(
        JournalEntry.of(
            item.date(),
            "no longer held: " + item.who(),
            item.sheet(),
            item.row(),
            Posting.debit(AccountNames.cost(lines.head(item.code())), item.net()),
            Posting.credit(AccountNames.ASSETS, item.net())));
  }

  private void depreciation(LineItem item) {
    entries.add(
        JournalEntry.of(
            item.date(),
            "depreciation: " + item.who(),
            item.sheet(),
            item.row(),
            Posting.debit(AccountNames.cost(lines.head(item.code())), item.net()),
            Posting.credit(AccountNames.DEPRECIATION, item.net())));
  }

  private static JournalEntry entry(
      Asset asset, LocalDate day, String description, List<Posting> postings) {
    return new JournalEntry(
        day, description, asset.source().sheet(), asset.source().row(), postings);
  }

  private void stock() {
    if (figures.basis().cashCost()) {
      return;
    }
    StockValue stock = figures.input().stock();
    BigDecimal change = unit.round(stock.closing()).subtract(unit.round(stock.opening()));
    String cost = AccountNames.cost(lines.head(figures.regime().codes().goods(figures.basis())));
    entries.add(
        JournalEntry.of(
            figures.period().last(),
            "stock at the end less stock at the beginning",
            "tax-summary",
            0,
            Posting.debit(AccountNames.STOCK, change),
            Posting.credit(cost, change)));
  }
}
