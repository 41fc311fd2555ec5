package clenchbook.reference;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The whole workbook in memory, sheet by sheet. */
final class PlainBook {
  private final Map<String, List<PlainRow>> sheets = new HashMap<>();
  private final Map<String, String> settings = new HashMap<>();
  private final Map<String, String> renamed = new HashMap<>();

  PlainBook(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        Workbook book = new XSSFWorkbook(in)) {
      Sheet own = book.getSheet("Headings");
      if (own != null) {
        for (PlainRow row : rows(own)) {
          String mine =
              row.text("Mine").isEmpty()
                  ? row.text("Sheet")
                  : row.text("Sheet") + "!" + row.text("Mine");
          renamed.put(mine, row.text("Means"));
        }
      }
      for (Sheet sheet : book) {
        String name = renamed.getOrDefault(sheet.getSheetName(), sheet.getSheetName());
        sheets.put(name, rows(sheet));
      }
    }
    for (PlainRow row : sheet("Settings")) {
      settings.put(PlainRow.key(row.text("Setting")), row.text("Value"));
    }
  }

  List<PlainRow> sheet(String name) {
    return sheets.getOrDefault(name, List.of());
  }

  boolean has(String name) {
    return sheets.containsKey(name);
  }

  String setting(String name) {
    return settings.getOrDefault(PlainRow.key(name), "");
  }

  BigDecimal setting(String name, String blank) {
    String value = setting(name);
    return new BigDecimal(value.isEmpty() ? blank : value);
  }

  private List<PlainRow> rows(Sheet sheet) {
    List<PlainRow> rows = new ArrayList<>();
    Map<Integer, String> headings = null;
    for (Row row : sheet) {
      Map<Integer, Object> values = values(row);
      if (headings == null) {
        headings = values.size() > 1 ? headings(sheet, values) : null;
      } else if (!values.isEmpty() && !"Total".equals(values.get(0))) {
        Map<String, Object> cells = new LinkedHashMap<>();
        for (Map.Entry<Integer, Object> value : values.entrySet()) {
          if (headings.containsKey(value.getKey())) {
            cells.put(headings.get(value.getKey()), value.getValue());
          }
        }
        rows.add(new PlainRow(row.getRowNum() + 1, cells));
      }
    }
    return rows;
  }

  private Map<Integer, String> headings(Sheet sheet, Map<Integer, Object> values) {
    Map<Integer, String> headings = new HashMap<>();
    values.forEach(
        (column, value) -> {
          String mine = sheet.getSheetName() + "!" + value;
          headings.put(column, PlainRow.key(renamed.getOrDefault(mine, value.toString())));
        });
    return headings;
  }

  private static Map<Integer, Object> values(Row row) {
    Map<Integer, Object> values = new LinkedHashMap<>();
    for (Cell cell : row) {
      Object value = value(cell);
      if (!"".equals(value)) {
        values.put(cell.getColumnIndex(), value);
      }
    }
    return values;
  }

  private static Object value(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    if (type == CellType.NUMERIC && DateUtil.isCellDateFormatted(cell)) {
      double number = cell.getNumericCellValue();
      boolean clock = number < 1;
      return clock
          ? new BigDecimal(number * 1440).setScale(0, RoundingMode.HALF_UP)
          : cell.getLocalDateTimeCellValue().toLocalDate();
    }
    return switch (type) {
      case NUMERIC -> new BigDecimal(String.valueOf(cell.getNumericCellValue()));
      case STRING -> cell.getStringCellValue().trim();
      case ERROR -> "#ERROR";
      case BOOLEAN -> cell.getBooleanCellValue();
      default -> "";
    };
  }
}
