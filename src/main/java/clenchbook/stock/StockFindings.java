package clenchbook.stock;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import java.util.List;

/**
 * All that a month's stock comes to.
 *
 * @param tables {@code stock}, {@code stock-value}, {@code stock-summary}, {@code order}, {@code
 *     order-suppliers}, {@code gas}, {@code bar-needs}, {@code cutting-plan}
 * @param report {@code stock.pdf}: what to order, what was missing, what it cost, gas, bar, and the
 *     due list behind them
 * @param pageBlocks the same in short, for the month's page
 * @param warnings what the farrier should look at, one sentence each; also in the report
 */
public record StockFindings(
    List<FigureTable> tables, Report report, List<Block> pageBlocks, List<String> warnings) {

  /** Copies the lists. */
  public StockFindings {
    tables = List.copyOf(tables);
    pageBlocks = List.copyOf(pageBlocks);
    warnings = List.copyOf(warnings);
  }
}
