package clenchbook.tax.income;

import clenchbook.billing.TruckMoney;
import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.book.SourceRow;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.tax.year.YearEndInput;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Money that came in or went back, or was given up: a row of Payments, or what a visit's row says
 * was taken at the truck.
 *
 * @param source the row
 * @param date the day
 * @param owner whose
 * @param kind what it is
 * @param amount how much; never negative
 * @param invoice the invoice it names; empty for the oldest
 * @param atTruck whether it stands in a visit's row
 */
public record Receipt(
    SourceRow source,
    LocalDate date,
    String owner,
    PaymentKind kind,
    BigDecimal amount,
    String invoice,
    boolean atTruck) {
  private static final Comparator<Receipt> ORDER =
      Comparator.comparing(Receipt::date).thenComparing(Receipt::source);

  /** Every receipt of the book, whatever the year, oldest first. */
  static List<Receipt> all(YearEndInput input) {
    Stream<Receipt> typed =
        input.book().payments().stream().map(payment -> of(payment, input.jobs()));
    TruckMoney money = TruckMoney.of(input.jobs(), input.register());
    Stream<Receipt> truck = input.jobs().all().stream().flatMap(job -> atTruck(job, money));
    return Stream.concat(typed, truck).sorted(ORDER).toList();
  }

  private static Receipt of(Payment payment, Jobs jobs) {
    return new Receipt(
        payment.source(),
        payment.date(),
        jobs.index().ownerName(payment.owner()),
        payment.kind(),
        payment.amount(),
        payment.invoice(),
        false);
  }

  /** One for each whose money it is. */
  private static Stream<Receipt> atTruck(Job job, TruckMoney money) {
    return money.of(job).entrySet().stream()
        .filter(share -> share.getValue().signum() != 0)
        .map(
            share ->
                new Receipt(
                    job.visit().source(),
                    job.date(),
                    share.getKey(),
                    PaymentKind.PAYMENT,
                    share.getValue(),
                    "",
                    true));
  }

  /** What it adds to the money received: nothing for what was given up, less for what went back. */
  public BigDecimal cash() {
    return switch (kind) {
      case PAYMENT, DEPOSIT, TIP -> amount;
      case REFUND -> amount.negate();
      case WRITTEN_OFF -> BigDecimal.ZERO;
    };
  }

  /** What it takes off the owner's balance; a tip takes nothing. */
  public BigDecimal offBalance() {
    return switch (kind) {
      case PAYMENT, DEPOSIT, WRITTEN_OFF -> amount;
      case REFUND -> amount.negate();
      case TIP -> BigDecimal.ZERO;
    };
  }

  /** What to call it in a description. */
  String word() {
    return atTruck ? "paid at the truck" : kind.word();
  }
}
