package clenchbook.writing;

import clenchbook.reading.starter.StarterPlan;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a starter workbook: every sheet with its headings, a note on each that says what it is
 * for, lists to choose from, formats for dates, money and sizes, and an example row. What is needed
 * every day comes first; the rest is folded away.
 */
public final class StarterWorkbook {
  private static final int LAST_ROW = 2_000;
  private static final String DATE = "yyyy-mm-dd";
  private static final int LINK_WIDTH = 24;
  private static final int PURPOSE_WIDTH = 90;
  private static final int SETTING_WIDTH = 34;
  private static final int SETTING_PURPOSE_WIDTH = 80;
  private static final int TITLE_HEIGHT = 24;
  private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 30);

  private StarterWorkbook() {}

  /**
   * Writes the starter as {@code .xlsx}; always the same bytes.
   *
   * @param language one of {@link StarterPlan#LANGUAGES}
   * @param program how the person starts the program
   * @param out takes the workbook; not closed
   * @throws IOException when it can't be written
   */
  public static void write(String language, String program, OutputStream out) throws IOException {
    StarterPlan plan = StarterPlan.load(language);
    try (XlsxOutput book = new XlsxOutput(out)) {
      book.addSheet(
          book.freeName(plan.titles().start()),
          new SheetHeadOutput(
              0,
              List.of(
                  SheetHeadOutput.Column.of(LINK_WIDTH), SheetHeadOutput.Column.of(PURPOSE_WIDTH))),
          sheet -> writeStart(sheet, plan, program));
      for (StarterPlan.Sheet sheet : plan.sheets()) {
        if (sheet.settings().isEmpty()) {
          book.addSheet(
              book.freeName(sheet.name()), head(sheet), output -> writeTable(output, sheet));
        } else {
          book.addSheet(
              book.freeName(sheet.name()),
              settingsHead(),
              output -> writeSettings(output, plan, sheet));
        }
      }
    }
  }

  private static void writeStart(SheetOutput output, StarterPlan plan, String program) {
    int row = 1;
    for (String line : plan.howTo()) {
      String text = line.replace("{program}", program);
      boolean title = row == 1;
      output.startRow(
          row, title ? TITLE_HEIGHT : CellLines.height(text, LINK_WIDTH + PURPOSE_WIDTH));
      output.text(0, text, title ? CellLook.TITLE : CellLook.WRAPPED);
      output.endRow();
      output.mergeAcross(row, 0, 1);
      row++;
    }
    row++;
    for (StarterPlan.Sheet sheet : plan.sheets()) {
      output.startRow(row, CellLines.height(sheet.purpose(), PURPOSE_WIDTH));
      output.text(0, sheet.name(), CellLook.LINK);
      output.link(0, sheet.name(), "A1");
      output.text(1, sheet.purpose(), CellLook.WRAPPED);
      output.endRow();
      row++;
    }
  }

  private static SheetHeadOutput head(StarterPlan.Sheet sheet) {
    List<SheetHeadOutput.Column> columns = new ArrayList<>();
    for (StarterPlan.Column column : sheet.columns()) {
      columns.add(new SheetHeadOutput.Column(width(column), look(column), column.folded()));
    }
    return new SheetHeadOutput(1, columns);
  }

  /** Wide enough for the longest word of the heading, whose letters are bold and so wider. */
  private static int width(StarterPlan.Column column) {
    int longest = 0;
    for (String word : column.name().split(" ")) {
      longest = Math.max(longest, word.length());
    }
    return Math.max(column.width(), longest * 6 / 5 + 1);
  }

  private static CellLook look(StarterPlan.Column column) {
    return switch (column.kind()) {
      case "date" -> CellLook.PLAIN.withFormat(DATE);
      case "money" -> CellLook.PLAIN.withFormat("#,##0.00");
      case "size" -> CellLook.PLAIN.withFormat("@");
      default -> CellLook.PLAIN;
    };
  }

  private static void writeTable(SheetOutput output, StarterPlan.Sheet sheet) {
    List<StarterPlan.Column> columns = sheet.columns();
    output.startRow(1, headingHeight(columns));
    for (int i = 0; i < columns.size(); i++) {
      StarterPlan.Column column = columns.get(i);
      output.text(i, column.name(), column.folded() ? CellLook.RARE_HEADING : CellLook.HEADING);
      output.note(1, i, column.purpose());
      if (!column.offered().isEmpty()) {
        output.offer(i, 2, LAST_ROW, column.offered());
      }
    }
    output.endRow();
    for (int i = 0; i < sheet.examples().size(); i++) {
      writeExample(output, 2 + i, columns, sheet.examples().get(i));
    }
  }

  /** Headings are bold, and a bold letter is wider. */
  private static int headingHeight(List<StarterPlan.Column> columns) {
    return columns.stream()
        .mapToInt(column -> CellLines.height(column.name(), width(column) * 5 / 6))
        .max()
        .orElse(CellLines.HEIGHT);
  }

  private static void writeExample(
      SheetOutput output, int row, List<StarterPlan.Column> columns, List<String> cells) {
    output.startRow(row);
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      CellLook look = look(columns.get(i)).withFill(CellLook.Fill.RARE);
      if (!cell.isEmpty()) {
        writeCell(output, i, columns.get(i).kind(), cell, look);
      }
    }
    output.endRow();
  }

  private static void writeCell(
      SheetOutput output, int column, String kind, String cell, CellLook look) {
    switch (kind) {
      case "date" -> {
        long days = ChronoUnit.DAYS.between(BEFORE_1900, LocalDate.parse(cell));
        output.number(column, BigDecimal.valueOf(days), look);
      }
      case "money", "number" -> output.number(column, new BigDecimal(cell), look);
      default -> output.text(column, cell, look);
    }
  }

  private static SheetHeadOutput settingsHead() {
    return new SheetHeadOutput(
        1,
        List.of(
            SheetHeadOutput.Column.of(SETTING_WIDTH),
            new SheetHeadOutput.Column(36, CellLook.WRAPPED, false),
            SheetHeadOutput.Column.of(SETTING_PURPOSE_WIDTH)));
  }

  private static void writeSettings(SheetOutput output, StarterPlan plan, StarterPlan.Sheet sheet) {
    StarterPlan.Titles titles = plan.titles();
    output.startRow(1);
    output.text(0, titles.setting(), CellLook.HEADING);
    output.text(1, titles.value(), CellLook.HEADING);
    output.text(2, titles.purpose(), CellLook.HEADING);
    output.note(1, 0, titles.settingNote());
    output.note(1, 1, titles.valueNote());
    output.endRow();
    int row = 2;
    for (StarterPlan.SettingLine line : sheet.settings()) {
      output.startRow(row, CellLines.height(line.purpose(), SETTING_PURPOSE_WIDTH));
      output.text(0, line.name(), CellLook.PLAIN);
      if (line.title().equals("Language")) {
        output.text(1, plan.language(), CellLook.WRAPPED);
      }
      output.text(2, line.purpose(), CellLook.WRAPPED);
      output.endRow();
      if (!line.offered().isEmpty()) {
        output.offer(1, row, row, line.offered());
      }
      row++;
    }
  }
}
