package clenchbook.tax.income;

import clenchbook.book.PaymentKind;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.journal.AccountNames;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.journal.Posting;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.year.Regime;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * The income of a period, row by row.
 *
 * @param items the rows that count, on the regime's income lines
 * @param parts of them, the same rows by what they are, to show beside the line: {@code tips},
 *     {@code on account}
 * @param journal their entries
 * @param writtenOff what was given up in the period, gross
 * @param receipts every receipt of the period
 */
public record Income(
    List<LineItem> items,
    TreeMap<String, List<LineItem>> parts,
    List<JournalEntry> journal,
    BigDecimal writtenOff,
    List<Receipt> receipts) {

  public static Income of(
      YearEndInput input, List<Billed> billed, Period period, TaxBasis basis, LineScheme lines) {
    return new Reckoning(input, billed, period, basis, lines).income();
  }

  /** One calculation; mutable while it runs. */
  private static final class Reckoning {
    private final YearEndInput input;
    private final List<Billed> billed;
    private final Period period;
    private final TaxBasis basis;
    private final LineScheme lines;
    private final Regime.Codes codes;
    private final MinorUnit unit;
    private final List<LineItem> items = new ArrayList<>();
    private final TreeMap<String, List<LineItem>> parts = new TreeMap<>();
    private final List<JournalEntry> journal = new ArrayList<>();

    Reckoning(
        YearEndInput input, List<Billed> billed, Period period, TaxBasis basis, LineScheme lines) {
      this.input = input;
      this.billed = billed;
      this.period = period;
      this.basis = basis;
      this.lines = lines;
      this.codes = input.taxYear().regime().codes();
      this.unit = input.book().settings().minorUnit();
    }

    Income income() {
      List<Receipt> all = Receipt.all(input);
      ReceiptTax taxes = ReceiptTax.of(all, billed, input.taxYear()::yearOf, unit);
      List<Receipt> received =
          all.stream().filter(receipt -> period.holds(receipt.date())).toList();
      received.forEach(receipt -> receive(receipt, taxes));
      taxes.heldTaxes().stream().filter(tax -> period.holds(tax.day())).forEach(this::takeHeldTax);
      if (!basis.cashIncome()) {
        billed.stream()
            .filter(bill -> bill.isIncome() && period.holds(bill.date()))
            .forEach(this::bill);
      }
      BigDecimal writtenOff =
          received.stream()
              .filter(receipt -> receipt.kind() == PaymentKind.WRITTEN_OFF)
              .map(Receipt::amount)
              .reduce(unit.zero(), BigDecimal::add);
      return new Income(List.copyOf(items), parts, List.copyOf(journal), writtenOff, received);
    }

    private void receive(Receipt receipt, ReceiptTax taxes) {
      BigDecimal tax = taxes.taxOf(receipt);
      switch (receipt.kind()) {
        case TIP -> tip(receipt);
        case WRITTEN_OFF -> giveUp(receipt, tax);
        case PAYMENT, DEPOSIT, REFUND -> settle(receipt, tax, taxes.unmatched(receipt));
      }
    }

    private void tip(Receipt receipt) {
      String code = codes.tips();
      LineItem item = item(code, receipt, unit.round(receipt.amount()), unit.zero());
      add(item, "tips");
      post(
          receipt,
          Posting.debit(AccountNames.BANK, item.gross()),
          Posting.credit(account(code), item.net()));
    }

    private void giveUp(Receipt receipt, BigDecimal tax) {
      if (basis.cashIncome()) {
        return;
      }
      BigDecimal gross = unit.round(receipt.amount());
      if (period.holds(receipt.date())) {
        items.add(item("bad debts", receipt, gross.subtract(tax), tax));
      }
      post(
          receipt,
          Posting.debit(AccountNames.cost(lines.head("bad debts")), gross.subtract(tax)),
          Posting.debit(AccountNames.BAD_DEBT_TAX, tax),
          Posting.credit(AccountNames.RECEIVABLE, gross));
    }

    private void settle(Receipt receipt, BigDecimal tax, BigDecimal unmatched) {
      BigDecimal cash = unit.round(receipt.cash());
      if (!basis.cashIncome()) {
        post(
            receipt,
            Posting.debit(AccountNames.BANK, cash),
            Posting.credit(AccountNames.RECEIVABLE, cash));
        return;
      }
      boolean refund = receipt.kind() == PaymentKind.REFUND;
      String code = refund ? codes.refunds() : codes.work();
      boolean positive = refund && codes.refundsApart();
      BigDecimal counted = positive ? cash.negate() : cash;
      BigDecimal countedTax = positive ? tax.negate() : tax;
      add(item(code, receipt, counted.subtract(countedTax), countedTax), partOf(receipt, refund));
      if (unmatched.signum() != 0) {
        part("matched with no bill", item(code, receipt, unit.round(unmatched), unit.zero()));
      }
      post(
          receipt,
          Posting.debit(AccountNames.BANK, cash),
          Posting.credit(account(code), cash.subtract(tax)),
          Posting.credit(AccountNames.TAX_DUE, tax));
    }

    private static String partOf(Receipt receipt, boolean refund) {
      if (refund) {
        return "refunds";
      }
      if (receipt.kind() == PaymentKind.DEPOSIT) {
        return "received on account";
      }
      return receipt.atTruck() ? "taken at the truck" : "payments";
    }

    /**
     * Money held on account since an earlier year paid a bill of this one: its tax is no income.
     */
    private void takeHeldTax(ReceiptTax.HeldTax held) {
      if (!basis.cashIncome()) {
        return;
      }
      Receipt receipt = held.receipt();
      String code = codes.work();
      LineItem item =
          new LineItem(
              code,
              receipt.source().sheet(),
              receipt.source().row(),
              held.day(),
              receipt.owner(),
              held.tax().negate(),
              held.tax(),
              unit.zero());
      add(item, "tax within money held since an earlier year");
      journal.add(
          JournalEntry.of(
              held.day(),
              "tax within money held on account, " + receipt.owner(),
              receipt.source().sheet(),
              receipt.source().row(),
              Posting.debit(account(code), held.tax()),
              Posting.credit(AccountNames.TAX_DUE, held.tax())));
    }

    private void bill(Billed bill) {
      for (BilledLine line : bill.lines()) {
        if (line.net().signum() == 0 && line.tax().signum() == 0) {
          continue;
        }
        add(LineItem.of(codes.work(), bill, line), partOf(bill));
      }
      String name = bill.isOfRegister() ? "Invoice " + bill.number() : "Visit before the register";
      BilledLine first = bill.lines().get(0);
      boolean visit = !bill.isOfRegister();
      journal.add(
          JournalEntry.of(
              bill.date(),
              name + ", " + bill.owner(),
              visit ? first.sheet() : "register",
              visit ? first.row() : 0,
              Posting.debit(AccountNames.RECEIVABLE, bill.gross()),
              Posting.credit(account(codes.work()), bill.net()),
              Posting.credit(AccountNames.TAX_DUE, bill.tax())));
    }

    private static String partOf(Billed bill) {
      return switch (bill.standing()) {
        case INVOICE -> "invoices";
        case CREDIT_NOTE -> "credit notes";
        case BEFORE_REGISTER, ON_NO_INVOICE -> "from visits before the register";
      };
    }

    private void add(LineItem item, String part) {
      items.add(item);
      part(part, item);
    }

    private void part(String name, LineItem item) {
      parts.computeIfAbsent(name, unused -> new ArrayList<>()).add(item);
    }

    private LineItem item(String code, Receipt receipt, BigDecimal net, BigDecimal tax) {
      return new LineItem(
          code,
          receipt.source().sheet(),
          receipt.source().row(),
          receipt.date(),
          receipt.owner(),
          net,
          tax,
          net.add(tax));
    }

    private String account(String code) {
      return AccountNames.income(lines.head(code));
    }

    private void post(Receipt receipt, Posting... postings) {
      String description = receipt.word() + ", " + receipt.owner();
      String sheet = receipt.source().sheet();
      journal.add(
          JournalEntry.of(receipt.date(), description, sheet, receipt.source().row(), postings));
    }
  }
}
