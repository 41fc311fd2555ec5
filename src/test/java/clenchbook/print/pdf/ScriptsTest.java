package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.letters.Addressee;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.PrintedLine;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names in scripts that the text faces lack, read back by PDFBox and Poppler. */
class ScriptsTest {
  private static final List<String> NAMES =
      List.of("נגה בן־דוד", "شهرزاد الفارس", "लक्ष्मी सिंह", "สมหญิง ใจดี", "王小明", "さくら 桜子", "김철수");

  private static InvoiceDocument invoice(List<String> names) {
    InvoiceDocument usual = SampleDocuments.invoice("en", "GB", "GBP");
    DocumentHead head = usual.head();
    List<PrintedLine> lines = new ArrayList<>();
    for (String name : names) {
      lines.add(
          SampleDocuments.line(1 + lines.size(), name, "Trim of " + name, "for " + name, "9.99"));
    }
    return new InvoiceDocument(
        new DocumentHead(
            head.from(),
            new Addressee(names.get(0), names.subList(1, names.size()), Optional.empty()),
            head.number(),
            head.date(),
            head.locale(),
            head.currency()),
        usual.month(),
        usual.due(),
        lines,
        usual.totals(),
        usual.settlements(),
        usual.amountDue(),
        usual.pay(),
        usual.nextVisits(),
        usual.remarks());
  }

  private static byte[] print(List<String> names) {
    return new PdfDocuments(SampleDocuments.settings("en", "GB")).invoice(invoice(names));
  }

  @Test
  void every_name_is_read_back_in_the_address_and_in_each_column() throws IOException {
    byte[] pdf = print(NAMES);
    for (boolean sorted : new boolean[] {true, false}) {
      String text = text(pdf, sorted);
      for (String name : NAMES) {
        int times = text.split(Pattern.quote(name), -1).length - 1;
        assertEquals(4, times, name + " in\n" + text);
      }
      assertFalse(text.contains("\uFFFD"), text);
    }
    assertArrayEquals(pdf, print(NAMES), "the same bytes on every run");
  }

  private static String text(byte[] pdf, boolean sorted) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper reader = new PDFTextStripper();
      reader.setSortByPosition(sorted);
      return reader.getText(document);
    }
  }

  @Test
  void poppler_reads_the_same(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("names.pdf");
    Files.write(file, print(NAMES));
    Process reader =
        new ProcessBuilder("pdftotext", file.toString(), "-").redirectErrorStream(true).start();
    String text = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(reader.waitFor(60, TimeUnit.SECONDS));
    for (String name : NAMES) {
      assertTrue(text.contains(name), name + " in\n" + text);
    }
  }

  @Test
  void a_name_is_heard_in_the_order_it_is_spoken() throws IOException {
    String read = TagsRead.of(print(NAMES));
    for (String name : NAMES) {
      assertTrue(read.contains("  TD Trim of " + name + " for " + name + "\n"), read);
      assertTrue(read.contains("P " + name + "\n"), read);
    }
  }

  @Test
  void it_lasts_and_every_face_is_embedded_as_a_subset() throws IOException {
    byte[] pdf = print(NAMES);
    assertEquals(List.of(), ArchiveJudge.brokenRules(pdf));
    assertTrue(pdf.length < 200_000, pdf.length + " bytes");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Set<String> faces = new TreeSet<>();
      for (PDPage page : document.getPages()) {
        addFaces(page.getResources(), faces);
      }
      for (String script : List.of("Hebrew", "Arabic", "Devanagari", "Thai", "CJKjp", "CJKkr")) {
        assertTrue(faces.contains("AAAAAA+NotoSans" + script + "-Regular"), faces.toString());
      }
      assertTrue(faces.contains("AAAAAA+NotoSansHebrew-Bold"), "horses are bold: " + faces);
    }
  }

  private static void addFaces(PDResources resources, Set<String> faces) throws IOException {
    for (COSName name : resources.getFontNames()) {
      assertTrue(resources.getFont(name).isEmbedded());
      faces.add(resources.getFont(name).getName());
    }
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDFormXObject form) {
        addFaces(form.getResources(), faces);
      }
    }
  }

  @Test
  void han_letters_are_japanese_where_there_is_kana_and_chinese_elsewhere() throws IOException {
    assertTrue(faces(List.of("王小明")).contains("AAAAAA+NotoSansCJKsc-Regular"));
    assertFalse(faces(List.of("王小明")).contains("AAAAAA+NotoSansCJKjp-Regular"));
    assertFalse(faces(List.of("さくら 桜子")).contains("AAAAAA+NotoSansCJKsc-Regular"));
  }

  private static Set<String> faces(List<String> names) throws IOException {
    try (PDDocument document = Loader.loadPDF(print(names))) {
      Set<String> faces = new TreeSet<>();
      addFaces(document.getPage(0).getResources(), faces);
      return faces;
    }
  }

  /** The document without such names is as it was before there were such faces. */
  @Test
  void a_letter_in_latin_greek_and_cyrillic_knows_nothing_of_them() throws IOException {
    byte[] usual =
        new PdfDocuments(SampleDocuments.settings("en", "GB"))
            .invoice(SampleDocuments.invoice("en", "GB", "GBP"));
    try (PDDocument document = Loader.loadPDF(usual)) {
      Set<String> faces = new TreeSet<>();
      addFaces(document.getPage(0).getResources(), faces);
      assertEquals(
          Set.of(
              "AAAAAA+NotoSans-Bold",
              "AAAAAA+NotoSans-Regular",
              "AAAAAA+NotoSerif-Bold",
              "AAAAAA+NotoSerif-Regular"),
          faces);
    }
  }

  /** A name stands in its column: its ink begins at the column's edge, as Latin ink does. */
  @ParameterizedTest
  @CsvSource({"נגה", "شهرزاد", "लक्ष्मी", "สมหญิง", "王小明", "さくら", "김철수", "Bess"})
  void a_name_is_drawn_at_the_left_edge_of_its_column(String name) throws IOException {
    try (PDDocument document = Loader.loadPDF(print(List.of(name)))) {
      var picture = new PDFRenderer(document).renderImage(0, 2);
      // The horse's column is 90 points wide, from 70 points right of the margin of 71.
      int from = 2 * (71 + 70);
      int first = Integer.MAX_VALUE;
      int last = 0;
      int line = 2 * Math.round(lineOf(document, "Trim of"));
      for (int y = line - 15; y < line + 3; y++) {
        for (int x = from - 2; x < from + 2 * 90; x++) {
          if ((picture.getRGB(x, y) & 0xFF) < 100) {
            first = Math.min(first, x);
            last = Math.max(last, x);
          }
        }
      }
      assertTrue(first >= from - 1 && first < from + 8, name + " begins " + (first - from));
      assertTrue(last > from + 10 && last < from + 2 * 60, name + " ends " + (last - from));
    }
  }

  /** How far down the page a text stands, in points. */
  private static float lineOf(PDDocument document, String words) throws IOException {
    float[] found = {0};
    PDFTextStripper reader =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> letters) throws IOException {
            if (text.contains(words)) {
              found[0] = letters.get(0).getY();
            }
            super.writeString(text, letters);
          }
        };
    reader.setSortByPosition(true);
    reader.getText(document);
    return found[0];
  }

  @Test
  void a_report_prints_them_in_tables_and_at_bars() throws IOException {
    List<Block> blocks = new ArrayList<>();
    List<Block.Row> rows = NAMES.stream().map(name -> Block.Row.of(name, "1")).toList();
    blocks.add(
        new Block.Table(
            "Horses",
            List.of(Block.Column.words("Horse", 3), Block.Column.number("Shoes", 1)),
            rows));
    List<Double> values = NAMES.stream().map(name -> 2.0).toList();
    List<String> labels = NAMES.stream().map(name -> "2").toList();
    blocks.add(
        new Block.Picture(
            "Shoes",
            "Two each.",
            new Chart.Columns(
                "",
                "",
                NAMES,
                List.of(new Chart.Series("shoes", values, labels)),
                false,
                true,
                List.of())));
    Report report = new Report("horses", "Horses", "October 2026", "", blocks, InEnglish.TEXTS);
    byte[] pdf = new PdfDocuments(SampleDocuments.settings("en", "GB")).report(report);
    assertEquals(List.of(), ArchiveJudge.brokenRules(pdf));
    String text = text(pdf, true);
    NAMES.forEach(name -> assertTrue(text.contains(name), name + " in\n" + text));
  }
}
