package clenchbook.tax.billed;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * Something billed to one owner: an invoice or credit note of the register, or a visit that no
 * invoice bears.
 *
 * @param standing what it is
 * @param number the invoice's number; empty for a visit that no invoice bears
 * @param date the invoice's date, or the visit's
 * @param owner who is billed
 * @param lines what it bears, at least one; amounts of a credit note are negative
 */
public record Billed(
    Standing standing, String number, LocalDate date, String owner, List<BilledLine> lines) {
  static final Comparator<Billed> OLDEST_FIRST =
      Comparator.comparing(Billed::date).thenComparing(Billed::number).thenComparing(Billed::owner);

  /** What was billed. */
  public enum Standing {
    /** An invoice of the register. */
    INVOICE,
    /** A credit note of the register. */
    CREDIT_NOTE,
    /** A visit from before the register begins. */
    BEFORE_REGISTER,
    /** A visit that an invoice should bear by now, but none does. */
    ON_NO_INVOICE
  }

  /** Copies its list. */
  public Billed {
    lines = List.copyOf(lines);
  }

  public boolean isOfRegister() {
    return standing == Standing.INVOICE || standing == Standing.CREDIT_NOTE;
  }

  /**
   * Whether it counts as invoiced income: everything but a visit that still waits for its invoice.
   */
  public boolean isIncome() {
    return standing != Standing.ON_NO_INVOICE;
  }

  /** The sum of its lines without tax. */
  public BigDecimal net() {
    return lines.stream().map(BilledLine::net).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The sum of its lines' tax. */
  public BigDecimal tax() {
    return lines.stream().map(BilledLine::tax).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What it asks for in all. */
  public BigDecimal gross() {
    return net().add(tax());
  }

  /** Whether one of its lines is that row of the book. */
  public boolean bears(String sheet, int row) {
    return lines.stream().anyMatch(line -> line.row() == row && line.sheet().equals(sheet));
  }
}
