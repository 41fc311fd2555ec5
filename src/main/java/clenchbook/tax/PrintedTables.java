package clenchbook.tax;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.jurisdiction.TaxTable;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Files' tables as they are printed: headings in words, numbers to the right, long ones turned on
 * their side.
 */
final class PrintedTables {
  private static final List<String> NAMES = List.of("Box", "Line", "Instalment", "Row");
  private static final int NARROW = 5;
  private static final int WIDE = 28;

  private PrintedTables() {}

  static Block.Table of(TaxTable table) {
    return switch (table.shape()) {
      case BY_QUARTER -> byQuarter(table.table());
      case BY_PERIOD -> byPeriod(table.table(), table.boxes());
      case AS_IS -> of(table.table());
    };
  }

  static Block.Table of(FigureTable table) {
    List<Block.Column> columns =
        IntStream.range(0, table.columns().size()).mapToObj(at -> column(table, at)).toList();
    return new Block.Table("", columns, table.rows().stream().map(PrintedTables::row).toList());
  }

  private static Block.Column column(FigureTable table, int at) {
    String header = sentence(table.columns().get(at));
    List<String> cells = table.rows().stream().map(row -> row.get(at)).toList();
    int longest = cells.stream().mapToInt(String::length).max().orElse(0);
    int weight = Math.min(Math.max(Math.max(longest, header.length()), NARROW), WIDE);
    boolean number = !NAMES.contains(header) && cells.stream().allMatch(PrintedTables::isNumber);
    return new Block.Column(header, number, weight);
  }

  private static Block.Row row(List<String> cells) {
    return new Block.Row(cells.stream().map(Block.Cell::of).toList(), false);
  }

  private static String sentence(String column) {
    String words = column.replace('_', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static boolean isNumber(String text) {
    return text.isEmpty() || text.matches("-?\\d+(\\.\\d+)?");
  }

  /** One row a line, one column a quarter. */
  private static Block.Table byQuarter(FigureTable table) {
    TreeSet<String> quarters = new TreeSet<>(table.rows().stream().map(row -> row.get(0)).toList());
    List<Block.Column> columns =
        new ArrayList<>(List.of(Block.Column.words("Line", 3), Block.Column.words("Name", 10)));
    quarters.forEach(quarter -> columns.add(Block.Column.number(heading(table, quarter), 4)));
    List<Block.Row> rows =
        table.rows().stream()
            .map(row -> row.get(4))
            .distinct()
            .map(line -> line(table, line, quarters))
            .toList();
    return new Block.Table("", columns, rows);
  }

  private static String heading(FigureTable table, String quarter) {
    List<String> first =
        table.rows().stream().filter(row -> row.get(0).equals(quarter)).findFirst().orElseThrow();
    String due = first.get(3).isEmpty() ? "" : ", due " + first.get(3);
    return "To " + first.get(2) + due;
  }

  private static Block.Row line(FigureTable table, String line, TreeSet<String> quarters) {
    List<List<String>> ofLine =
        table.rows().stream().filter(row -> row.get(4).equals(line)).toList();
    List<String> cells = new ArrayList<>(List.of(line, ofLine.get(0).get(5)));
    for (String quarter : quarters) {
      cells.add(
          ofLine.stream()
              .filter(row -> row.get(0).equals(quarter))
              .map(row -> row.get(6))
              .findFirst()
              .orElse(""));
    }
    return row(cells);
  }

  /** One row a period and scheme, one column a box. */
  private static Block.Table byPeriod(FigureTable table, List<String> boxes) {
    List<Block.Column> columns =
        new ArrayList<>(List.of(Block.Column.words("To", 4), Block.Column.words("Scheme", 9)));
    boxes.forEach(box -> columns.add(Block.Column.number("Box " + box, 4)));
    List<Block.Row> rows = new ArrayList<>();
    for (List<String> key :
        table.rows().stream().map(row -> row.subList(1, 3)).distinct().toList()) {
      List<String> cells = new ArrayList<>(key);
      boxes.forEach(box -> cells.add(box(table, key, box)));
      rows.add(row(cells));
    }
    return new Block.Table("", columns, rows);
  }

  private static String box(FigureTable table, List<String> key, String box) {
    return table.rows().stream()
        .filter(row -> row.subList(1, 3).equals(key) && row.get(3).equals(box))
        .map(row -> row.get(5))
        .findFirst()
        .orElse("");
  }
}
