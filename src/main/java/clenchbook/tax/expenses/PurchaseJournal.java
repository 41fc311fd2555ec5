package clenchbook.tax.expenses;

import clenchbook.book.Book;
import clenchbook.book.Purchase;
import clenchbook.tax.journal.AccountNames;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.journal.Posting;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxBasis;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The journal's entries for purchases: what each row cost, by where it counts, and the money that
 * paid it.
 */
public final class PurchaseJournal {
  private final LineScheme lines;
  private final TaxBasis basis;
  private final Regime regime;

  public PurchaseJournal(LineScheme lines, TaxBasis basis, Regime regime) {
    this.lines = lines;
    this.basis = basis;
    this.regime = regime;
  }

  /**
   * One entry for each row, whatever number of lines it counts on, in the order of sheet and row.
   */
  public List<JournalEntry> costs(List<LineItem> counted, List<LineItem> left) {
    Map<String, List<Charged>> byRow = new TreeMap<>();
    counted.forEach(item -> add(byRow, new Charged(item, account(item))));
    left.stream()
        .filter(item -> !item.code().equals("asset"))
        .forEach(item -> add(byRow, new Charged(item, accountOfLeft(item))));
    return byRow.values().stream().map(this::entry).toList();
  }

  /** A part of a row and the account it is charged to. */
  private record Charged(LineItem item, String account) {}

  private static void add(Map<String, List<Charged>> byRow, Charged part) {
    byRow.computeIfAbsent(key(part.item()), unused -> new ArrayList<>()).add(part);
  }

  private static String key(LineItem item) {
    return item.sheet() + "\n" + String.format(Locale.ROOT, "%09d", item.row());
  }

  private JournalEntry entry(List<Charged> row) {
    LineItem first = row.get(0).item();
    List<Posting> postings = new ArrayList<>();
    row.forEach(part -> postings.add(Posting.debit(part.account(), part.item().net())));
    postings.add(Posting.debit(AccountNames.TAX_PAID, first.tax()));
    BigDecimal gross = LineItem.sum(row.stream().map(Charged::item).toList()).add(first.tax());
    postings.add(
        Posting.credit(basis.cashCost() ? AccountNames.BANK : AccountNames.PAYABLE, gross));
    return new JournalEntry(first.date(), first.who(), first.sheet(), first.row(), postings);
  }

  private String account(LineItem item) {
    return switch (item.code()) {
      case "private", Expenses.VEHICLE -> AccountNames.OWNER;
      case CategoryMap.UNKNOWN -> AccountNames.UNKNOWN;
      default -> AccountNames.cost(head(item.code()));
    };
  }

  private static String accountOfLeft(LineItem item) {
    return switch (item.code()) {
      case "private" -> AccountNames.OWNER;
      case "tax paid over" -> AccountNames.TAX_DUE;
      default -> AccountNames.NOT_ALLOWED;
    };
  }

  private LineHead head(String code) {
    return switch (code) {
      case Expenses.GOODS -> lines.head(regime.codes().goods(basis));
      case Expenses.PARKING -> lines.head(regime.codes().vehicle());
      default -> lines.head(code);
    };
  }

  /** On the invoiced basis, the money that paid purchases within the period. */
  public List<JournalEntry> payments(Book book, Period period) {
    if (basis.cashCost()) {
      return List.of();
    }
    MinorUnit unit = book.settings().minorUnit();
    return book.purchases().stream()
        .filter(purchase -> period.holds(purchase.paidOn().orElse(purchase.date())))
        .filter(purchase -> purchase.grossAmount().signum() != 0)
        .map(purchase -> payment(purchase, unit))
        .toList();
  }

  private static JournalEntry payment(Purchase purchase, MinorUnit unit) {
    BigDecimal gross = unit.round(purchase.grossAmount());
    return JournalEntry.of(
        purchase.paidOn().orElse(purchase.date()),
        "paid, " + purchase.supplier(),
        purchase.source().sheet(),
        purchase.source().row(),
        Posting.debit(AccountNames.PAYABLE, gross),
        Posting.credit(AccountNames.BANK, gross));
  }
}
