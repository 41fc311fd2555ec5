package clenchbook.tax.income;

import clenchbook.tax.billed.Billed;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.year.TaxBasis;
import clenchbook.tax.year.YearEndInput;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.util.List;
import java.util.TreeMap;

/**
 * The income of a period, row by row.
 *
 * @param items the rows that count, on the regime's income lines
 * @param parts of them, the same rows by what they are, to show beside the line
 * @param journal their entries
 * @param writtenOff what was given up in the period, gross
 * @param receipts every receipt of the period
 * @param sales what was sold, by tax code: by the money received on the cash basis, else by the
 *     bill; money that pays no bill is none
 */
public record Income(
    List<LineItem> items,
    TreeMap<IncomePart, List<LineItem>> parts,
    List<JournalEntry> journal,
    BigDecimal writtenOff,
    List<Receipt> receipts,
    List<Sale> sales) {

  /**
   * Work sold at one tax code.
   *
   * @param sold the work
   * @param item the row behind it; its {@code net} is without tax
   */
  public record Sale(Sold sold, LineItem item) {}

  /**
   * The income of a period.
   *
   * @param input what the year's end is made from
   * @param billed everything billed, of any date
   * @param period the days
   * @param basis by the money or by the bill
   * @param lines the regime's lines in force
   * @param onto on which of them income counts
   */
  public static Income of(
      YearEndInput input,
      List<Billed> billed,
      Period period,
      TaxBasis basis,
      LineScheme lines,
      IncomeLines onto) {
    return new IncomeCount(input, billed, period, basis, lines, onto).income();
  }
}
