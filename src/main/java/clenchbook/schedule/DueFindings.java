package clenchbook.schedule;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.Report;
import clenchbook.schedule.due.DueDates;
import java.util.List;

/**
 * All that the due list says at a month's end.
 *
 * @param dates the next date of every horse; also answers each horse's date for its invoice
 * @param tables {@code due}, {@code horses}, {@code due-summary}, {@code due-weeks}, {@code rounds}
 * @param calendar the text of {@code due.ics}
 * @param next the next weeks and rounds, as a part of a report
 * @param full the due list in full, for an annex
 * @param pageBlocks the due list in short, for the month's page
 * @param horseSheet who is overdue, and what each horse had on last time, to print and take along
 */
public record DueFindings(
    DueDates dates,
    List<FigureTable> tables,
    String calendar,
    List<Block> next,
    List<Block> full,
    List<Block> pageBlocks,
    Report horseSheet) {

  /** Copies the lists. */
  public DueFindings {
    tables = List.copyOf(tables);
    next = List.copyOf(next);
    full = List.copyOf(full);
    pageBlocks = List.copyOf(pageBlocks);
  }
}
