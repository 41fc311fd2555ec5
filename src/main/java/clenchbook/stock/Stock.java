package clenchbook.stock;

import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import clenchbook.schedule.DueFindings;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A month's stock, order, gas and bar: start here. */
public final class Stock {

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
    FigureText text = FigureText.of(stock.settings());
    StockPages pages = new StockPages(stock, text);
    List<String> warnings = StockWarnings.of(stock, text);
    List<Block> evidence = new ArrayList<>(pages.evidence());
    evidence.addAll(due.next());
    evidence.addAll(BarPages.of(stock, text));
    List<Block> annex = new ArrayList<>(pages.annex());
    annex.addAll(due.full());
    String business = stock.settings().text(Setting.BUSINESS_NAME);
    return new StockFindings(
        StockTables.of(stock),
        new Report(
            "stock",
            text.say("stock.title"),
            text.say("stock.title"),
            text.month(month) + (business.isEmpty() ? "" : " · " + business),
            text.say("stock.caution"),
            Optional.of(new StockAnswer(stock, text).page(warnings)),
            evidence,
            annex,
            text.texts()),
        pages.inShort(),
        warnings);
  }
}
