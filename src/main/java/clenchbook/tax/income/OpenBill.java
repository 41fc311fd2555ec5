package clenchbook.tax.income;

import clenchbook.book.Names;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * What a bill asks for work of one tax year, while it is being paid. A bill whose work lies in two
 * tax years is two of these, so that money of the first year pays no work of the second.
 */
final class OpenBill {
  private final Billed bill;
  private final List<BilledLine> lines;
  private final int year;
  private final MinorUnit unit;
  private BigDecimal gross;
  private BigDecimal tax;
  private final Shares shares;
  private BigDecimal received = BigDecimal.ZERO;

  private OpenBill(Billed bill, List<BilledLine> lines, int year, MinorUnit unit) {
    this.bill = bill;
    this.lines = lines;
    this.year = year;
    this.unit = unit;
    this.shares = Shares.of(bill, lines, unit);
    this.tax = lines.stream().map(BilledLine::tax).reduce(BigDecimal.ZERO, BigDecimal::add);
    this.gross =
        lines.stream().map(BilledLine::net).reduce(BigDecimal.ZERO, BigDecimal::add).add(tax);
  }

  /** A bill by the tax years of its work; whole where a part alone would ask for nothing. */
  static List<OpenBill> of(Billed bill, ToIntFunction<LocalDate> years, MinorUnit unit) {
    TreeMap<Integer, List<BilledLine>> byYear = new TreeMap<>();
    bill.lines()
        .forEach(
            line ->
                byYear
                    .computeIfAbsent(
                        years.applyAsInt(earlier(line.day(), bill.date())),
                        unused -> new ArrayList<>())
                    .add(line));
    List<OpenBill> parts = new ArrayList<>();
    byYear.forEach((year, lines) -> parts.add(new OpenBill(bill, lines, year, unit)));
    return parts.stream().allMatch(part -> part.gross.signum() > 0)
        ? parts
        : List.of(new OpenBill(bill, bill.lines(), byYear.lastKey(), unit));
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  /** The tax year of its work. */
  int year() {
    return year;
  }

  /** The last day of its work. */
  LocalDate day() {
    return lines.stream().map(BilledLine::day).max(LocalDate::compareTo).orElse(bill.date());
  }

  /** Whether the receipt names its invoice, or stands in the row of its visit. */
  boolean isNamedBy(Receipt receipt) {
    if (receipt.atTruck()) {
      return lines.stream()
          .anyMatch(
              line ->
                  line.row() == receipt.source().row()
                      && line.sheet().equals(receipt.source().sheet()));
    }
    return !receipt.invoice().isEmpty() && Names.same(receipt.invoice(), bill.number());
  }

  /** What is still open. */
  BigDecimal left() {
    return gross.subtract(received);
  }

  /** What was received so far. */
  BigDecimal received() {
    return received;
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
    return taken.max(BigDecimal.ZERO);
  }

  /** Receives (or gives back, below zero) and returns what each tax code's work took of it. */
  List<SoldShare> receive(BigDecimal amount) {
    if (amount.signum() == 0) {
      return List.of();
    }
    received = received.add(amount);
    BigDecimal due = unit.round(tax.multiply(received).divide(gross, MathContext.DECIMAL128));
    return shares.upTo(received.subtract(due), due);
  }
}
