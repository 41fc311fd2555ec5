package clenchbook.tax;

import clenchbook.book.PaymentKind;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.billed.BookNets;
import clenchbook.tax.billed.OwnerDebts;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Receipt;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Wording;
import clenchbook.tax.year.Regime;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Ties the summary's income to the register and the book, step by step, each part ending in what is
 * left over: nothing, or amounts that are listed by row.
 *
 * @param steps the steps, in order
 * @param left what is left over, by row; empty where every part ends in nothing
 */
record Reconciliation(List<Step> steps, List<Left> left) {

  /**
   * One step.
   *
   * @param part the part it belongs to
   * @param label what it is
   * @param amount the amount, with its sign
   * @param result whether it closes its part
   */
  record Step(Wording part, Wording label, BigDecimal amount, boolean result) {}

  /**
   * Something left over.
   *
   * @param sheet the sheet of its row; {@code register} where it has none
   * @param row the row
   * @param date the day
   * @param who whose
   * @param why why it is left over
   * @param amount how much
   */
  record Left(String sheet, int row, LocalDate date, String who, Wording why, BigDecimal amount) {
    private static final String REGISTER = "register";

    /** Whether it has no row in the book. */
    boolean ofRegister() {
      return sheet.equals(REGISTER);
    }
  }

  static Reconciliation of(YearFigures figures, Optional<OwnerDebts> debts) {
    Steps run = new Steps(figures);
    run.visits();
    debts.ifPresent(run::money);
    run.income();
    return new Reconciliation(List.copyOf(run.steps), List.copyOf(run.left));
  }

  /** Mutable while one reconciliation is made. */
  private static final class Steps {
    private final YearFigures figures;
    private final MinorUnit unit;
    private final Period period;
    private final List<Step> steps = new ArrayList<>();
    private final List<Left> left = new ArrayList<>();

    Steps(YearFigures figures) {
      this.figures = figures;
      this.unit = figures.unit();
      this.period = figures.period();
    }

    /** From the book's visits of the period to the net that was invoiced in it. */
    void visits() {
      Wording part = Wording.of("from the visits to the invoices, without tax", "tax.ties.visits");
      TreeMap<String, RowSum> rows = new TreeMap<>();
      figures.billed().forEach(bill -> bill.lines().forEach(line -> add(rows, bill, line)));
      BookNets book = BookNets.of(figures.input().jobs());
      rows.values().forEach(row -> row.compare(book, period));
      step(
          part,
          Wording.of("work of the period's visits, as the book has it now", "tax.ties.step.work"),
          book.within(period));
      step(
          part,
          Wording.of(
              "less visits that no invoice bears yet (by row below)", "tax.ties.step.waiting"),
          waiting(rows).negate());
      step(
          part,
          Wording.of("invoices that differ from the book (by row below)", "tax.ties.step.differ"),
          differing(rows, true));
      step(
          part,
          Wording.of("cents of rounding between invoices and visits", "tax.ties.step.rounding"),
          differing(rows, false));
      step(
          part,
          Wording.of("invoiced in another period, and the reverse", "tax.ties.step.moved"),
          sum(rows, RowSum::moved));
      step(
          part,
          Wording.of(
              "less invoiced in the period, and visits before the register",
              "tax.ties.step.invoiced"),
          invoiced(Billed::net).negate());
      result(part, steps.stream().map(Step::amount).reduce(unit.zero(), BigDecimal::add));
    }

    private void add(TreeMap<String, RowSum> rows, Billed bill, BilledLine line) {
      RowSum row =
          rows.computeIfAbsent(
              BookNets.key(line.sheet(), line.row()), unused -> new RowSum(line, bill.owner()));
      row.add(bill, line, period);
    }

    private BigDecimal waiting(TreeMap<String, RowSum> rows) {
      rows.values().stream()
          .filter(row -> row.isOf(period) && row.waiting.signum() != 0)
          .forEach(
              row ->
                  left.add(
                      row.left(
                          Wording.of("no invoice bears this visit yet", "tax.ties.left.noInvoice"),
                          row.waiting)));
      return sum(rows, row -> row.isOf(period) ? row.waiting : BigDecimal.ZERO);
    }

    private BigDecimal differing(TreeMap<String, RowSum> rows, boolean more) {
      BigDecimal cent = BigDecimal.ONE.movePointLeft(unit.digits());
      List<RowSum> found =
          rows.values().stream()
              .filter(row -> row.difference.abs().compareTo(cent) > 0 == more)
              .toList();
      if (more) {
        found.forEach(
            row ->
                left.add(
                    row.left(
                        Wording.of("the invoice differs from the book", "tax.ties.left.differs"),
                        row.difference)));
      }
      return found.stream().map(row -> row.difference).reduce(unit.zero(), BigDecimal::add);
    }

    private BigDecimal sum(TreeMap<String, RowSum> rows, Function<RowSum, BigDecimal> part) {
      return rows.values().stream().map(part).reduce(unit.zero(), BigDecimal::add);
    }

    private BigDecimal invoiced(Function<Billed, BigDecimal> amount) {
      return figures.billed().stream()
          .filter(bill -> bill.isIncome() && period.holds(bill.date()))
          .map(amount)
          .reduce(unit.zero(), BigDecimal::add);
    }

    /** From what was owed to what was received. */
    void money(OwnerDebts debts) {
      Wording part =
          Wording.of("from the register's balances to the money, with tax", "tax.ties.money");
      int from = steps.size();
      step(
          part,
          Wording.of(
              "owed by owners before " + period.first() + ", opening balances included",
              "tax.ties.step.owedBefore",
              period.first()),
          debts.before());
      step(
          part,
          Wording.of("invoices of the period", "tax.ties.step.invoices"),
          register(Billed.Standing.INVOICE));
      step(
          part,
          Wording.of("credit notes of the period", "tax.ties.step.creditNotes"),
          register(Billed.Standing.CREDIT_NOTE));
      step(
          part,
          Wording.of(
              "less owed by owners on " + period.last(), "tax.ties.step.owedOn", period.last()),
          debts.after().negate());
      step(
          part,
          Wording.of("less written off", "tax.ties.step.writtenOff"),
          received(debts.openingDate(), PaymentKind.WRITTEN_OFF).negate());
      step(
          part,
          Wording.of("less payments in the book", "tax.ties.step.payments"),
          received(debts.openingDate(), PaymentKind.PAYMENT).negate());
      step(
          part,
          Wording.of("less deposits in the book", "tax.ties.step.deposits"),
          received(debts.openingDate(), PaymentKind.DEPOSIT).negate());
      step(
          part,
          Wording.of("refunds in the book", "tax.ties.step.refunds"),
          received(debts.openingDate(), PaymentKind.REFUND).negate());
      BigDecimal rest =
          steps.subList(from, steps.size()).stream()
              .map(Step::amount)
              .reduce(unit.zero(), BigDecimal::add);
      result(part, rest);
      if (rest.signum() != 0) {
        left.add(
            new Left(
                Left.REGISTER,
                0,
                period.last(),
                "",
                Wording.of("register and book tell different money", "tax.ties.left.money"),
                rest));
      }
    }

    private BigDecimal register(Billed.Standing standing) {
      return figures.billed().stream()
          .filter(bill -> bill.standing() == standing && period.holds(bill.date()))
          .map(Billed::gross)
          .reduce(unit.zero(), BigDecimal::add);
    }

    private BigDecimal received(LocalDate opening, PaymentKind kind) {
      return figures.income().receipts().stream()
          .filter(receipt -> receipt.kind() == kind && !receipt.date().isBefore(opening))
          .map(receipt -> unit.round(receipt.offBalance()))
          .reduce(unit.zero(), BigDecimal::add);
    }

    /** From the money, or the invoices, to the summary's income. */
    void income() {
      boolean cash = figures.basis().cashIncome();
      Wording part =
          cash
              ? Wording.of("from the money to the income", "tax.ties.moneyToIncome")
              : Wording.of("from the invoices to the income", "tax.ties.invoicesToIncome");
      int from = steps.size();
      if (cash) {
        step(
            part,
            Wording.of(
                "payments, deposits and refunds of the period in the book",
                "tax.ties.step.received"),
            money(receipt -> receipt.kind() != PaymentKind.TIP));
        step(
            part,
            Wording.of("tips", "tax.ties.step.tips"),
            money(receipt -> receipt.kind() == PaymentKind.TIP));
        step(
            part,
            Wording.of("less the tax within them", "tax.ties.step.taxWithin"),
            tax().negate());
      } else {
        step(
            part,
            Wording.of(
                "invoices and credit notes of the period, and visits before the register, without"
                    + " tax",
                "tax.ties.step.billed"),
            invoiced(Billed::net));
        step(
            part,
            Wording.of("tips", "tax.ties.step.tips"),
            money(receipt -> receipt.kind() == PaymentKind.TIP));
      }
      step(
          part,
          Wording.of("less the income on the summary's lines", "tax.ties.step.onLines"),
          summary().negate());
      result(
          part,
          steps.subList(from, steps.size()).stream()
              .map(Step::amount)
              .reduce(unit.zero(), BigDecimal::add));
    }

    private BigDecimal money(Predicate<Receipt> which) {
      return figures.income().receipts().stream()
          .filter(which)
          .map(receipt -> unit.round(receipt.cash()))
          .reduce(unit.zero(), BigDecimal::add);
    }

    private BigDecimal tax() {
      return figures.income().items().stream()
          .map(item -> isTakenAway(item) ? item.tax().negate() : item.tax())
          .reduce(unit.zero(), BigDecimal::add);
    }

    private BigDecimal summary() {
      return figures.income().items().stream()
          .filter(item -> !item.code().equals("bad debts"))
          .map(item -> isTakenAway(item) ? item.net().negate() : item.net())
          .reduce(unit.zero(), BigDecimal::add);
    }

    /** Whether it stands as a positive amount on a line that is taken away. */
    private boolean isTakenAway(LineItem item) {
      Regime.Codes codes = figures.regime().codes();
      return codes.refundsApart() && item.code().equals(codes.refunds());
    }

    private void step(Wording part, Wording label, BigDecimal amount) {
      steps.add(new Step(part, label, amount, false));
    }

    private void result(Wording part, BigDecimal amount) {
      steps.add(
          new Step(
              part, Wording.of("left over", "tax.ties.step.leftOver"), unit.round(amount), true));
    }
  }

  /** What the bills hold for one row of the book; mutable while it is added up. */
  private static final class RowSum {
    private final String sheet;
    private final int row;
    private final LocalDate day;
    private final String owner;
    private BigDecimal billed = BigDecimal.ZERO;
    private BigDecimal billedInPeriod = BigDecimal.ZERO;
    private BigDecimal waiting = BigDecimal.ZERO;
    private BigDecimal difference = BigDecimal.ZERO;
    private boolean inPeriod;

    RowSum(BilledLine line, String owner) {
      this.sheet = line.sheet();
      this.row = line.row();
      this.day = line.day();
      this.owner = owner;
    }

    void add(Billed bill, BilledLine line, Period period) {
      if (!bill.isIncome()) {
        waiting = waiting.add(line.net());
        return;
      }
      billed = billed.add(line.net());
      if (period.holds(bill.date())) {
        billedInPeriod = billedInPeriod.add(line.net());
      }
    }

    /**
     * Sets the difference to the book for a visit of the period: billed and waiting less what the
     * book has now.
     */
    void compare(BookNets book, Period period) {
      inPeriod = isOf(period);
      if (inPeriod) {
        BigDecimal now = book.net(sheet, row).orElse(BigDecimal.ZERO);
        difference = billed.add(waiting).subtract(now);
      }
    }

    boolean isOf(Period period) {
      return period.holds(day);
    }

    /** What was invoiced in the period for visits of other periods, less the reverse. */
    BigDecimal moved() {
      return inPeriod ? billedInPeriod.subtract(billed) : billedInPeriod;
    }

    Left left(Wording why, BigDecimal amount) {
      return new Left(sheet, row, day, owner, why, amount);
    }
  }
}
