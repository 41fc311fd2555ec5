package clenchbook.samples;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes sheets of plain values as an .xlsx whose bytes depend on nothing but the values. */
final class BookFile {
  private static final LocalDateTime STAMP = LocalDateTime.of(2026, 11, 1, 8, 0);
  private final XSSFWorkbook book = new XSSFWorkbook();
  private final Map<String, XSSFCellStyle> styles = new TreeMap<>();
  private final String dateFormat;

  private BookFile(String dateFormat) {
    this.dateFormat = dateFormat;
  }

  static byte[] bytes(List<Tab> tabs, String title, String creator, String dateFormat)
      throws IOException {
    BookFile file = new BookFile(dateFormat);
    tabs.forEach(file::sheet);
    file.properties(title, creator);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    file.book.write(out);
    file.book.close();
    return fixed(out.toByteArray());
  }

  private void properties(String title, String creator) {
    var core = book.getProperties().getCoreProperties();
    core.setTitle(title);
    core.setCreator(creator);
    core.setCreated(Optional.of(java.util.Date.from(STAMP.toInstant(java.time.ZoneOffset.UTC))));
    core.setModified(Optional.of(java.util.Date.from(STAMP.toInstant(java.time.ZoneOffset.UTC))));
    book.getProperties()
        .getExtendedProperties()
        .getUnderlyingProperties()
        .setApplication("Spreadsheet");
  }

  private void sheet(Tab tab) {
    XSSFSheet sheet = book.createSheet(tab.name);
    int at = 0;
    if (!tab.title.isEmpty()) {
      XSSFCell cell = sheet.createRow(0).createCell(0);
      cell.setCellValue(tab.title);
      cell.setCellStyle(style("title"));
      at = 2;
    }
    head(tab, sheet.createRow(at));
    sheet.createFreezePane(0, at + 1);
    int first = at;
    for (Map<String, Object> values : tab.rows) {
      row(tab, sheet.createRow(++at), values);
    }
    sheet.setAutoFilter(new CellRangeAddress(first, at, 0, tab.headings.size() - 1));
    if (!tab.totals.isEmpty()) {
      totals(tab, sheet.createRow(at + 1), first + 2, at + 1);
    }
    widths(tab, sheet);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.getPrintSetup().setLandscape(true);
    sheet.setRepeatingRows(new CellRangeAddress(first, first, -1, -1));
  }

  private void head(Tab tab, XSSFRow row) {
    for (int i = 0; i < tab.headings.size(); i++) {
      XSSFCell cell = row.createCell(i);
      cell.setCellValue(tab.headings.get(i));
      cell.setCellStyle(style("head"));
    }
  }

  private void row(Tab tab, XSSFRow row, Map<String, Object> values) {
    for (int i = 0; i < tab.headings.size(); i++) {
      Object value = values.get(tab.headings.get(i));
      if (value != null) {
        cell(row.createCell(i), tab.headings.get(i), value);
      }
    }
  }

  private void cell(XSSFCell cell, String heading, Object value) {
    cell.setCellStyle(style(kind(heading, value)));
    if (value instanceof LocalDate day) {
      cell.setCellValue(day);
    } else if (value instanceof Tab.Clock clock) {
      cell.setCellValue(
          BigDecimal.valueOf(clock.minutes())
              .divide(BigDecimal.valueOf(1440), 12, java.math.RoundingMode.HALF_UP)
              .doubleValue());
    } else if (value instanceof Tab.Formula formula) {
      cell.setCellFormula(formula.text().formatted(cell.getRowIndex() + 1, cell.getRowIndex() + 1));
      cell.setCellValue(formula.stored());
    } else if (value instanceof Tab.Broken broken) {
      cell.setCellErrorValue(FormulaError.forString(broken.error()));
    } else if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else {
      cell.setCellValue(value.toString());
    }
  }

  private static String kind(String heading, Object value) {
    if (value instanceof LocalDate) {
      return "date";
    }
    if (value instanceof Tab.Clock) {
      return "clock";
    }
    boolean money =
        List.of(
                "Price",
                "Charge",
                "Paid",
                "Amount",
                "Net",
                "Gross",
                "Cost",
                "Unit cost",
                "Pack cost",
                "Opening balance",
                "Proceeds")
            .contains(heading);
    boolean number = value instanceof Number || value instanceof Tab.Formula;
    return number && (money || heading.equals("Tax")) ? "money" : number ? "figure" : "text";
  }

  private void totals(Tab tab, XSSFRow row, int first, int last) {
    row.createCell(0).setCellValue("Total");
    int column = tab.headings.indexOf(tab.totals);
    String letter = org.apache.poi.ss.util.CellReference.convertNumToColString(column);
    XSSFCell cell = row.createCell(column);
    double sum =
        tab.rows.stream()
            .map(r -> r.get(tab.totals))
            .filter(Number.class::isInstance)
            .mapToDouble(v -> ((Number) v).doubleValue())
            .sum();
    cell.setCellFormula("SUM(" + letter + first + ":" + letter + last + ")");
    cell.setCellValue(Job.cents(sum));
    cell.setCellStyle(style("head"));
  }

  private void widths(Tab tab, XSSFSheet sheet) {
    for (int i = 0; i < tab.headings.size(); i++) {
      String heading = tab.headings.get(i);
      int widest = heading.length() + 3;
      for (Map<String, Object> row : tab.rows) {
        Object value = row.get(heading);
        int length =
            value instanceof LocalDate
                ? 10
                : value instanceof String text
                    ? text.lines().mapToInt(String::length).max().orElse(0)
                    : 7;
        widest = Math.max(widest, length + 2);
      }
      sheet.setColumnWidth(i, Math.min(widest, 38) * 256);
    }
  }

  private XSSFCellStyle style(String kind) {
    return styles.computeIfAbsent(kind, this::made);
  }

  private XSSFCellStyle made(String kind) {
    XSSFCellStyle style = book.createCellStyle();
    style.setVerticalAlignment(VerticalAlignment.TOP);
    switch (kind) {
      case "date" -> style.setDataFormat(book.createDataFormat().getFormat(dateFormat));
      case "clock" -> style.setDataFormat(book.createDataFormat().getFormat("h:mm"));
      case "money" -> style.setDataFormat(book.createDataFormat().getFormat("#,##0.00"));
      case "text" -> style.setWrapText(true);
      case "head", "title" -> strong(style, kind.equals("title"));
      default -> style.setDataFormat(book.createDataFormat().getFormat("General"));
    }
    return style;
  }

  private void strong(XSSFCellStyle style, boolean title) {
    XSSFFont font = book.createFont();
    font.setBold(true);
    font.setFontHeightInPoints((short) (title ? 14 : 11));
    style.setFont(font);
    if (!title) {
      style.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
  }

  private static byte[] fixed(byte[] raw) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(raw));
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        ZipEntry copy = new ZipEntry(entry.getName());
        copy.setTimeLocal(STAMP);
        zip.putNextEntry(copy);
        zip.write(in.readAllBytes());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }
}
