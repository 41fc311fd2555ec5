package clenchbook.tax;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  /** A table turned as it asks. */
  Block.Table of(TaxTable table) {
    Printed printed = new Printed(table, words);
    return switch (table.shape()) {
      case BY_QUARTER -> byQuarter(printed);
      case BY_PERIOD -> byPeriod(printed, table.boxes());
      case AS_IS -> asIs(printed);
    };
  }

  /** A table with what paper says of it. */
  private record Printed(TaxTable tax, PageWords words) {
    FigureTable file() {
      return tax.table();
    }

    int rows() {
      return file().rows().size();
    }

    /** Whether paper has a column of the file. */
    boolean shows(String column) {
      return !tax.paper().left().contains(column);
    }

    /** What the file says under a column. */
    String cell(int row, String column) {
      return file().rows().get(row).get(file().columns().indexOf(column));
    }

    /** The same on paper. */
    String said(int row, String column) {
      return Optional.ofNullable(tax.paper().cells().get(column))
          .map(cells -> words.say(cells.get(row)))
          .orElseGet(() -> cell(row, column));
    }

    /** The heading of a column on paper; its name in the file where nobody has given it one. */
    String heading(String column) {
      return Optional.ofNullable(tax.paper().heads().get(column))
          .or(() -> ColumnHeads.find(column))
          .map(words::say)
          .orElseGet(() -> sentence(column));
    }

    private static String sentence(String column) {
      String text = column.replace('_', ' ');
      return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    boolean isNumeric(String column) {
      return !NAMES.contains(column)
          && IntStream.range(0, rows()).allMatch(row -> isNumberOrBlank(cell(row, column)));
    }

    private static boolean isNumberOrBlank(String text) {
      return text.isEmpty() || PageWords.isNumber(text);
    }
  }

  private Block.Table asIs(Printed printed) {
    List<String> kept = printed.file().columns().stream().filter(printed::shows).toList();
    List<Block.Column> columns = kept.stream().map(column -> column(printed, column)).toList();
    List<Block.Row> rows = new ArrayList<>();
    for (int row = 0; row < printed.rows(); row++) {
      int at = row;
      rows.add(row(kept.stream().map(column -> cell(printed, at, column)).toList()));
    }
    return new Block.Table("", columns, rows);
  }

  private String cell(Printed printed, int row, String column) {
    String said = printed.said(row, column);
    return printed.isNumeric(column) ? words.cell(said) : words.text(said);
  }

  private Block.Column column(Printed printed, String name) {
    String header = printed.heading(name);
    int longest =
        IntStream.range(0, printed.rows())
            .map(row -> words.text(printed.said(row, name)).length())
            .max()
            .orElse(0);
    int weight = Math.min(Math.max(Math.max(longest, longestWord(header)), NARROW), WIDE);
    return new Block.Column(header, printed.isNumeric(name), weight);
  }

  private static int longestWord(String header) {
    return List.of(header.split(" ")).stream().mapToInt(String::length).max().orElse(0);
  }

  private static Block.Row row(List<String> cells) {
    return new Block.Row(cells.stream().map(Block.Cell::of).toList(), false);
  }

  /** One row a line, one column a quarter. */
  private Block.Table byQuarter(Printed printed) {
    String line = printed.file().columns().get(4);
    TreeSet<String> quarters = new TreeSet<>();
    List<Integer> firsts = new ArrayList<>();
    TreeSet<String> seen = new TreeSet<>();
    for (int row = 0; row < printed.rows(); row++) {
      quarters.add(printed.cell(row, "quarter"));
      if (seen.add(printed.cell(row, line))) {
        firsts.add(row);
      }
    }
    List<Block.Column> columns = new ArrayList<>();
    if (printed.shows(line)) {
      columns.add(Block.Column.words(words.say("tax.column.line"), 3));
    }
    columns.add(Block.Column.words(words.say("tax.column.name"), 10));
    quarters.forEach(quarter -> columns.add(Block.Column.number(heading(printed, quarter), 4)));
    List<Block.Row> rows =
        firsts.stream().map(first -> line(printed, line, first, quarters)).toList();
    return new Block.Table("", columns, rows);
  }

  private String heading(Printed printed, String quarter) {
    int first = find(printed, "quarter", quarter, 0).orElseThrow();
    String to = printed.cell(first, "to");
    String due = printed.cell(first, "due");
    return words.say(
        due.isEmpty()
            ? Message.of("tax.quarter.to", to)
            : Message.of("tax.quarter.toDue", to, due));
  }

  private static Optional<Integer> find(Printed printed, String column, String cell, int from) {
    return IntStream.range(from, printed.rows())
        .filter(row -> printed.cell(row, column).equals(cell))
        .boxed()
        .findFirst();
  }

  private Block.Row line(Printed printed, String column, int first, TreeSet<String> quarters) {
    List<String> cells = new ArrayList<>();
    if (printed.shows(column)) {
      cells.add(printed.said(first, column));
    }
    cells.add(printed.said(first, "name"));
    for (String quarter : quarters) {
      String amount =
          IntStream.range(0, printed.rows())
              .filter(row -> printed.cell(row, column).equals(printed.cell(first, column)))
              .filter(row -> printed.cell(row, "quarter").equals(quarter))
              .mapToObj(row -> printed.cell(row, "amount"))
              .findFirst()
              .orElse("");
      cells.add(words.cell(amount));
    }
    return row(cells);
  }

  /** One row a period and scheme, one column a box. */
  private Block.Table byPeriod(Printed printed, List<String> boxes) {
    List<Block.Column> columns =
        new ArrayList<>(
            List.of(
                Block.Column.words(words.say("tax.column.to"), 4),
                Block.Column.words(words.say("tax.column.scheme"), 13)));
    boxes.forEach(box -> columns.add(Block.Column.number(words.say("tax.column.boxOf", box), 4)));
    List<Block.Row> rows = new ArrayList<>();
    List<List<String>> seen = new ArrayList<>();
    for (int row = 0; row < printed.rows(); row++) {
      List<String> key = key(printed, row);
      if (!seen.contains(key)) {
        seen.add(key);
        List<String> cells = new ArrayList<>();
        cells.add(printed.said(row, "to"));
        cells.add(printed.said(row, "scheme"));
        boxes.forEach(box -> cells.add(words.cell(box(printed, key, box))));
        rows.add(row(cells));
      }
    }
    return new Block.Table("", columns, rows);
  }

  private static List<String> key(Printed printed, int row) {
    return List.of(printed.cell(row, "to"), printed.cell(row, "scheme"));
  }

  private static String box(Printed printed, List<String> key, String box) {
    return IntStream.range(0, printed.rows())
        .filter(row -> key(printed, row).equals(key) && printed.cell(row, "box").equals(box))
        .mapToObj(row -> printed.cell(row, "amount"))
        .findFirst()
        .orElse("");
  }
}
