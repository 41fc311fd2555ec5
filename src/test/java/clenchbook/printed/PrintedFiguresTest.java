package clenchbook.printed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.cli.Clenchbook;
import clenchbook.print.pdf.ArchiveJudge;
import clenchbook.print.pdf.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sample books' reports and page as printed, read back: every number on them stands in a file
 * of figures, rounded as people read it, and the tables of money cell by cell in their rows. No
 * report is longer than ten minutes at the kitchen table allow. Every document of the month,
 * letters included, keeps to PDF/A-2b and PDF/UA-1 in the judgement of veraPDF.
 */
class PrintedFiguresTest {
  /** Pages that a report may have; what is beyond goes to its annex. */
  private static final Map<String, Integer> MOST_PAGES =
      Map.of("comparisons", 3, "stock", 4, "horses", 5, "margins", 4, "workload", 3);

  /** Numbers that are words of the program, not figures of the book, with what they are. */
  private static final List<String> FIXED =
      List.of(
          "95 % interval", // the confidence level
          "a dot at 2 is 2 more", // an example
          "drawing the horses again 2000 times", // how often
          "a book of more than 5000 jobs", // from how many
          "(his method 10)", // Newcombe's name for it
          "reaches over 0", // none
          "12 months" // a year
          );

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric", "cedar-hollow-imperial"})
  void every_printed_number_stands_in_the_figures(String book) throws Exception {
    Path copy = folder.resolve(book + ".xlsx");
    Files.copy(Path.of("sample-workbooks", book + ".xlsx"), copy);
    int exit =
        Clenchbook.execute(
            "month-end", copy.toString(), "--month", "2026-10", "--out", folder.toString());
    assertTrue(exit == 0 || exit == 1, "exit " + exit);
    Path run = folder.resolve("2026-10");
    assertEquals("", String.join("\n", missing(run)));
    assertEquals("", String.join("\n", PrintedTables.faults(run)));
    assertEquals(Map.of(), tooLong(run));
    assertEquals("", String.join("\n", ArchiveJudge.brokenRulesBelow(run)));
    assertEquals("390 wide, 0 parts scroll, 5 pictures", onAPhone(run.resolve("index.html")));
    change(run.resolve("figures/margins.csv"));
    change(run.resolve("figures/comparisons.csv"));
    assertFalse(PrintedTables.faults(run).isEmpty(), "a changed figure is noticed");
    Files.delete(run.resolve("figures/jobs.csv"));
    Files.delete(run.resolve("figures/margins.csv"));
    assertFalse(missing(run).isEmpty(), "a figure in no file is noticed");
  }

  /** The year's papers too; their figures have tests of their own. */
  @Tag("demand")
  @ParameterizedTest
  @ValueSource(strings = {"thornfield-metric", "cedar-hollow-imperial"})
  void the_years_documents_last(String book) throws Exception {
    Path copy = folder.resolve(book + ".xlsx");
    Files.copy(Path.of("sample-workbooks", book + ".xlsx"), copy);
    Clenchbook.execute("year-end", copy.toString(), "--year", "2025", "--out", folder.toString());
    assertEquals("", String.join("\n", ArchiveJudge.brokenRulesBelow(folder.resolve("2025"))));
  }

  private static List<String> missing(Path run) throws IOException {
    FigureUniverse figures = new FigureUniverse(run);
    List<String> missing = new ArrayList<>();
    for (Path paper : papers(run)) {
      // Its table of methods holds their sources and ranges; WorkloadFigures has tests of its own.
      if (paper.endsWith("annex/workload.pdf")) {
        continue;
      }
      figures
          .missing(PaperText.of(paper), FIXED)
          .forEach(fault -> missing.add(run.relativize(paper) + ": " + fault));
    }
    return missing;
  }

  /** On a screen 390 points wide nothing needs to be moved sideways, no amount and no picture. */
  private static String onAPhone(Path page) throws Exception {
    try (Browser browser = Browser.open(390, 844)) {
      browser.go(page.toUri());
      return browser
          .ask(
              "const wide = [...document.querySelectorAll('.scroll, svg')]"
                  + ".filter(e => e.scrollWidth > e.clientWidth + 1"
                  + " || e.getBoundingClientRect().right > innerWidth);"
                  + "return document.documentElement.scrollWidth + ' wide, ' + wide.length"
                  + " + ' parts scroll, ' + document.querySelectorAll('svg').length + ' pictures'")
          .asText();
    }
  }

  /** The reports, their annexes and the page; letters have tests of their own. */
  private static List<Path> papers(Path run) throws IOException {
    List<Path> papers = new ArrayList<>(List.of(run.resolve("index.html")));
    for (Path part : List.of(run, run.resolve("annex"))) {
      try (Stream<Path> files = Files.list(part)) {
        files.filter(file -> file.toString().endsWith(".pdf")).sorted().forEach(papers::add);
      }
    }
    assertEquals(1 + 5 + 4, papers.size(), papers.toString());
    return papers;
  }

  private static Map<String, Integer> tooLong(Path run) throws IOException {
    Map<String, Integer> tooLong = new TreeMap<>();
    for (Map.Entry<String, Integer> most : MOST_PAGES.entrySet()) {
      try (PDDocument report = Loader.loadPDF(run.resolve(most.getKey() + ".pdf").toFile())) {
        if (report.getNumberOfPages() > most.getValue()) {
          tooLong.put(most.getKey(), report.getNumberOfPages());
        }
      }
    }
    return tooLong;
  }

  /** Another first decimal in the middle line. */
  private static void change(Path table) throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(table));
    String line = lines.get(lines.size() / 2);
    int digit = line.indexOf('.') + 1;
    char other = line.charAt(digit) == '9' ? '0' : (char) (line.charAt(digit) + 1);
    lines.set(lines.size() / 2, line.substring(0, digit) + other + line.substring(digit + 1));
    Files.write(table, lines);
  }
}
