package clenchbook.texts;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A copy of a sample whose own words can be told from the program's: a German one, or an English
 * one in which each name is turned into a word that there is not.
 *
 * @param file the workbook
 * @param month the month to bill
 * @param words cells whose words only this book has
 * @param known cells that stand for something that the contract names, such as a kind or a unit
 */
record MadeUpBook(Path file, YearMonth month, List<String> words, List<String> known) {
  private static final Path GERMAN = Path.of("sample-workbooks/lindenau-small.xlsx");
  private static final Path METRIC = Path.of("sample-workbooks/thornfield-metric.xlsx");

  /**
   * Headings above words that only the farrier chose; those of the other columns have a meaning.
   */
  private static final Set<String> NAMES =
      Set.of(
          "Place",
          "Owner",
          "Horse",
          "Work",
          "Shoe",
          "Nail",
          "Extras",
          "Vet",
          "Remarks",
          "Item",
          "Compare as",
          "Bar",
          "Supplier",
          "Invoice name",
          "Address",
          "Bill to",
          "Notes",
          "From",
          "To",
          "Vehicle",
          "Asset",
          "Name");

  /** Words that a bank or the post has a meaning for. */
  private static final Set<String> SETTINGS = Set.of("Business name", "Address", "Payment text");

  private static final Pattern WORD = Pattern.compile("[A-Za-z]{2,}");
  private static final String FROM = "abcdefghijklmnopqrtuvwxyz";
  private static final String TO = "ebvdigfkonmlypuqzrxacjwht";

  MadeUpBook {
    words = List.copyOf(words);
    known = List.copyOf(known);
  }

  /** The German sample as it is. */
  static MadeUpBook german(Path folder) throws IOException {
    Path file = Files.copy(GERMAN, folder.resolve("buch.xlsx"));
    return new MadeUpBook(file, YearMonth.of(2025, 12), texts(file), List.of());
  }

  /** The metric sample with its names made up and another language in Settings. */
  static MadeUpBook metric(Path folder, String language) throws IOException {
    Path file = folder.resolve("bk.xlsx");
    List<String> words = new ArrayList<>();
    List<String> known = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(METRIC))) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          row.forEach(cell -> (make(cell, language) ? words : known).add(text(cell)));
        }
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    return new MadeUpBook(file, YearMonth.of(2026, 9), words, known);
  }

  /** Whether a cell holds names, which are made up now. */
  private static boolean make(Cell cell, String language) {
    if (cell.getCellType() != CellType.STRING || cell.getRowIndex() == 0) {
      return false;
    }
    boolean settings = cell.getSheet().getSheetName().equals("Settings");
    String above = settings ? cell.getRow().getCell(0).getStringCellValue() : heading(cell);
    if (settings && cell.getColumnIndex() == 0 || !(settings ? SETTINGS : NAMES).contains(above)) {
      if (settings && cell.getColumnIndex() > 0 && above.equals("Language")) {
        cell.setCellValue(language);
      }
      return false;
    }
    cell.setCellValue(madeUp(cell.getStringCellValue()));
    return true;
  }

  private static String heading(Cell cell) {
    Cell heading = cell.getSheet().getRow(0).getCell(cell.getColumnIndex());
    return heading == null ? "" : heading.getStringCellValue();
  }

  /** Each word letter by letter; an {@code s} stays, so that one and many stay alike. */
  static String madeUp(String text) {
    UnaryOperator<String> letters =
        word -> {
          StringBuilder made = new StringBuilder();
          for (char letter : word.toCharArray()) {
            int at = FROM.indexOf(Character.toLowerCase(letter));
            char to = at < 0 ? letter : TO.charAt(at);
            made.append(Character.isUpperCase(letter) ? Character.toUpperCase(to) : to);
          }
          return made.toString();
        };
    return WORD.matcher(text).replaceAll(word -> letters.apply(word.group()));
  }

  /** Every text of a workbook and the names of its sheets. */
  static List<String> texts(Path book) throws IOException {
    List<String> texts = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book))) {
      for (Sheet sheet : workbook) {
        texts.add(sheet.getSheetName());
        texts.addAll(texts(sheet));
      }
    }
    return texts;
  }

  static List<String> texts(Sheet sheet) {
    List<String> texts = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        texts.add(text(cell));
      }
    }
    return texts;
  }

  private static String text(Cell cell) {
    return new DataFormatter(Locale.ROOT).formatCellValue(cell);
  }
}
