package clenchbook.writing;

import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.texts.Texts;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Writes the book's copy with each problem cell coloured and noted, behind a first sheet that lists
 * the problems with links to their cells. The copy holds the values and number formats of every
 * sheet, whatever format the book has; formulas are copied as their results.
 */
public final class MarkedCopyWriter {
  private static final int PROBLEM_WIDTH = 60;
  private static final int EXPECTED_WIDTH = 44;
  private static final int MOST_LISTED = 60_000;
  private static final int ROWS_FOR_WIDTHS = 200;
  private static final int WIDEST = 40;
  private static final BigDecimal SECONDS_A_DAY = BigDecimal.valueOf(86_400);
  private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 30);

  private final TableSource source;
  private final Map<String, TreeMap<Integer, TreeMap<Integer, List<Problem>>>> bySheet =
      new HashMap<>();
  private final List<Problem> problems;
  private final Texts texts;

  private MarkedCopyWriter(TableSource source, List<Problem> problems, Texts texts) {
    this.texts = texts;
    this.source = source;
    this.problems = problems;
    for (Problem problem : problems) {
      if (!problem.at().cell().isEmpty()) {
        bySheet
            .computeIfAbsent(problem.at().sheet(), unused -> new TreeMap<>())
            .computeIfAbsent(problem.at().row(), unused -> new TreeMap<>())
            .computeIfAbsent(problem.at().columnIndex(), unused -> new ArrayList<>())
            .add(problem);
      }
    }
  }

  /**
   * Writes the marked copy; the same book and problems give the same bytes.
   *
   * @param book the farrier's workbook, read once more
   * @param password for an encrypted one; the copy itself is not encrypted
   * @param problems in the order in which they are listed
   * @param texts the farrier's language
   * @param out takes the copy; not closed
   * @throws IOException when the book can't be read or the copy not be written
   */
  public static void write(
      Path book, Optional<String> password, List<Problem> problems, Texts texts, OutputStream out)
      throws IOException {
    try (TableSource source = TableFile.open(book, password);
        XlsxOutput output = new XlsxOutput(out)) {
      new MarkedCopyWriter(source, problems, texts).write(output);
    }
  }

  private void write(XlsxOutput output) throws IOException {
    List<String> names = source.sheetNames();
    Map<String, String> written = new HashMap<>();
    List<String> free = new ArrayList<>();
    NameTaker taker = new NameTaker();
    String list = taker.take(output, listName(names));
    for (String name : names) {
      String own = taker.take(output, name);
      free.add(own);
      written.putIfAbsent(name, own);
    }
    output.addSheet(list, listHead(), sheet -> writeList(sheet, written));
    for (int i = 0; i < names.size(); i++) {
      int index = i;
      TreeMap<Integer, TreeMap<Integer, List<Problem>>> marks =
          bySheet.getOrDefault(names.get(i), new TreeMap<>());
      output.addSheet(free.get(i), head(i), sheet -> writeCopy(sheet, index, marks));
    }
  }

  private String listName(List<String> taken) {
    String name = texts.say("writing.marked.list");
    return taken.contains(name) ? texts.say("writing.marked.listBeside") : name;
  }

  /** Names that differ, before any sheet is written. */
  private static final class NameTaker {
    private final List<String> taken = new ArrayList<>();

    String take(XlsxOutput output, String wanted) {
      String name = output.freeName(wanted);
      for (int next = 2; contains(name); next++) {
        String base = output.freeName(wanted);
        name = base.substring(0, Math.min(base.length(), 27)) + " " + next;
      }
      taken.add(name);
      return name;
    }

    private boolean contains(String name) {
      return taken.stream().anyMatch(name::equalsIgnoreCase);
    }
  }

  // the list of problems

  private static SheetHeadOutput listHead() {
    return new SheetHeadOutput(
        1,
        List.of(
            SheetHeadOutput.Column.of(16),
            SheetHeadOutput.Column.of(10),
            SheetHeadOutput.Column.of(10),
            SheetHeadOutput.Column.of(PROBLEM_WIDTH),
            SheetHeadOutput.Column.of(EXPECTED_WIDTH),
            SheetHeadOutput.Column.of(30)));
  }

  private void writeList(SheetOutput sheet, Map<String, String> written) {
    List<String> headings =
        Stream.of(
                "writing.marked.sheet",
                "writing.marked.cell",
                "writing.marked.severity",
                "writing.marked.problem",
                "writing.marked.expected",
                "writing.marked.value")
            .map(texts::say)
            .toList();
    sheet.startRow(1);
    for (int column = 0; column < headings.size(); column++) {
      sheet.text(column, headings.get(column), CellLook.HEADING);
    }
    sheet.endRow();
    int row = 2;
    for (Problem problem : problems.subList(0, Math.min(MOST_LISTED, problems.size()))) {
      sheet.startRow(
          row++,
          Math.max(
              CellLines.height(texts.say(problem.problem()), PROBLEM_WIDTH),
              CellLines.height(texts.say(problem.expected()), EXPECTED_WIDTH)));
      writeListed(sheet, problem, written);
      sheet.endRow();
    }
    sheet.filter(headings.size() - 1, row - 1);
  }

  private void writeListed(SheetOutput sheet, Problem problem, Map<String, String> written) {
    CellRef at = problem.at();
    sheet.text(0, at.sheet(), CellLook.PLAIN);
    String target = written.getOrDefault(at.sheet(), "");
    String cell = at.cell().isEmpty() && at.row() > 0 ? "A" + at.row() : at.cell();
    sheet.text(1, at.cell(), target.isEmpty() ? CellLook.PLAIN : CellLook.LINK);
    if (!target.isEmpty() && !cell.isEmpty()) {
      sheet.link(1, target, cell);
    }
    sheet.text(
        2,
        texts.say(problem.severity().inWords()),
        CellLook.PLAIN.withFill(fill(problem.severity())));
    sheet.text(3, texts.say(problem.problem()), CellLook.WRAPPED);
    sheet.text(4, texts.say(problem.expected()), CellLook.WRAPPED);
    sheet.text(5, problem.value(), CellLook.PLAIN);
  }

  private static CellLook.Fill fill(Severity severity) {
    return switch (severity) {
      case HELD -> CellLook.Fill.HELD;
      case WARNING -> CellLook.Fill.WARNING;
      case NOTE -> CellLook.Fill.NOTE;
    };
  }

  // the copies of the sheets

  private SheetHeadOutput head(int index) throws IOException {
    List<Integer> widths = new ArrayList<>();
    int[] left = {ROWS_FOR_WIDTHS};
    rows(
        index,
        row -> {
          row.cells().forEach(cell -> widen(widths, cell));
          return --left[0] > 0;
        });
    return new SheetHeadOutput(0, widths.stream().map(SheetHeadOutput.Column::of).toList());
  }

  private static void widen(List<Integer> widths, Cell cell) {
    while (widths.size() <= cell.column() && widths.size() < 500) {
      widths.add(9);
    }
    if (cell.column() < widths.size()) {
      int length = cell.shown().lines().mapToInt(String::length).max().orElse(0) + 2;
      int width = Math.max(widths.get(cell.column()), Math.min(WIDEST, length));
      widths.set(cell.column(), width);
    }
  }

  private void rows(int index, clenchbook.reading.formats.cells.RowSink sink) throws IOException {
    try {
      source.rows(index, sink);
    } catch (DamagedSheet damaged) {
      // The list of problems says so; what could be read is copied.
    }
  }

  private void writeCopy(
      SheetOutput sheet, int index, TreeMap<Integer, TreeMap<Integer, List<Problem>>> marks)
      throws IOException {
    TreeMap<Integer, TreeMap<Integer, List<Problem>>> open = new TreeMap<>(marks);
    int[] last = {0};
    rows(
        index,
        row -> {
          if (row.number() > last[0]) {
            writeBlankRows(sheet, open, row.number());
            writeRow(sheet, row, open.remove(row.number()));
            last[0] = row.number();
          }
          return true;
        });
    writeBlankRows(sheet, open, Integer.MAX_VALUE);
  }

  /** Rows that hold nothing but a problem. */
  private void writeBlankRows(
      SheetOutput sheet, TreeMap<Integer, TreeMap<Integer, List<Problem>>> open, int before) {
    while (!open.isEmpty() && open.firstKey() < before) {
      Map.Entry<Integer, TreeMap<Integer, List<Problem>>> next = open.pollFirstEntry();
      writeRow(sheet, new Row(next.getKey(), List.of()), next.getValue());
    }
  }

  private void writeRow(
      SheetOutput sheet,
      Row row,
      @org.jspecify.annotations.Nullable TreeMap<Integer, List<Problem>> marked) {
    TreeMap<Integer, List<Problem>> marks =
        marked == null ? new TreeMap<>() : new TreeMap<>(marked);
    sheet.startRow(row.number());
    int last = -1;
    for (Cell cell : row.cells()) {
      if (cell.column() > last) {
        writeBlankCells(sheet, row.number(), marks, cell.column());
        writeCell(
            sheet, cell, mark(sheet, row.number(), cell.column(), marks.remove(cell.column())));
        last = cell.column();
      }
    }
    writeBlankCells(sheet, row.number(), marks, Integer.MAX_VALUE);
    sheet.endRow();
  }

  private void writeBlankCells(
      SheetOutput sheet, int row, TreeMap<Integer, List<Problem>> marks, int before) {
    while (!marks.isEmpty() && marks.firstKey() < before) {
      Map.Entry<Integer, List<Problem>> next = marks.pollFirstEntry();
      sheet.blank(next.getKey(), mark(sheet, row, next.getKey(), next.getValue()));
    }
  }

  /** Notes the problems of a cell and gives the look that the worst of them asks for. */
  private CellLook mark(
      SheetOutput sheet,
      int row,
      int column,
      @org.jspecify.annotations.Nullable List<Problem> problems) {
    if (problems == null) {
      return CellLook.PLAIN;
    }
    StringBuilder text = new StringBuilder();
    Severity worst = Severity.NOTE;
    for (Problem problem : problems) {
      text.append(text.length() == 0 ? "" : "\n").append(texts.say(problem.inFull()));
      worst = problem.severity().compareTo(worst) < 0 ? problem.severity() : worst;
    }
    sheet.note(row, column, text.toString());
    return CellLook.PLAIN.withFill(fill(worst));
  }

  private static void writeCell(SheetOutput sheet, Cell cell, CellLook look) {
    if (cell instanceof Cell.Number number && number.decimal().isPresent()) {
      sheet.number(cell.column(), number.decimal().get(), look.withFormat(number.format().code()));
    } else if (cell instanceof Cell.Moment moment) {
      sheet.number(cell.column(), serial(moment), look.withFormat(code(moment.format())));
    } else if (cell instanceof Cell.Span span) {
      BigDecimal days =
          BigDecimal.valueOf(span.length().toSeconds())
              .divide(SECONDS_A_DAY, MathContext.DECIMAL64);
      sheet.number(cell.column(), days, look.withFormat("[h]:mm"));
    } else if (cell instanceof Cell.Truth truth) {
      sheet.truth(cell.column(), truth.value(), look);
    } else if (cell instanceof Cell.Fault fault && fault.code().startsWith("#")) {
      sheet.error(cell.column(), fault.code(), look);
    } else {
      sheet.text(cell.column(), cell.shown(), look);
    }
  }

  private static String code(CellFormat format) {
    return format.kind() == CellFormat.Kind.DATE ? format.code() : "yyyy-mm-dd";
  }

  private static BigDecimal serial(Cell.Moment moment) {
    long days = ChronoUnit.DAYS.between(BEFORE_1900, moment.at().toLocalDate());
    long true1900 = days < 61 ? days - 1 : days;
    BigDecimal part =
        BigDecimal.valueOf(moment.at().toLocalTime().toSecondOfDay())
            .divide(SECONDS_A_DAY, MathContext.DECIMAL64);
    return BigDecimal.valueOf(Math.max(0, true1900)).add(part);
  }
}
