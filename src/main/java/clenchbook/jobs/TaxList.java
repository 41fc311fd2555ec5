package clenchbook.jobs;

import clenchbook.book.Names;
import clenchbook.book.TaxRate;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The Tax sheet by code and date. */
public final class TaxList {
  private final DatedRows<String, TaxRate> rows;
  private final List<String> codes;

  /**
   * Indexes the Tax sheet.
   *
   * @param rates its rows, in row order
   */
  public TaxList(List<TaxRate> rates) {
    rows = new DatedRows<>(rates, rate -> Names.key(rate.code()), TaxRate::from);
    codes = rates.stream().map(TaxRate::code).distinct().sorted(Names.ORDER).toList();
  }

  /**
   * The rate in force.
   *
   * @param code the code
   * @param day the day of the visit
   * @return the newest rate from on or before the day; empty for an unknown or empty code
   */
  public Optional<TaxRate> find(String code, LocalDate day) {
    return rows.find(Names.key(code), day);
  }

  /**
   * Whether any row has this code.
   *
   * @param code the code
   * @return true when known
   */
  public boolean knows(String code) {
    return rows.knows(Names.key(code));
  }

  /**
   * All codes.
   *
   * @return in order
   */
  public List<String> codes() {
    return codes;
  }

  /**
   * Rows that override another of the same code and date.
   *
   * @return in row order
   */
  public List<TaxRate> overriding() {
    return rows.overriding();
  }
}
