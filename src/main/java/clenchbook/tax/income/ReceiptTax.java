package clenchbook.tax.income;

import clenchbook.book.Names;
import clenchbook.tax.billed.Billed;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of each receipt is tax: the share that the bills it pays bear. A receipt pays the bill
 * it names, or the one that bears its visit, and what is left the owner's oldest open bills. A bill
 * paid in full has given up its tax to the cent. What no bill takes bears no tax, and is listed.
 */
final class ReceiptTax {
  private final MinorUnit unit;
  private final Map<String, List<OpenBill>> open = new HashMap<>();
  private final Map<Receipt, BigDecimal> taxes = new HashMap<>();
  private final Map<Receipt, BigDecimal> unmatched = new HashMap<>();
  private final Map<String, BigDecimal> paidTooMuch = new HashMap<>();

  private ReceiptTax(MinorUnit unit) {
    this.unit = unit;
  }

  static ReceiptTax of(List<Receipt> receipts, List<Billed> billed, MinorUnit unit) {
    ReceiptTax tax = new ReceiptTax(unit);
    billed.stream().filter(bill -> bill.gross().signum() > 0).forEach(tax::ask);
    billed.stream().filter(bill -> bill.gross().signum() < 0).forEach(tax::credit);
    receipts.forEach(tax::receive);
    return tax;
  }

  /** The part of the receipt that is tax, with the receipt's own sign in cash. */
  BigDecimal taxOf(Receipt receipt) {
    return taxes.getOrDefault(receipt, unit.zero());
  }

  /** The part of the receipt that no bill of the book takes. */
  BigDecimal unmatched(Receipt receipt) {
    return unmatched.getOrDefault(receipt, unit.zero());
  }

  private List<OpenBill> bills(String owner) {
    return open.computeIfAbsent(Names.key(owner), unused -> new ArrayList<>());
  }

  private void ask(Billed bill) {
    bills(bill.owner()).add(new OpenBill(bill));
  }

  private void credit(Billed note) {
    BigDecimal left = note.gross().negate();
    for (OpenBill bill : bills(note.owner())) {
      left = left.subtract(bill.lower(left));
    }
  }

  private void receive(Receipt receipt) {
    BigDecimal off = receipt.offBalance();
    if (off.signum() > 0) {
      pay(receipt, off);
    } else if (off.signum() < 0) {
      giveBack(receipt, off.negate());
    }
  }

  private void pay(Receipt receipt, BigDecimal amount) {
    BigDecimal left = amount;
    BigDecimal tax = unit.zero();
    for (OpenBill bill : inTurn(receipt)) {
      BigDecimal taken = left.min(bill.left());
      tax = tax.add(bill.receive(taken));
      left = left.subtract(taken);
    }
    taxes.put(receipt, tax);
    unmatched.put(receipt, left);
    paidTooMuch.merge(Names.key(receipt.owner()), left, BigDecimal::add);
  }

  /** Money given back is first what was paid too much, then what paid the latest bills. */
  private void giveBack(Receipt receipt, BigDecimal amount) {
    BigDecimal spare =
        paidTooMuch.getOrDefault(Names.key(receipt.owner()), BigDecimal.ZERO).min(amount);
    paidTooMuch.merge(Names.key(receipt.owner()), spare.negate(), BigDecimal::add);
    BigDecimal left = amount.subtract(spare);
    BigDecimal tax = unit.zero();
    List<OpenBill> bills = bills(receipt.owner());
    for (int i = bills.size() - 1; i >= 0; i--) {
      BigDecimal returned = left.min(bills.get(i).received);
      tax = tax.add(bills.get(i).receive(returned.negate()));
      left = left.subtract(returned);
    }
    taxes.put(receipt, tax);
    unmatched.put(receipt, left.add(spare).negate());
  }

  private List<OpenBill> inTurn(Receipt receipt) {
    List<OpenBill> all = bills(receipt.owner());
    List<OpenBill> first = all.stream().filter(bill -> bill.isNamedBy(receipt)).toList();
    List<OpenBill> turn = new ArrayList<>(first);
    all.stream().filter(bill -> !first.contains(bill)).forEach(turn::add);
    return turn;
  }

  /** A bill while it is being paid. */
  private final class OpenBill {
    private final Billed bill;
    private BigDecimal gross;
    private BigDecimal tax;
    private BigDecimal received = BigDecimal.ZERO;
    private BigDecimal taxTaken = BigDecimal.ZERO;

    OpenBill(Billed bill) {
      this.bill = bill;
      this.gross = bill.gross();
      this.tax = bill.tax();
    }

    boolean isNamedBy(Receipt receipt) {
      if (receipt.atTruck()) {
        return bill.bears(receipt.source().sheet(), receipt.source().row());
      }
      return !receipt.invoice().isEmpty() && Names.same(receipt.invoice(), bill.number());
    }

    BigDecimal left() {
      return gross.subtract(received);
    }

    /**
     * Takes up to {@code amount} off what is asked for, tax in proportion; gives back how much it
     * took.
     */
    BigDecimal lower(BigDecimal amount) {
      BigDecimal taken = amount.min(left());
      if (taken.signum() > 0) {
        BigDecimal share = unit.round(tax.multiply(taken).divide(gross, MathContext.DECIMAL128));
        gross = gross.subtract(taken);
        tax = tax.subtract(share);
      }
      return taken;
    }

    /** Receives (or gives back, below zero) and returns the change of the tax received so far. */
    BigDecimal receive(BigDecimal amount) {
      if (amount.signum() == 0) {
        return BigDecimal.ZERO;
      }
      received = received.add(amount);
      BigDecimal due = unit.round(tax.multiply(received).divide(gross, MathContext.DECIMAL128));
      BigDecimal change = due.subtract(taxTaken);
      taxTaken = due;
      return change;
    }
  }
}
