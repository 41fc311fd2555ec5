package clenchbook.writing;

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
  private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 30);

  private static final List<String> HOW_TO =
      List.of(
          "Your farrier's book",
          "",
          "1. Fill in Settings: your name, how to pay you, your country and currency.",
          "2. Put your prices into Work, your shoes and nails into Materials.",
          "3. Write a row into Visits for every horse you do. Date, Horse and Work are enough; give"
              + " Owner, or list the horse in Horses.",
          "4. At the month's end run: clenchbook month-end YOUR-BOOK.xlsx --month 2026-01",
          "5. If something looks odd, run: clenchbook check YOUR-BOOK.xlsx. It says which cell,"
              + " what is wrong and what was expected.",
          "",
          "Each heading has a note that says what the column is for: point at it.",
          "Columns you won't need every day are folded away; press the plus sign above the columns"
              + " to see them.",
          "The grey example rows may be written over or deleted. Sheets you don't use may be"
              + " deleted, except Visits.",
          "Add columns of your own wherever you like; the program leaves them alone. It never"
              + " changes this workbook.",
          "Your own words for headings and sheets go into Headings, in any language.",
          "",
          "Sizes such as 00 or 5/16 are kept as text here, so that the spreadsheet does not make"
              + " numbers or dates of them.",
          "Tax: the codes and rates are yours to fill in. Ask a tax adviser; the program only"
              + " reckons with what you give it.");

  private StarterWorkbook() {}

  /**
   * Writes the starter as {@code .xlsx}; always the same bytes.
   *
   * @param out takes the workbook; not closed
   * @throws IOException when it can't be written
   */
  public static void write(OutputStream out) throws IOException {
    try (XlsxOutput book = new XlsxOutput(out)) {
      List<StarterPlan.Sheet> sheets = StarterPlan.load();
      book.addSheet(
          book.freeName("Start here"),
          new SheetHeadOutput(
              0, List.of(SheetHeadOutput.Column.of(24), SheetHeadOutput.Column.of(90))),
          sheet -> writeStart(sheet, sheets));
      for (StarterPlan.Sheet sheet : sheets) {
        if (sheet.settings().isEmpty()) {
          book.addSheet(
              book.freeName(sheet.name()), head(sheet), output -> writeTable(output, sheet));
        } else {
          book.addSheet(
              book.freeName(sheet.name()), settingsHead(), output -> writeSettings(output, sheet));
        }
      }
    }
  }

  private static void writeStart(SheetOutput output, List<StarterPlan.Sheet> sheets) {
    int row = 1;
    for (String line : HOW_TO) {
      output.startRow(row);
      output.text(0, line, row == 1 ? CellLook.TITLE : CellLook.PLAIN);
      output.endRow();
      row++;
    }
    row++;
    for (StarterPlan.Sheet sheet : sheets) {
      output.startRow(row);
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
      columns.add(new SheetHeadOutput.Column(column.width(), look(column), column.folded()));
    }
    return new SheetHeadOutput(1, columns);
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
    output.startRow(1);
    for (int i = 0; i < columns.size(); i++) {
      StarterPlan.Column column = columns.get(i);
      output.text(i, column.heading(), column.folded() ? CellLook.RARE_HEADING : CellLook.HEADING);
      output.note(1, i, column.purpose());
      if (!column.offered().isEmpty()) {
        output.offer(i, 2, LAST_ROW, column.offered().replaceFirst("^=", ""));
      }
    }
    output.endRow();
    writeExample(output, 2, columns, columns.stream().map(StarterPlan.Column::example).toList());
    for (int i = 0; i < sheet.more().size(); i++) {
      writeExample(output, 3 + i, columns, sheet.more().get(i));
    }
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
            SheetHeadOutput.Column.of(28),
            new SheetHeadOutput.Column(36, CellLook.WRAPPED, false),
            SheetHeadOutput.Column.of(80)));
  }

  private static void writeSettings(SheetOutput output, StarterPlan.Sheet sheet) {
    output.startRow(1);
    output.text(0, "Setting", CellLook.HEADING);
    output.text(1, "Value", CellLook.HEADING);
    output.text(2, "What it is for", CellLook.HEADING);
    output.note(1, 0, "The setting's name: leave it as it is.");
    output.note(1, 1, "Your value. Blank: the default named beside it.");
    output.endRow();
    int row = 2;
    for (StarterPlan.SettingLine line : sheet.settings()) {
      output.startRow(row);
      output.text(0, line.name(), CellLook.PLAIN);
      output.text(2, line.purpose(), CellLook.WRAPPED);
      output.endRow();
      if (!line.offered().isEmpty()) {
        output.offer(1, row, row, line.offered());
      }
      row++;
    }
  }
}
