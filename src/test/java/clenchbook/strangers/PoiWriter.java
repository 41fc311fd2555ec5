package clenchbook.strangers;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a book with Apache POI, so that the reader's own code has no part in it. */
final class PoiWriter {
  private static final String DAY = "dd/mm/yyyy";

  private final Workbook book;
  private final Map<String, CellStyle> styles = new HashMap<>();

  private PoiWriter(Workbook book) {
    this.book = book;
  }

  static void xlsx(Kept kept, Path file) throws IOException {
    try (Workbook book = new XSSFWorkbook()) {
      new PoiWriter(book).write(kept, file);
    }
  }

  static void xls(Kept kept, Path file) throws IOException {
    try (Workbook book = new HSSFWorkbook()) {
      new PoiWriter(book).write(kept, file);
    }
  }

  private void write(Kept kept, Path file) throws IOException {
    for (Map.Entry<String, List<Object[]>> each : kept.sheets().entrySet()) {
      Sheet sheet = book.createSheet(each.getKey());
      int number = 0;
      for (Object[] cells : each.getValue()) {
        row(sheet.createRow(number++), cells);
      }
      kept.merged(each.getKey())
          .forEach(block -> sheet.addMergedRegion(CellRangeAddress.valueOf(block)));
    }
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
  }

  private void row(Row row, Object[] cells) {
    for (int column = 0; column < cells.length; column++) {
      if (cells[column] != null && !cells[column].equals("")) {
        fill(row.createCell(column), cells[column]);
      }
    }
  }

  private void fill(Cell cell, Object value) {
    if (value instanceof LocalDate day) {
      cell.setCellValue(day);
      cell.setCellStyle(style(DAY));
    } else if (value instanceof Kept.Shown shown) {
      cell.setCellValue(new BigDecimal(shown.number()).doubleValue());
      cell.setCellStyle(style(shown.format()));
    } else if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else {
      cell.setCellValue(value.toString());
    }
  }

  private CellStyle style(String format) {
    return styles.computeIfAbsent(
        format,
        wanted -> {
          CellStyle style = book.createCellStyle();
          style.setDataFormat(book.createDataFormat().getFormat(wanted));
          return style;
        });
  }
}
