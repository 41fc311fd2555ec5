package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Report;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** Read back by PDFBox, which made none of it. */
class ReportPdfTest {
  private static byte[] print(Report report) {
    return new PdfDocuments(SampleDocuments.settings("en", "GB")).report(report);
  }

  private static Report of(List<Block> blocks) {
    return new Report("x", "Title", "October 2026", "", blocks, InEnglish.TEXTS);
  }

  @Test
  void the_same_report_gives_the_same_bytes() {
    assertArrayEquals(print(SampleReports.margins()), print(SampleReports.margins()));
  }

  @Test
  void figures_stand_with_what_they_rest_on() throws IOException {
    String text = InvoicePdfTest.textOf(print(SampleReports.margins()));
    assertTrue(text.contains("Full set, keg 7 8 1,234.56 112.20 14.02s 80.10d"), text);
    assertTrue(text.contains("s standard · d default · unmarked: measured"), text);
    assertTrue(text.contains("All 40 4,812.50 900.10 120.40 609.61 3,182.39 31.07"), text);
  }

  @Test
  void a_table_over_two_pages_repeats_its_head() throws IOException {
    String text = InvoicePdfTest.textOf(print(SampleReports.margins()));
    assertEquals(3, text.split("Margins by Work, October 2026", -1).length);
  }

  @Test
  void a_heading_never_stands_alone_at_the_foot_of_a_page() throws IOException {
    for (int lines = 30; lines < 60; lines++) {
      List<Block> blocks =
          new ArrayList<>(Collections.nCopies(lines, new Block.Paragraph("words")));
      blocks.add(new Block.Heading(1, "Chapter"));
      blocks.add(new Block.Paragraph("follows"));
      try (PDDocument document = Loader.loadPDF(print(of(blocks)))) {
        for (int page = 0; page < document.getNumberOfPages(); page++) {
          var reader = new org.apache.pdfbox.text.PDFTextStripper();
          reader.setStartPage(page + 1);
          reader.setEndPage(page + 1);
          String text = reader.getText(document);
          assertEquals(text.contains("Chapter"), text.contains("follows"), lines + ": " + text);
        }
      }
    }
  }

  @Test
  void a_parts_head_keeps_two_rows_and_a_total_the_last_two() throws IOException {
    for (int each = 1; each <= 7; each++) {
      List<Block.Row> rows = new ArrayList<>();
      for (int i = 0; i < 110; i++) {
        if (i % each == 0) {
          rows.add(Block.Row.total("part", ""));
        }
        rows.add(Block.Row.of("row", "1"));
      }
      rows.add(Block.Row.total("All", "110"));
      Block table =
          new Block.Table(
              "", List.of(Block.Column.words("Horse", 1), Block.Column.number("Shoes", 1)), rows);
      try (PDDocument document = Loader.loadPDF(print(of(List.of(table))))) {
        int pages = document.getNumberOfPages();
        assertTrue(pages > 1);
        for (int page = 1; page <= pages; page++) {
          var reader = new org.apache.pdfbox.text.PDFTextStripper();
          reader.setSortByPosition(true);
          reader.setStartPage(page);
          reader.setEndPage(page);
          List<String> kinds = reader.getText(document).lines().filter(KINDS::contains).toList();
          int last = kinds.lastIndexOf("part");
          String said = each + " rows a part, page " + page + ": " + kinds;
          assertTrue(last < 0 || kinds.size() - last > Math.min(2, each) || page == pages, said);
          assertTrue(page < pages || kinds.size() >= 3, said);
        }
      }
    }
  }

  private static final List<String> KINDS = List.of("part", "row 1", "All 110");

  @Test
  void a_heading_and_a_tables_head_never_part_from_its_first_row() throws IOException {
    Block table =
        new Block.Table(
            "Caption",
            List.of(Block.Column.words("Horse", 1)),
            List.of(Block.Row.of("first"), Block.Row.of("second")));
    for (int lines = 26; lines < 46; lines++) {
      List<Block> blocks =
          new ArrayList<>(Collections.nCopies(lines, new Block.Paragraph("words")));
      blocks.add(new Block.Heading(1, "Chapter"));
      blocks.add(table);
      blocks.add(table);
      try (PDDocument document = Loader.loadPDF(print(of(blocks)))) {
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
          var reader = new org.apache.pdfbox.text.PDFTextStripper();
          reader.setStartPage(page);
          reader.setEndPage(page);
          String text = reader.getText(document);
          assertTrue(!text.contains("Chapter") || text.contains("first"), lines + ": " + text);
          String afterLastHead = text.substring(text.lastIndexOf("Horse") + 1);
          assertTrue(
              !text.contains("Horse")
                  || afterLastHead.contains("first")
                  || afterLastHead.contains("second"),
              lines + ": " + text);
        }
      }
    }
  }

  @Test
  void a_wide_table_lays_the_sheet_across() throws IOException {
    List<Block.Column> columns = new ArrayList<>();
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      columns.add(Block.Column.number("c" + i, 1));
      cells.add("" + i);
    }
    Block table = new Block.Table("", columns, List.of(Block.Row.of(cells.toArray(new String[0]))));
    try (PDDocument document = Loader.loadPDF(print(of(List.of(table))))) {
      var seen = new PDFRenderer(document).renderImageWithDPI(0, 20);
      assertTrue(seen.getWidth() > seen.getHeight());
    }
  }

  @Test
  void an_empty_report_and_an_empty_table_still_print() throws IOException {
    assertEquals(1, InvoicePdfTest.pagesOf(print(of(List.of()))));
    Block table = new Block.Table("Nothing", List.of(Block.Column.words("Horse", 1)), List.of());
    String text = InvoicePdfTest.textOf(print(of(List.of(new Block.Heading(1, "Due"), table))));
    assertTrue(text.contains("Due") && text.contains("Horse"), text);
  }

  @Test
  void the_pictures_leave_ink_on_the_page() throws IOException {
    try (PDDocument document = Loader.loadPDF(print(SampleReports.margins()))) {
      var page = new PDFRenderer(document).renderImageWithDPI(0, 36);
      long rust = 0;
      for (int x = 0; x < page.getWidth(); x++) {
        for (int y = page.getHeight() / 4; y < page.getHeight() * 3 / 5; y++) {
          int rgb = page.getRGB(x, y) & 0xFFFFFF;
          if ((rgb >> 16) - (rgb & 0xFF) > 60) {
            rust++;
          }
        }
      }
      assertTrue(rust > 200, "points of the first series' colour: " + rust);
    }
  }
}
