package clenchbook.speed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JasperFillManager;
import net.sf.jasperreports.engine.JasperPrint;
import net.sf.jasperreports.engine.JasperReport;
import net.sf.jasperreports.engine.data.JRMapCollectionDataSource;
import net.sf.jasperreports.engine.util.JRLoader;
import net.sf.jasperreports.export.SimpleExporterInput;
import net.sf.jasperreports.export.SimpleOutputStreamExporterOutput;
import net.sf.jasperreports.pdf.JRPdfExporter;

/**
 * The floor of the month's end: the StAX pass over the book, then as many documents of as many
 * pages as the month has, filled and exported one after another from one compiled template, the
 * invoice's. It reckons nothing, and uses nothing of the program but that template and its fonts.
 */
public final class MonthFloor {
  private static final String TEMPLATE = "/report-templates/invoice.a4.jasper";
  private static final int LINES_ON_ONE = 4;
  private static final int LINES_MORE = 26;

  private MonthFloor() {}

  /** {@code MonthFloor BOOK FOLDER PAGES...}, a number of pages for each document. */
  public static void main(String[] args) throws Exception {
    System.setProperty("java.awt.headless", "true");
    StaxPass.over(Path.of(args[0]));
    Path folder = Files.createDirectories(Path.of(args[1]));
    JasperReport template = template();
    int pages = 0;
    for (int i = 2; i < args.length; i++) {
      JasperPrint filled = fill(template, Integer.parseInt(args[i]));
      pages += filled.getPages().size();
      Files.write(folder.resolve(i + ".pdf"), pdf(filled));
    }
    System.out.println(pages);
  }

  private static JasperReport template() throws IOException, JRException {
    try (InputStream compiled = MonthFloor.class.getResourceAsStream(TEMPLATE)) {
      if (compiled == null) {
        throw new IOException("no compiled template; build the program first");
      }
      return (JasperReport) JRLoader.loadObject(compiled);
    }
  }

  private static JasperPrint fill(JasperReport template, int pages) throws JRException {
    int lines = LINES_ON_ONE + (pages - 1) * LINES_MORE;
    return JasperFillManager.fillReport(
        template, parts(), new JRMapCollectionDataSource(rows(lines)));
  }

  private static byte[] pdf(JasperPrint filled) throws JRException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    JRPdfExporter exporter = new JRPdfExporter();
    exporter.setExporterInput(new SimpleExporterInput(filled));
    exporter.setExporterOutput(new SimpleOutputStreamExporterOutput(bytes));
    exporter.exportReport();
    return bytes.toByteArray();
  }

  static Map<String, Object> parts() {
    Map<String, Object> parts = new HashMap<>();
    parts.put("business", "Wold Forge");
    parts.put("contact", "The Smithy\nNether Wold\nforge@wold.example");
    parts.put("addressLeft", "Owner 01\n1 Stable Lane\nNether Wold\nZZ1 4QX");
    parts.put("senderLeft", "Wold Forge, The Smithy, Nether Wold");
    parts.put("factLabelsRight", "Invoice\nDate\nDue");
    parts.put("factValuesRight", "2026-0001\n31 October 2026\n14 November 2026");
    parts.put("title", "Invoice 2026-0001");
    parts.put("documentName", "Invoice 2026-0001");
    parts.put("subtitle", "for work in October 2026");
    parts.put("columnDate", "Date");
    parts.put("columnHorse", "Horse");
    parts.put("columnWork", "Work");
    parts.put("columnTax", "VAT");
    parts.put("columnAmount", "Amount £");
    parts.put("payHeading", "How to pay");
    parts.put("payText", "Please pay £214.80 by 14 November 2026.\nPlease pay by bank transfer.");
    parts.put("nextHeading", "Next visits");
    parts.put("nextText", "Amber Lad 1, Copper Star 41: week of 7 December");
    parts.put("pageWord", "Page");
    parts.put("ofWord", "of");
    return parts;
  }

  static List<Map<String, ?>> rows(int lines) {
    List<Map<String, ?>> rows = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      Map<String, Object> row = row("isLine");
      row.put("visit", "visit " + i);
      row.put("date", 1 + i % 28 + " October");
      row.put("horse", "Amber Lad " + i % 7);
      row.put("work", "Full set");
      row.put("details", "4 shoes, size 1, hot");
      row.put("tax", "S");
      row.put("amount", "104.00");
      rows.add(row);
    }
    for (String kind : List.of("isRule", "isSum", "isSum", "isTotal", "isDue")) {
      Map<String, Object> row = row(kind);
      row.put("label", "Value added tax 20 % of 179.00");
      row.put("amount", "214.80");
      rows.add(row);
    }
    return rows;
  }

  private static Map<String, Object> row(String kind) {
    Map<String, Object> row = new HashMap<>();
    for (String each : List.of("isLine", "isRule", "isSum", "isTotal", "isDue")) {
      row.put(each, each.equals(kind));
    }
    row.put("block", kind.equals("isLine") ? "lines" : "sums");
    return row;
  }
}
