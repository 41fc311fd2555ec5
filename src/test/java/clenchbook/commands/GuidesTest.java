package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.starter.StarterPlan;
import clenchbook.reading.words.StarterWords;
import clenchbook.texts.Texts;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Types every command that stands in a guide of a language, {@code docs/guide.de.md}, in order. */
class GuidesTest {
  private static final Path DOCS = Path.of("docs");
  private static final Pattern GUIDE = Pattern.compile("guide\\.([a-z]{2})\\.md");
  private static final Pattern BLOCK =
      Pattern.compile("^```\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(#[^)]*)?\\)");

  @TempDir private Path folder;

  static List<String> languages() throws IOException {
    try (Stream<Path> files = Files.list(DOCS)) {
      return files
          .map(file -> GUIDE.matcher(file.getFileName().toString()))
          .filter(matcher -> matcher.matches())
          .map(matcher -> matcher.group(1))
          .sorted()
          .toList();
    }
  }

  private static String guide(String language) throws IOException {
    return Files.readString(DOCS.resolve("guide." + language + ".md"));
  }

  private static List<List<String>> commands(String language) throws IOException {
    return BLOCK
        .matcher(guide(language))
        .results()
        .map(MatchResult::group)
        .flatMap(String::lines)
        .filter(line -> line.startsWith("clenchbook "))
        .map(line -> List.of(line.substring("clenchbook ".length()).split(" ")))
        .toList();
  }

  @Test
  void there_are_guides_and_only_in_languages_that_the_program_speaks() throws IOException {
    assertTrue(languages().contains("de"));
    assertTrue(Texts.LANGUAGES.containsAll(languages()), languages().toString());
    assertTrue(StarterPlan.LANGUAGES.containsAll(languages()), languages().toString());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void what_a_guide_names_beside_it_is_there(String language) throws IOException {
    List<String> links =
        LINK.matcher(guide(language)).results().map(found -> found.group(1)).toList();
    assertEquals(List.of(), links.stream().filter(link -> !there(link)).toList());
    assertTrue(links.size() >= 3, links.toString());
  }

  private static boolean there(String link) {
    return Files.exists(DOCS.resolve(link));
  }

  /** The commands lead from a new book to an invoice that is out, and each of them is done. */
  @ParameterizedTest
  @MethodSource("languages")
  void the_commands_of_a_guide_lead_to_the_first_invoice(String language) throws IOException {
    List<List<String>> commands = commands(language);
    List<String> names = commands.stream().map(words -> words.get(0)).toList();
    assertEquals(List.of("new", "check", "month-end", "send", "send", "backup"), names);
    assertEquals(List.of("--language", language), commands.get(0).subList(2, 4));

    for (List<String> words : commands) {
      Typed run = type(words);
      assertEquals(0, run.exit(), words + " said " + run.all());
      if (words.get(0).equals("new")) {
        writeAVisit(language, book(words));
      }
    }

    String name = book(commands.get(0)).getFileName().toString().replace(".xlsx", "");
    String issued =
        Files.readString(folder.resolve(name + " reports/2026-01/figures/invoices.csv"));
    assertEquals(2, issued.lines().count(), issued);
    assertTrue(issued.contains("2026-0001") && issued.contains(",issued"), issued);
    assertTrue(Files.exists(folder.resolve(commands.get(5).get(3))));
  }

  private Path book(List<String> words) {
    return folder.resolve(words.get(1));
  }

  private Typed type(List<String> words) {
    List<String> options = new ArrayList<>(words.subList(2, words.size()));
    int to = options.indexOf("--to");
    if (to >= 0) {
      options.set(to + 1, folder.resolve(options.get(to + 1)).toString());
    }
    return Typed.type(words.get(0), book(words), options.toArray(String[]::new));
  }

  /** What the guide asks for at the least, written over the starter's first example. */
  private static void writeAVisit(String language, Path book) throws IOException {
    StarterWords words = StarterWords.of(language);
    try (InputStream in = new FileInputStream(book.toFile());
        Workbook workbook = new XSSFWorkbook(in)) {
      Sheet settings = workbook.getSheet(words.sheet("Settings"));
      put(row(settings, words.setting("Country")), 1, "DE");
      put(row(settings, words.setting("Currency")), 1, "EUR");
      Sheet visits = workbook.getSheet(words.sheet("Visits"));
      Map<String, Integer> columns = columns(visits.getRow(0));
      Map.of("Date", "2026-01-13", "Owner", "Anna Alder", "Horse", "Bess", "Charge", "45")
          .forEach(
              (heading, value) ->
                  put(visits.getRow(1), columns.get(words.heading("Visits", heading)), value));
      try (OutputStream out = Files.newOutputStream(book)) {
        workbook.write(out);
      }
    }
  }

  private static Row row(Sheet sheet, String first) {
    for (Row row : sheet) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals(first)) {
        return row;
      }
    }
    throw new AssertionError("no row " + first + " in " + sheet.getSheetName());
  }

  private static Map<String, Integer> columns(Row headings) {
    Map<String, Integer> columns = new HashMap<>();
    headings.forEach(cell -> columns.put(cell.toString(), cell.getColumnIndex()));
    return columns;
  }

  private static void put(Row row, int column, String value) {
    row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK).setCellValue(value);
  }
}
