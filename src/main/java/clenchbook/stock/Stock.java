package clenchbook.stock;

import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Report;
import clenchbook.schedule.DueFindings;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A month's stock, order, gas and bar: start here. */
public final class Stock {

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
  private static final String CAUTION =
      "Expected stock is only as good as the book: what was never bought or counted in it is not"
          + " known to be there. Values are for planning; ask whoever does your accounts which"
          + " method your tax return must use.";

  private Stock() {}

  /**
   * Works out a month's stock.
   *
   * @param jobs the whole book
   * @param due the due list as at the month's last day, which says what bar the next month needs
   * @param month the month; later rows are not looked at
   */
  public static StockFindings of(Jobs jobs, DueFindings due, YearMonth month) {
    StockMonth stock = StockMonth.of(jobs, due.dates(), month);
    List<String> warnings = StockWarnings.of(stock);
    List<Block> blocks = new ArrayList<>(StockPages.full(stock, warnings));
    blocks.addAll(BarPages.of(stock));
    blocks.add(new Block.PageBreak());
    blocks.addAll(due.blocks());
    String business = stock.settings().text(Setting.BUSINESS_NAME);
    String subtitle = MONTH.format(month) + (business.isEmpty() ? "" : " · " + business);
    return new StockFindings(
        StockTables.of(stock),
        new Report("stock", "Stock, bar and the round", subtitle, CAUTION, blocks),
        StockPages.inShort(stock),
        warnings);
  }
}
