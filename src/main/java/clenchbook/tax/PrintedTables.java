package clenchbook.tax;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.page.PageWords;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Files' tables as they are printed in one language: headings in words, numbers to the right, long
 * ones turned on their side.
 */
final class PrintedTables {
  private static final List<String> NAMES =
      List.of("box", "line", "instalment", "row", "class", "province", "year");
  private static final int NARROW = 5;
  private static final int WIDE = 28;

  private final PageWords words;

  PrintedTables(PageWords words) {
    this.words = words;
  }

  /** A table of a regime, turned as it asks. */
  Block.Table of(TaxTable table) {
    return switch (table.shape()) {
      case BY_QUARTER -> byQuarter(table.table());
      case BY_PERIOD -> byPeriod(table.table(), table.boxes());
      case AS_IS -> of(table.table(), table.left());
    };
  }

  /** A table as it is. */
  Block.Table of(FigureTable table) {
    return of(table, List.of());
  }

  private Block.Table of(FigureTable table, List<String> left) {
    List<Integer> kept =
        IntStream.range(0, table.columns().size())
            .filter(at -> !left.contains(table.columns().get(at)))
            .boxed()
            .toList();
    List<Block.Column> columns = kept.stream().map(at -> column(table, at)).toList();
    List<Block.Row> rows =
        table.rows().stream()
            .map(row -> row(kept.stream().map(at -> cell(table, at, row.get(at))).toList()))
            .toList();
    return new Block.Table("", columns, rows);
  }

  private String cell(FigureTable table, int at, String cell) {
    return isNumeric(table, at) ? words.inColumn(cell) : words.say(cell);
  }

  private static boolean isNumeric(FigureTable table, int at) {
    return !NAMES.contains(table.columns().get(at))
        && table.rows().stream().allMatch(row -> isNumber(row.get(at)));
  }

  private Block.Column column(FigureTable table, int at) {
    String name = table.columns().get(at);
    String header = words.say(sentence(name));
    List<String> cells = table.rows().stream().map(row -> words.say(row.get(at))).toList();
    int longest = cells.stream().mapToInt(String::length).max().orElse(0);
    int weight = Math.min(Math.max(Math.max(longest, longestWord(header)), NARROW), WIDE);
    return new Block.Column(header, isNumeric(table, at), weight);
  }

  private static int longestWord(String header) {
    return List.of(header.split(" ")).stream().mapToInt(String::length).max().orElse(0);
  }

  private static Block.Row row(List<String> cells) {
    return new Block.Row(cells.stream().map(Block.Cell::of).toList(), false);
  }

  private static String sentence(String column) {
    String text = column.replace('_', ' ');
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private static boolean isNumber(String text) {
    return text.isEmpty() || text.matches("-?\\d+(\\.\\d+)?");
  }

  /** One row a line, one column a quarter. */
  private Block.Table byQuarter(FigureTable table) {
    TreeSet<String> quarters = new TreeSet<>(table.rows().stream().map(row -> row.get(0)).toList());
    List<Block.Column> columns =
        new ArrayList<>(
            List.of(
                Block.Column.words(words.say("Line"), 3),
                Block.Column.words(words.say("Name"), 10)));
    quarters.forEach(quarter -> columns.add(Block.Column.number(heading(table, quarter), 4)));
    List<Block.Row> rows =
        table.rows().stream()
            .map(row -> row.get(4))
            .distinct()
            .map(line -> line(table, line, quarters))
            .toList();
    return new Block.Table("", columns, rows);
  }

  private String heading(FigureTable table, String quarter) {
    List<String> first =
        table.rows().stream().filter(row -> row.get(0).equals(quarter)).findFirst().orElseThrow();
    String due = first.get(3).isEmpty() ? "" : ", " + words.say("due") + " " + first.get(3);
    return words.say("To") + " " + first.get(2) + due;
  }

  private Block.Row line(FigureTable table, String line, TreeSet<String> quarters) {
    List<List<String>> ofLine =
        table.rows().stream().filter(row -> row.get(4).equals(line)).toList();
    List<Block.Cell> cells = new ArrayList<>();
    cells.add(Block.Cell.of(line));
    cells.add(Block.Cell.of(words.say(ofLine.get(0).get(5))));
    for (String quarter : quarters) {
      String amount =
          ofLine.stream()
              .filter(row -> row.get(0).equals(quarter))
              .map(row -> row.get(6))
              .findFirst()
              .orElse("");
      cells.add(Block.Cell.of(words.inColumn(amount)));
    }
    return new Block.Row(cells, false);
  }

  /** One row a period and scheme, one column a box. */
  private Block.Table byPeriod(FigureTable table, List<String> boxes) {
    List<Block.Column> columns =
        new ArrayList<>(
            List.of(
                Block.Column.words(words.say("To"), 4),
                Block.Column.words(words.say("Scheme"), 13)));
    boxes.forEach(box -> columns.add(Block.Column.number(words.say("Box") + " " + box, 4)));
    List<Block.Row> rows = new ArrayList<>();
    for (List<String> key :
        table.rows().stream().map(row -> row.subList(1, 3)).distinct().toList()) {
      List<String> cells = new ArrayList<>(key.stream().map(words::say).toList());
      boxes.forEach(box -> cells.add(words.inColumn(box(table, key, box))));
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
