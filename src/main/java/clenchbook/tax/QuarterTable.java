package clenchbook.tax;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Quarters;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.year.TaxYear;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Each line of rows by quarter, each quarter by itself or from the year's first day on; mutable
 * while the table is made.
 */
final class QuarterTable {
  private final YearFigures figures;
  private final Quarters quarters;
  private final List<List<String>> rows = new ArrayList<>();
  private final List<Message> numbers = new ArrayList<>();
  private final List<Message> names = new ArrayList<>();

  QuarterTable(YearFigures figures, Quarters quarters) {
    this.figures = figures;
    this.quarters = quarters;
  }

  TaxTable of(List<SummaryLine> summary) {
    TaxYear year = figures.input().taxYear();
    for (int quarter = 1; quarter <= 4; quarter++) {
      Period period = quarters.cumulative() ? year.toEndOfQuarter(quarter) : year.quarter(quarter);
      if (figures.wholeYear() || figures.period().holds(year.quarter(quarter).last())) {
        addQuarter(quarter, period, summary);
      }
    }
    TaxTable table =
        TaxTable.byQuarter(
                quarters.title(),
                new FigureTable(
                    quarters.table(),
                    List.of("quarter", "from", "to", "due", "line", "name", "amount"),
                    rows))
            .said("line", numbers)
            .said("name", names);
    return numbers.stream().allMatch(Message::isEmpty) ? table.without("line") : table;
  }

  private void addQuarter(int quarter, Period period, List<SummaryLine> summary) {
    for (SummaryLine line : summary) {
      if (line.kind() != SummaryLine.Kind.ROWS && line.kind() != SummaryLine.Kind.COST) {
        continue;
      }
      BigDecimal amount =
          figures.unit().zero().add(LineItem.sum(LineItem.within(period, line.items())));
      numbers.add(line.head().number().said());
      names.add(line.head().named().said());
      rows.add(
          Quarters.row(
              quarter,
              period,
              quarters.due().get(quarter - 1),
              List.of(line.head().line(), line.head().name(), amount.toPlainString())));
    }
  }
}
