package clenchbook.strangers;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sheets of a book, written in the format that its farrier uses. A cell is a text, a whole
 * number, a {@link BigDecimal}, a day, or a number under a format; null and the empty text are
 * blank.
 */
final class Kept {
  /** The formats in which books are kept. */
  enum Format {
    XLSX,
    XLS,
    ODS,
    CSV
  }

  /** A number and how its cell shows it. */
  record Shown(String number, String format) {}

  private final Format format;
  private final String file;
  private final Map<String, List<Object[]>> sheets = new LinkedHashMap<>();
  private final Map<String, List<String>> merged = new LinkedHashMap<>();
  private String current = "";
  private String text = "";
  private Charset charset = StandardCharsets.UTF_8;

  private Kept(Format format, String file) {
    this.format = format;
    this.file = file;
  }

  static Kept xlsx(String file) {
    return new Kept(Format.XLSX, file + ".xlsx");
  }

  static Kept xls(String file) {
    return new Kept(Format.XLS, file + ".xls");
  }

  static Kept ods(String file) {
    return new Kept(Format.ODS, file + ".ods");
  }

  /** A file of text as some program exports it. */
  static Kept csv(String file, String charset, String text) {
    Kept kept = new Kept(Format.CSV, file + ".csv");
    kept.text = text;
    kept.charset = Charset.forName(charset);
    return kept;
  }

  static LocalDate march(int day) {
    return LocalDate.of(2026, 3, day);
  }

  static BigDecimal money(String amount) {
    return new BigDecimal(amount);
  }

  /** Begins a sheet. */
  Kept sheet(String name) {
    current = name;
    sheets.put(name, new ArrayList<>());
    return this;
  }

  /** Adds texts, parted by bars, as a row. */
  Kept head(String cells) {
    return row((Object[]) cells.split("\\|", -1));
  }

  Kept row(Object... cells) {
    sheets.get(current).add(cells);
    return this;
  }

  Kept blank() {
    return row();
  }

  /** Merges cells of the sheet. */
  Kept merge(String block) {
    merged.computeIfAbsent(current, unused -> new ArrayList<>()).add(block);
    return this;
  }

  /** The rows of each sheet. */
  Map<String, List<Object[]>> sheets() {
    return sheets;
  }

  List<String> merged(String sheet) {
    return merged.getOrDefault(sheet, List.of());
  }

  Path write(Path folder) throws IOException {
    Path path = folder.resolve(file);
    switch (format) {
      case XLSX -> PoiWriter.xlsx(this, path);
      case XLS -> PoiWriter.xls(this, path);
      case ODS -> OdsWriter.write(this, path);
      default -> Files.write(path, text.getBytes(charset));
    }
    return path;
  }
}
