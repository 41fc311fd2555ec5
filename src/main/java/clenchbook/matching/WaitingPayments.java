package clenchbook.matching;

import clenchbook.book.Names;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.matching.bank.BankEntry;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Rows that a run of {@code payments} proposed and Payments does not hold yet.
 *
 * @param sure how many name their invoice
 * @param unsure how many are to be looked at
 * @param sum what they come to, refunds taken off
 * @param owners whose they are, as far as that is known, in order
 */
public record WaitingPayments(int sure, int unsure, BigDecimal sum, List<String> owners) {
  /** No row waits. */
  public static final WaitingPayments NONE = new WaitingPayments(0, 0, BigDecimal.ZERO, List.of());

  /** Copies its list. */
  public WaitingPayments {
    owners = List.copyOf(owners);
  }

  /**
   * A proposed row.
   *
   * @param date the day
   * @param owner the owner; may be empty
   * @param amount its size, not negative
   * @param invoice the invoice; may be empty
   * @param kind payment, deposit or refund
   * @param reference the Reference it bears
   * @param sure how sure, in per cent
   */
  public record Row(
      LocalDate date,
      String owner,
      BigDecimal amount,
      String invoice,
      PaymentKind kind,
      String reference,
      int sure) {

    private BankEntry entry() {
      BigDecimal moved = kind == PaymentKind.REFUND ? amount.negate() : amount;
      return new BankEntry(
          0,
          "",
          date,
          moved,
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          BankEntry.Standing.BOOKED,
          "",
          Message.NONE);
    }

    private AlreadyEntered.Identity identity() {
      return new AlreadyEntered.Identity(named(invoice), named(owner), reference);
    }

    private static Set<String> named(String name) {
      return name.isBlank() ? Set.of() : Set.of(Names.key(name));
    }
  }

  /**
   * Counts what is not entered yet, by the same evidence as that of a second run of {@code
   * payments}; the surest evidence takes its row of Payments first.
   *
   * @param rows the rows proposed
   * @param payments the rows of Payments
   * @return what is left
   */
  public static WaitingPayments of(List<Row> rows, List<Payment> payments) {
    AlreadyEntered already = new AlreadyEntered(payments);
    boolean[] entered = new boolean[rows.size()];
    for (int rank = 0; rank <= AlreadyEntered.LAST_RANK; rank++) {
      for (int at = 0; at < entered.length; at++) {
        BankEntry entry = rows.get(at).entry();
        boolean asked = !entered[at] && already.mayHold(entry);
        entered[at] |= asked && !already.take(entry, rows.get(at).identity(), rank).isEmpty();
      }
    }
    int sure = 0;
    int unsure = 0;
    BigDecimal sum = BigDecimal.ZERO;
    Set<String> owners = new TreeSet<>(Names.ORDER);
    for (int at = 0; at < entered.length; at++) {
      Row row = rows.get(at);
      if (!entered[at]) {
        boolean isSure = row.sure() >= Proposal.SURE_ENOUGH;
        sure += isSure ? 1 : 0;
        unsure += isSure ? 0 : 1;
        sum = sum.add(row.entry().amount());
        if (!row.owner().isBlank()) {
          owners.add(row.owner());
        }
      }
    }
    return new WaitingPayments(sure, unsure, sum, List.copyOf(owners));
  }

  /**
   * How many rows wait.
   *
   * @return sure and unsure ones
   */
  public int count() {
    return sure + unsure;
  }
}
