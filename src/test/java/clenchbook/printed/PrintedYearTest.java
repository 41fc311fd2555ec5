package clenchbook.printed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clenchbook.cli.Clenchbook;
import clenchbook.reading.texts.TextFiles;
import clenchbook.texts.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The preparer's page of three sample books, read back: three sheets at most, the first with the
 * year, what the book covers, the profit, the form's lines, what to look at and what was not
 * computed; and every number on it in a file of figures.
 */
class PrintedYearTest {
  private static final int MOST_PAGES = 3;

  /** Numbers that are words of the program or of a law, not figures of the book. */
  private static final List<String> FIXED =
      List.of(
          "6 April",
          "Form 4797",
          "0 of",
          "12 of 12 months",
          "Box 1",
          "Box 4",
          "Box 5",
          "Box 6",
          "Box 7");

  @TempDir private Path folder;

  private Path run(String book) throws IOException {
    Path copy = folder.resolve(book + ".xlsx");
    Files.copy(Path.of("sample-workbooks", book + ".xlsx"), copy);
    int exit =
        Clenchbook.execute("year-end", copy.toString(), "--year", "2025", "--out", "" + folder);
    assertTrue(exit == 0 || exit == 1, "exit " + exit);
    return folder.resolve("2025");
  }

  @ParameterizedTest
  @CsvSource({
    "thornfield-metric, en, 2025-26, 8",
    "cedar-hollow-imperial, en, 2025, 4",
    "lindenau-small, de, 2025, 12"
  })
  void the_first_sheet_says_it_all_and_there_are_three_at_most(
      String book, String language, String year, int months) throws IOException {
    assumeTrue(TextFiles.OWN.speaks(language), "said in English until all texts are there");
    Texts texts = TextFiles.in(language, "");
    String lines = texts.say("tax.lines");
    String left = texts.say("tax.notComputed");
    String covered =
        months == 12 ? texts.say("tax.coverage.all", months) : months + " of 12 months";
    Path run = run(book);
    for (Path page : pages(run)) {
      try (PDDocument paper = Loader.loadPDF(page.toFile())) {
        assertTrue(paper.getNumberOfPages() <= MOST_PAGES, page + " has more than three sheets");
      }
    }
    String first = first(run.resolve("tax-summary.pdf"));
    String title = texts.say("tax.title", year);
    for (String words : List.of(title, lines, left, texts.say("tax.look"), covered)) {
      assertTrue(first.contains(words), words + " in:\n" + first);
    }
    assertTrue(first.indexOf(lines) < first.indexOf(left), first);
  }

  @Test
  void every_number_of_an_english_page_stands_in_a_file() throws IOException {
    for (String book : List.of("thornfield-metric", "cedar-hollow-imperial")) {
      Path run = run(book);
      FigureUniverse figures = new FigureUniverse(run);
      List<String> missing = new ArrayList<>();
      for (Path page : pages(run)) {
        missing.addAll(figures.missing(PaperText.of(page), FIXED));
      }
      assertEquals("", String.join("\n", missing), book);
      Files.delete(run.resolve("figures/tax-summary.csv"));
      Files.delete(run.resolve("accountant/lines.csv"));
      Files.delete(run.resolve("accountant/journal.csv"));
      assertFalse(
          new FigureUniverse(run)
              .missing(PaperText.of(run.resolve("tax-summary.pdf")), FIXED)
              .isEmpty(),
          "a figure in no file is noticed");
      Files.delete(folder.resolve(book + ".xlsx"));
      delete(run);
    }
  }

  private static void delete(Path run) throws IOException {
    try (Stream<Path> files = Files.walk(run)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  private static List<Path> pages(Path run) throws IOException {
    try (Stream<Path> files = Files.list(run)) {
      return files
          .filter(file -> file.getFileName().toString().matches("tax-summary.*\\.pdf"))
          .sorted()
          .toList();
    }
  }

  private static String first(Path pdf) throws IOException {
    try (PDDocument paper = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      text.setSortByPosition(true);
      text.setEndPage(1);
      return text.getText(paper).replaceAll("\\s+", " ");
    }
  }
}
