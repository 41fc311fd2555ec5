package clenchbook.tax;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Quarters;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** What every regime shows beside its lines: tax on sales by rate, and the lines by quarter. */
final class TaxTables {
  private static final String NOT_DIVIDED = "not divided";

  private final YearFigures figures;

  TaxTables(YearFigures figures) {
    this.figures = figures;
  }

  /** Sales by rate, then the lines by quarter. */
  List<TaxTable> all(List<SummaryLine> summary, Quarters quarters) {
    return List.of(
        TaxTable.asIs(Message.of("tax.salesByRate"), salesTax()).said("part", TaxTables::part),
        new QuarterTable(figures, quarters).of(summary));
  }

  /**
   * Sales by quarter of the year, tax code and rate, goods and services apart, by the date of the
   * bill.
   */
  FigureTable salesTax() {
    TreeMap<String, Sum> sums = new TreeMap<>();
    for (Billed bill : figures.billed()) {
      if (bill.isIncome() && figures.period().holds(bill.date())) {
        bill.lines().forEach(line -> add(sums, bill.date(), line));
      }
    }
    List<List<String>> rows = sums.values().stream().map(Sum::row).toList();
    return new FigureTable(
        "sales-tax", List.of("period", "tax_code", "rate", "part", "net", "tax"), rows);
  }

  private void add(TreeMap<String, Sum> sums, LocalDate date, BilledLine line) {
    String quarter = figures.input().taxYear().label() + " Q" + quarterOf(date);
    String rate =
        line.taxCode().isEmpty() ? "" : line.ratePercent().stripTrailingZeros().toPlainString();
    String part = line.part().isEmpty() ? NOT_DIVIDED : line.part();
    String key = String.join("\n", quarter, line.taxCode(), rate, part);
    sums.computeIfAbsent(
            key,
            unused -> new Sum(List.of(quarter, line.taxCode(), rate, part), figures.unit().zero()))
        .add(line);
  }

  /** What paper says of goods, services and what is not divided. */
  private static Message part(String word) {
    return switch (word) {
      case "goods" -> Message.of("tax.part.goods");
      case "services" -> Message.of("tax.part.services");
      case NOT_DIVIDED -> Message.of("tax.part.notDivided");
      default -> Message.literal(word);
    };
  }

  private int quarterOf(LocalDate date) {
    for (int quarter = 1; quarter < 4; quarter++) {
      if (!date.isAfter(figures.input().taxYear().quarter(quarter).last())) {
        return quarter;
      }
    }
    return 4;
  }

  /** One row of the sales tax; mutable while it is added up. */
  private static final class Sum {
    private final List<String> key;
    private BigDecimal net;
    private BigDecimal tax;

    Sum(List<String> key, BigDecimal zero) {
      this.key = key;
      this.net = zero;
      this.tax = zero;
    }

    void add(BilledLine line) {
      net = net.add(line.net());
      tax = tax.add(line.tax());
    }

    List<String> row() {
      List<String> row = new ArrayList<>(key);
      row.add(net.toPlainString());
      row.add(tax.toPlainString());
      return row;
    }
  }
}
