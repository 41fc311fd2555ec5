package clenchbook.reference;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Turns a folder of hand-made CSV sheets into a workbook, with some settings put differently. */
final class SmallBooks {
  private static final Path FOLDER = Path.of("src/test/resources/small-books");
  private static final Set<String> TEXT = Set.of("Size", "Section", "Code", "Value", "Receipt");
  private static final String[] SHEETS = {
    "Visits",
    "Work",
    "Materials",
    "Owners",
    "Horses",
    "Places",
    "Trips",
    "Purchases",
    "Payments",
    "Counts",
    "Tax",
    "Settings"
  };

  private SmallBooks() {}

  /** Writes the workbook; a setting given as an empty text is left out. */
  static Path write(String name, Map<String, String> settings, Path target) throws IOException {
    try (Workbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(target)) {
      CellStyle day = book.createCellStyle();
      day.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
      for (String sheet : SHEETS) {
        if (!Files.exists(FOLDER.resolve(name).resolve(sheet + ".csv"))) {
          if (sheet.equals("Settings") && !settings.isEmpty()) {
            fill(book.createSheet(sheet), onlyThese(settings), day);
          }
          continue;
        }
        fill(book.createSheet(sheet), rows(name, sheet, settings), day);
      }
      book.write(out);
    }
    return target;
  }

  private static List<List<String>> onlyThese(Map<String, String> settings) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Setting", "Value"));
    settings.forEach((setting, value) -> rows.add(List.of(setting, value)));
    return rows;
  }

  private static List<List<String>> rows(String name, String sheet, Map<String, String> settings)
      throws IOException {
    List<List<String>> rows = new ArrayList<>();
    Map<String, String> left = new LinkedHashMap<>(settings);
    try (Reader reader =
        Files.newBufferedReader(
            FOLDER.resolve(name).resolve(sheet + ".csv"), StandardCharsets.UTF_8)) {
      for (CSVRecord record : CSVFormat.RFC4180.parse(reader)) {
        List<String> row = new ArrayList<>(record.toList());
        if (sheet.equals("Settings") && left.containsKey(row.get(0))) {
          row.set(1, left.remove(row.get(0)));
        }
        rows.add(row);
      }
    }
    if (sheet.equals("Settings")) {
      left.forEach((setting, value) -> rows.add(List.of(setting, value)));
      rows.removeIf(row -> row.get(1).isEmpty());
    }
    return rows;
  }

  private static void fill(Sheet sheet, List<List<String>> rows, CellStyle day) {
    List<String> headings = rows.get(0);
    for (int r = 0; r < rows.size(); r++) {
      Row row = sheet.createRow(r);
      for (int c = 0; c < rows.get(r).size(); c++) {
        String value = rows.get(r).get(c);
        boolean text = r == 0 || TEXT.contains(headings.get(c));
        if (value.isEmpty()) {
          continue;
        }
        if (!text && value.matches("\\d{4}-\\d{2}-\\d{2}")) {
          row.createCell(c).setCellValue(LocalDate.parse(value));
          row.getCell(c).setCellStyle(day);
        } else if (!text && value.matches("-?\\d+(\\.\\d+)?")) {
          row.createCell(c).setCellValue(Double.parseDouble(value));
        } else {
          row.createCell(c).setCellValue(value);
        }
      }
    }
  }
}
