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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** One count of a period's income; mutable while it runs. */
final class IncomeCount {
  private final YearEndInput input;
  private final List<Billed> billed;
  private final Period period;
  private final TaxBasis basis;
  private final LineScheme lines;
  private final IncomeLines onto;
  private final Regime.Codes codes;
  private final MinorUnit unit;
  private final List<LineItem> items = new ArrayList<>();
  private final TreeMap<IncomePart, List<LineItem>> parts = new TreeMap<>();
  private final List<JournalEntry> journal = new ArrayList<>();
  private final List<Income.Sale> sales = new ArrayList<>();

  IncomeCount(
      YearEndInput input,
      List<Billed> billed,
      Period period,
      TaxBasis basis,
      LineScheme lines,
      IncomeLines onto) {
    this.input = input;
    this.billed = billed;
    this.period = period;
    this.basis = basis;
    this.lines = lines;
    this.onto = onto;
    this.codes = input.taxYear().regime().codes();
    this.unit = input.book().settings().minorUnit();
  }

  Income income() {
    List<Receipt> all = Receipt.all(input);
    ReceiptTax taxes = ReceiptTax.of(all, billed, input.taxYear()::yearOf, unit);
    List<Receipt> received = all.stream().filter(receipt -> period.holds(receipt.date())).toList();
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
    return new Income(
        List.copyOf(items), parts, List.copyOf(journal), writtenOff, received, List.copyOf(sales));
  }

  private void receive(Receipt receipt, ReceiptTax taxes) {
    switch (receipt.kind()) {
      case TIP -> tip(receipt);
      case WRITTEN_OFF -> giveUp(receipt, taxes.taxOf(receipt));
      case PAYMENT, DEPOSIT, REFUND ->
          settle(receipt, taxes.shares(receipt), taxes.unmatched(receipt));
    }
  }

  private void tip(Receipt receipt) {
    String code = onto.tip(receipt.date());
    LineItem item = item(code, receipt, unit.round(receipt.amount()), unit.zero());
    add(item, IncomePart.TIPS);
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

  private void settle(Receipt receipt, List<SoldShare> shares, BigDecimal unmatched) {
    BigDecimal cash = unit.round(receipt.cash());
    if (!basis.cashIncome()) {
      post(
          receipt,
          Posting.debit(AccountNames.BANK, cash),
          Posting.credit(AccountNames.RECEIVABLE, cash));
      return;
    }
    boolean refund = receipt.kind() == PaymentKind.REFUND;
    BigDecimal tax = unit.zero();
    List<Posting> postings = new ArrayList<>(List.of(Posting.debit(AccountNames.BANK, cash)));
    for (CodedShare share : coded(receipt, cash, shares, refund)) {
      count(receipt, share, refund);
      postings.add(Posting.credit(account(share.code()), share.net()));
      tax = tax.add(share.tax());
    }
    postings.add(Posting.credit(AccountNames.TAX_DUE, tax));
    if (unmatched.signum() != 0) {
      String code = onto.withoutBill(receipt.date(), refund);
      part(IncomePart.NO_BILL, item(code, receipt, unit.round(unmatched), unit.zero()));
    }
    shares.forEach(share -> sold(share, receipt, receipt.date()));
    post(receipt, postings.toArray(Posting[]::new));
  }

  private void count(Receipt receipt, CodedShare share, boolean refund) {
    boolean positive = refund && codes.refundsApart();
    BigDecimal net = positive ? share.net().negate() : share.net();
    BigDecimal tax = positive ? share.tax().negate() : share.tax();
    add(item(share.code(), receipt, net, tax), partOf(receipt, refund));
  }

  /** What of a receipt counts on one line. */
  private record CodedShare(String code, BigDecimal net, BigDecimal tax) {}

  /** The receipt by line, adding to its money to the cent; at least one. */
  private List<CodedShare> coded(
      Receipt receipt, BigDecimal cash, List<SoldShare> shares, boolean refund) {
    TreeMap<String, CodedShare> byCode = new TreeMap<>();
    BigDecimal rest = cash;
    for (SoldShare share : shares) {
      String code = refund ? onto.givenBack(share.sold()) : onto.sold(share.sold());
      put(byCode, new CodedShare(code, share.net(), share.tax()));
      rest = rest.subtract(share.net()).subtract(share.tax());
    }
    BigDecimal cent = BigDecimal.ONE.movePointLeft(unit.digits());
    boolean ownLine = byCode.isEmpty() || rest.abs().compareTo(cent) > 0;
    String code = ownLine ? onto.withoutBill(receipt.date(), refund) : byCode.firstKey();
    put(byCode, new CodedShare(code, rest, unit.zero()));
    return List.copyOf(byCode.values());
  }

  private static void put(TreeMap<String, CodedShare> byCode, CodedShare share) {
    byCode.merge(
        share.code(),
        share,
        (one, other) ->
            new CodedShare(one.code(), one.net().add(other.net()), one.tax().add(other.tax())));
  }

  private void sold(SoldShare share, Receipt receipt, LocalDate day) {
    if (share.net().signum() != 0 || share.tax().signum() != 0) {
      LineItem item = item("", receipt, share.net(), share.tax());
      sales.add(new Income.Sale(share.sold(), item.onDay(day)));
    }
  }

  private static IncomePart partOf(Receipt receipt, boolean refund) {
    if (refund) {
      return IncomePart.REFUNDS;
    }
    if (receipt.kind() == PaymentKind.DEPOSIT) {
      return IncomePart.ON_ACCOUNT;
    }
    return receipt.atTruck() ? IncomePart.AT_TRUCK : IncomePart.PAYMENTS;
  }

  /** Money held on account since an earlier year paid a bill of this one: its tax is no income. */
  private void takeHeldTax(ReceiptTax.HeldTax held) {
    if (!basis.cashIncome()) {
      return;
    }
    Receipt receipt = held.receipt();
    String code = onto.sold(held.share().sold());
    sold(held.share(), receipt, held.day());
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
    add(item, IncomePart.HELD_TAX);
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
    TreeMap<String, BigDecimal> nets = new TreeMap<>();
    for (BilledLine line : bill.lines()) {
      if (line.net().signum() == 0 && line.tax().signum() == 0) {
        continue;
      }
      Sold sold = Sold.of(bill, line);
      String code = onto.sold(sold);
      LineItem item = LineItem.of(code, bill, line);
      add(item, partOf(bill));
      sales.add(new Income.Sale(sold, item));
      nets.merge(account(code), line.net(), BigDecimal::add);
    }
    String name = bill.isOfRegister() ? "Invoice " + bill.number() : "Visit before the register";
    BilledLine first = bill.lines().get(0);
    boolean visit = !bill.isOfRegister();
    List<Posting> postings =
        new ArrayList<>(List.of(Posting.debit(AccountNames.RECEIVABLE, bill.gross())));
    nets.forEach((account, net) -> postings.add(Posting.credit(account, net)));
    postings.add(Posting.credit(AccountNames.TAX_DUE, bill.tax()));
    journal.add(
        new JournalEntry(
            bill.date(),
            name + ", " + bill.owner(),
            visit ? first.sheet() : "register",
            visit ? first.row() : 0,
            postings));
  }

  private static IncomePart partOf(Billed bill) {
    return switch (bill.standing()) {
      case INVOICE -> IncomePart.INVOICES;
      case CREDIT_NOTE -> IncomePart.CREDIT_NOTES;
      case BEFORE_REGISTER, ON_NO_INVOICE -> IncomePart.BEFORE_REGISTER;
    };
  }

  private void add(LineItem item, IncomePart part) {
    items.add(item);
    part(part, item);
  }

  private void part(IncomePart part, LineItem item) {
    parts.computeIfAbsent(part, unused -> new ArrayList<>()).add(item);
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
