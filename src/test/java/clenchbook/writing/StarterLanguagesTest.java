package clenchbook.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import clenchbook.book.SheetControl;
import clenchbook.book.SheetKind;
import clenchbook.book.Trip;
import clenchbook.book.Visit;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Terminal;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import clenchbook.reading.SmallBook;
import clenchbook.reading.starter.StarterPlan;
import clenchbook.texts.InEnglish;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The starter of each language: read as what it is, and its examples as nothing. */
class StarterLanguagesTest {
  /** A rate of a code without tax may not be changed, and these texts hang on no other. */
  private static final List<String> FREE = List.of("Rate %");

  private static final List<String> TEXTS = List.of("Name", "Mine", "Address");

  @TempDir Path folder;

  static Stream<String> languages() {
    return StarterPlan.LANGUAGES.stream();
  }

  private Path starter(String language) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    StarterWorkbook.write(language, "clenchbook", bytes);
    return Files.write(folder.resolve(language + ".xlsx"), bytes.toByteArray());
  }

  private static ReadResult read(Path book) throws IOException {
    return BookReader.read(book, ReadOptions.of(Locale.UK));
  }

  private static List<Problem> checked(Path book) {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    Machine machine = new Machine(LocalDate.of(2026, 12, 31), Locale.UK, Optional.empty());
    return OpenBook.read(book, machine, new Terminal(nowhere, nowhere, false)).problems();
  }

  /** They were invoiced, sent, counted at the year's end, and gave a newcomer a strain index. */
  @ParameterizedTest
  @MethodSource("languages")
  void examples_as_they_were_written_count_for_nothing_and_are_named(String language)
      throws IOException {
    Path file = starter(language);
    List<Problem> problems = checked(file);
    assertEquals(List.of(ProblemKind.EXAMPLE_ROWS), problems.stream().map(Problem::kind).toList());
    Book book = read(file).book();
    assertEquals(List.of(), book.visits());
    assertEquals(List.of(), book.strain());
    assertEquals(List.of(), book.payments());
    assertEquals(List.of(), book.purchases());
    String settings = StarterPlan.load(language).sheets().get(13).name();
    for (SheetControl control : book.controls()) {
      if (!control.sheet().equals(settings)) {
        assertEquals(control.rows(), control.ignored(), control.toString());
        assertTrue(
            InEnglish.said(problems.get(0).problem()).contains(control.sheet() + " row"),
            control.sheet());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void every_sheet_heading_setting_and_word_is_known(String language) {
    ReadResult read = changed(StarterPlan.load(language)).read(folder);
    assertEquals(SheetKind.values().length, read.book().present().size());
    assertEquals(
        List.of(),
        read.problems().stream().map(problem -> problem.sentence(InEnglish.TEXTS)).toList());
  }

  /** The starter's own tables, each example changed in one cell that hangs on no other. */
  private static SmallBook changed(StarterPlan plan) {
    SmallBook book = new SmallBook();
    for (StarterPlan.Sheet sheet : plan.sheets()) {
      if (sheet.settings().isEmpty()) {
        List<StarterPlan.Column> columns = sheet.columns();
        book.rows(
            sheet.name(),
            new Object[][] {columns.stream().map(StarterPlan.Column::name).toArray()});
        for (List<String> example : sheet.examples()) {
          book.rows(sheet.name(), new Object[][] {cells(columns, example)});
        }
      } else {
        book.rows(sheet.name(), new Object[][] {{plan.titles().setting(), plan.titles().value()}});
        for (StarterPlan.SettingLine line : sheet.settings()) {
          String offered = line.offered().replace("\"", "");
          Object value = offered.isEmpty() ? "" : offered.split(",")[0];
          book.rows(sheet.name(), new Object[][] {{line.name(), value}});
        }
      }
    }
    return book;
  }

  private static Object[] cells(List<StarterPlan.Column> columns, List<String> example) {
    Object[] cells = new Object[columns.size()];
    boolean changed = false;
    for (int i = 0; i < cells.length; i++) {
      StarterPlan.Column column = columns.get(i);
      String text = i < example.size() ? example.get(i) : "";
      boolean number = column.kind().equals("number") || column.kind().equals("money");
      boolean free = FREE.contains(column.heading());
      cells[i] = text;
      if (number && !text.isEmpty()) {
        cells[i] = Double.parseDouble(text) + (changed || free ? 0 : 1);
        changed |= !free;
      } else if (column.kind().equals("date") && !text.isEmpty()) {
        cells[i] = LocalDate.parse(text);
      } else if (TEXTS.contains(column.heading())) {
        cells[i] = "x";
      }
    }
    return cells;
  }

  /** Whatever the language, the records are those of the English starter, names apart. */
  @ParameterizedTest
  @MethodSource("languages")
  void the_words_of_the_examples_mean_what_they_mean_in_english(String language) {
    assertEquals(
        meanings(changed(StarterPlan.load("en")).read(folder).book()),
        meanings(changed(StarterPlan.load(language)).read(folder).book()));
  }

  private static List<Object> meanings(Book book) {
    List<Object> meanings = new ArrayList<>();
    for (Visit visit : book.visits()) {
      meanings.addAll(List.of(visit.date(), visit.reason(), visit.size(), visit.totalMin()));
    }
    book.work()
        .forEach(
            row -> meanings.addAll(List.of(row.fee(), row.shaping(), row.price(), row.shoes())));
    book.materials().forEach(row -> meanings.addAll(List.of(row.kind(), row.unit())));
    book.trips().forEach(trip -> meanings.add(trip.business()));
    book.purchases().forEach(row -> meanings.addAll(List.of(row.unit(), row.quantity())));
    book.payments().forEach(row -> meanings.addAll(List.of(row.kind(), row.amount())));
    book.taxRates().forEach(row -> meanings.add(row.kind()));
    book.strain().forEach(row -> meanings.addAll(List.of(row.task(), row.toString().length() > 0)));
    meanings.add(book.counts().size());
    meanings.add(book.assets().size());
    book.horses().forEach(row -> meanings.add(row.intervalWeeks()));
    for (Setting setting : Setting.values()) {
      meanings.add(setting == Setting.LANGUAGE ? "" : book.settings().text(setting));
    }
    return meanings;
  }

  /** Every word that a list offers is one that its column knows. */
  @ParameterizedTest
  @MethodSource("languages")
  void every_word_that_a_list_offers_is_read(String language) {
    StarterPlan plan = StarterPlan.load(language);
    int longest =
        plan.sheets().stream()
            .flatMap(sheet -> sheet.columns().stream())
            .mapToInt(column -> offered(column).size())
            .max()
            .orElseThrow();
    for (int choice = 0; choice < longest; choice++) {
      SmallBook book = new SmallBook();
      for (StarterPlan.Sheet sheet : plan.sheets()) {
        addOffered(book, sheet, choice);
      }
      List<String> told =
          book.read(folder).problems().stream()
              .filter(problem -> problem.kind() == ProblemKind.CHOICE_UNKNOWN)
              .map(problem -> problem.sentence(InEnglish.TEXTS))
              .toList();
      assertEquals(List.of(), told);
    }
  }

  /** Only the last purpose that is offered is private. */
  @ParameterizedTest
  @MethodSource("languages")
  void a_private_trip_is_private_in_every_language(String language) {
    StarterPlan.Sheet trips = StarterPlan.load(language).sheets().get(6);
    List<StarterPlan.Column> columns = trips.columns();
    SmallBook book =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(LocalDate.of(2026, 3, 14), "Ada", "Bramble", "Trim", 45)
            .rows(
                trips.name(),
                new Object[][] {columns.stream().map(StarterPlan.Column::name).toArray()});
    List<String> purposes = offered(columns.get(5));
    for (String purpose : purposes) {
      Object[] cells = cells(columns, trips.examples().get(0));
      cells[5] = purpose;
      book.rows(trips.name(), new Object[][] {cells});
    }
    List<Boolean> business = book.read(folder).book().trips().stream().map(Trip::business).toList();
    assertEquals(List.of(true, true, true, false), business);
  }

  private static void addOffered(SmallBook book, StarterPlan.Sheet sheet, int choice) {
    if (sheet.examples().isEmpty() || sheet.title().equals("Headings")) {
      return;
    }
    List<StarterPlan.Column> columns = sheet.columns();
    book.rows(
        sheet.name(), new Object[][] {columns.stream().map(StarterPlan.Column::name).toArray()});
    Object[] cells = cells(columns, sheet.examples().get(0));
    for (int i = 0; i < cells.length; i++) {
      List<String> words = offered(columns.get(i));
      cells[i] = words.isEmpty() ? cells[i] : words.get(Math.min(choice, words.size() - 1));
    }
    book.rows(sheet.name(), new Object[][] {cells});
  }

  private static List<String> offered(StarterPlan.Column column) {
    String list = column.offered();
    return list.startsWith("\"") ? List.of(list.replace("\"", "").split(",")) : List.of();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_list_of_words_is_longer_than_a_cell_may_offer(String language) {
    for (StarterPlan.Sheet sheet : StarterPlan.load(language).sheets()) {
      for (StarterPlan.Column column : sheet.columns()) {
        assertTrue(column.offered().length() <= 255, column.offered());
      }
    }
  }

  @Test
  void one_changed_cell_makes_an_example_the_farriers_own_row() {
    StarterPlan plan = StarterPlan.load("en");
    StarterPlan.Sheet visits = plan.sheets().get(0);
    SmallBook book =
        new SmallBook()
            .rows(
                "Visits",
                new Object[][] {visits.columns().stream().map(StarterPlan.Column::name).toArray()});
    Object[] cells = cells(visits.columns(), visits.examples().get(0));
    Object[] untouched = cells.clone();
    untouched[7] = 65;
    untouched[12] = visits.examples().get(0).get(12);
    book.rows("Visits", untouched, cells);
    ReadResult read = book.read(folder);
    assertEquals(1, read.book().visits().size());
    assertEquals(new SheetControl("Visits", 2, 1), read.book().controls().get(0));
    assertTrue(
        InEnglish.said(read.problems().get(0).problem()).endsWith("Visits row 2"), read::toString);
  }
}
