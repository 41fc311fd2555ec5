package clenchbook.tax.income;

import clenchbook.book.Names;
import clenchbook.tax.billed.Billed;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToIntFunction;

/**
 * How much of each receipt is tax: the share that the bills it pays bear. A receipt pays the bill
 * it names, or the one that bears its visit, and what is left the owner's oldest open bills. A bill
 * paid in full has given up its tax to the cent.
 *
 * <p>Money received in a tax year pays work of that year or of one before, never of a later one, so
 * that a closed year stays as it is whatever is typed afterwards. What no bill takes bears no tax,
 * is listed, and is held on account; in a later year it pays that year's bills first, and their tax
 * is then taken out of it.
 */
final class ReceiptTax {
  private final MinorUnit unit;
  private final Map<String, List<OpenBill>> open = new HashMap<>();
  private final Map<String, List<Held>> held = new HashMap<>();
  private final Map<String, BigDecimal> credits = new HashMap<>();
  private final Map<Receipt, List<SoldShare>> shares = new HashMap<>();
  private final Map<Receipt, BigDecimal> unmatched = new HashMap<>();
  private final List<HeldTax> heldTaxes = new ArrayList<>();

  /** Money held on account, with the receipt that brought it; mutable while it is used up. */
  private static final class Held {
    private final Receipt receipt;
    private BigDecimal left;

    Held(Receipt receipt, BigDecimal left) {
      this.receipt = receipt;
      this.left = left;
    }
  }

  /**
   * Tax within money of an earlier year, known only once a bill of a later one took that money.
   *
   * @param receipt the receipt that brought the money
   * @param day the day of the work it paid
   * @param share what the work of one tax code took of it; its tax is not zero
   */
  record HeldTax(Receipt receipt, LocalDate day, SoldShare share) {
    BigDecimal tax() {
      return share.tax();
    }
  }

  private ReceiptTax(MinorUnit unit) {
    this.unit = unit;
  }

  /**
   * The tax of all receipts.
   *
   * @param receipts every receipt, oldest first
   * @param billed everything billed, oldest first
   * @param years the tax year in which a day lies
   */
  static ReceiptTax of(
      List<Receipt> receipts, List<Billed> billed, ToIntFunction<LocalDate> years, MinorUnit unit) {
    ReceiptTax tax = new ReceiptTax(unit);
    TreeSet<Integer> all = new TreeSet<>();
    receipts.forEach(receipt -> all.add(years.applyAsInt(receipt.date())));
    billed.forEach(bill -> all.add(years.applyAsInt(bill.date())));
    List<Billed> asked = billed.stream().filter(bill -> bill.gross().signum() > 0).toList();
    for (Billed bill : asked) {
      List<OpenBill> parts = OpenBill.of(bill, years, unit);
      parts.forEach(part -> all.add(part.year()));
      tax.bills(bill.owner()).addAll(parts);
    }
    for (int year : all) {
      billed.stream()
          .filter(bill -> bill.gross().signum() < 0)
          .filter(bill -> years.applyAsInt(bill.date()) == year)
          .forEach(note -> tax.credit(note, year));
      tax.useUpHeld(year);
      receipts.stream()
          .filter(receipt -> years.applyAsInt(receipt.date()) == year)
          .forEach(receipt -> tax.receive(receipt, year));
    }
    return tax;
  }

  /** The part of the receipt that is tax, with the receipt's own sign in cash. */
  BigDecimal taxOf(Receipt receipt) {
    return shares(receipt).stream().map(SoldShare::tax).reduce(unit.zero(), BigDecimal::add);
  }

  /** What the work of each tax code took of the receipt, with the receipt's own sign in cash. */
  List<SoldShare> shares(Receipt receipt) {
    return shares.getOrDefault(receipt, List.of());
  }

  /** The part of the receipt that no bill of its year or before takes. */
  BigDecimal unmatched(Receipt receipt) {
    return unmatched.getOrDefault(receipt, unit.zero());
  }

  /** The tax within money of earlier years, by the work it paid. */
  List<HeldTax> heldTaxes() {
    return List.copyOf(heldTaxes);
  }

  private List<OpenBill> bills(String owner) {
    return open.computeIfAbsent(Names.key(owner), unused -> new ArrayList<>());
  }

  /** The owner's bills that money of a year may pay, oldest first. */
  private List<OpenBill> bills(String owner, int year) {
    return bills(owner).stream().filter(bill -> bill.year() <= year).toList();
  }

  /** Lowers the owner's open bills; what they do not take waits for later ones. */
  private void credit(Billed note, int year) {
    String owner = Names.key(note.owner());
    credits.merge(owner, note.gross().negate(), BigDecimal::add);
    useCredit(owner, year);
  }

  private void useCredit(String owner, int year) {
    BigDecimal left = credits.getOrDefault(owner, BigDecimal.ZERO);
    for (OpenBill bill : bills(owner, year)) {
      left = left.subtract(bill.lower(left));
    }
    credits.put(owner, left);
  }

  /** At the beginning of a year: credit and money left over from before pay its bills first. */
  private void useUpHeld(int year) {
    new TreeSet<>(open.keySet()).forEach(owner -> useCredit(owner, year));
    new TreeMap<>(held).values().forEach(ofOwner -> ofOwner.forEach(money -> use(money, year)));
  }

  private void use(Held money, int year) {
    for (OpenBill bill : inTurn(money.receipt, year)) {
      BigDecimal taken = money.left.min(bill.left());
      bill.receive(taken).stream()
          .filter(share -> share.tax().signum() != 0)
          .forEach(share -> heldTaxes.add(new HeldTax(money.receipt, bill.day(), share)));
      money.left = money.left.subtract(taken);
    }
  }

  private void receive(Receipt receipt, int year) {
    BigDecimal off = receipt.offBalance();
    if (off.signum() > 0) {
      pay(receipt, off, year);
    } else if (off.signum() < 0) {
      giveBack(receipt, off.negate(), year);
    }
  }

  private void pay(Receipt receipt, BigDecimal amount, int year) {
    BigDecimal left = amount;
    List<SoldShare> taken = new ArrayList<>();
    for (OpenBill bill : inTurn(receipt, year)) {
      BigDecimal part = left.min(bill.left());
      taken.addAll(bill.receive(part));
      left = left.subtract(part);
    }
    shares.put(receipt, List.copyOf(taken));
    unmatched.put(receipt, left);
    held.computeIfAbsent(Names.key(receipt.owner()), unused -> new ArrayList<>())
        .add(new Held(receipt, left));
  }

  /** Money given back is first what was paid too much, then what paid the latest bills. */
  private void giveBack(Receipt receipt, BigDecimal amount, int year) {
    BigDecimal spare = spare(receipt.owner(), amount);
    BigDecimal left = amount.subtract(spare);
    List<SoldShare> taken = new ArrayList<>();
    List<OpenBill> bills = bills(receipt.owner(), year);
    for (int i = bills.size() - 1; i >= 0; i--) {
      BigDecimal returned = left.min(bills.get(i).received());
      taken.addAll(bills.get(i).receive(returned.negate()));
      left = left.subtract(returned);
    }
    shares.put(receipt, List.copyOf(taken));
    unmatched.put(receipt, left.add(spare).negate());
  }

  /** Takes up to an amount out of what is held for the owner; gives back how much it took. */
  private BigDecimal spare(String owner, BigDecimal amount) {
    BigDecimal wanted = amount;
    for (Held money : held.getOrDefault(Names.key(owner), List.of())) {
      BigDecimal taken = wanted.min(money.left);
      money.left = money.left.subtract(taken);
      wanted = wanted.subtract(taken);
    }
    return amount.subtract(wanted);
  }

  private List<OpenBill> inTurn(Receipt receipt, int year) {
    List<OpenBill> all = bills(receipt.owner(), year);
    List<OpenBill> named = all.stream().filter(bill -> bill.isNamedBy(receipt)).toList();
    List<OpenBill> ordered = new ArrayList<>(named);
    all.stream().filter(bill -> !named.contains(bill)).forEach(ordered::add);
    return ordered;
  }
}
