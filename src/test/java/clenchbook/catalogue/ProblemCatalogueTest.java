package clenchbook.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Terminal;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.problem.Severity;
import clenchbook.reports.month.PaymentRules;
import clenchbook.reports.month.RenamedOwners;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of problem has a small book that shows it and an entry in docs/problems.md, which is
 * made of these books. To make it anew, run this class with {@code -Dcatalogue.write=true}.
 */
class ProblemCatalogueTest {
  private static final Path PAGE = Path.of("docs", "problems.md");

  @TempDir Path folder;

  static List<ProblemExamples.Example> examples() {
    return ProblemExamples.all();
  }

  static List<Problem> problems(Path book) {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    Machine machine = new Machine(LocalDate.of(2026, 12, 31), Locale.UK, Optional.empty());
    OpenBook open = OpenBook.read(book, machine, new Terminal(nowhere, nowhere, false));
    List<Problem> problems = new ArrayList<>(open.problems());
    problems.addAll(
        PaymentRules.problems(open.book().payments(), List.of(), LocalDate.of(2026, 1, 1)));
    problems.addAll(RenamedOwners.problems(open.jobs().index(), Set.of("Ann Archer")));
    return problems;
  }

  private Problem shown(ProblemExamples.Example example) throws IOException {
    Path own = Files.createDirectories(folder.resolve(example.kind().name()));
    List<Problem> all = problems(example.book().apply(own));
    return all.stream()
        .filter(problem -> problem.kind() == example.kind())
        .findFirst()
        .orElseGet(() -> fail(example.kind() + " is not shown by its book, but: " + all));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void each_book_shows_its_kind_of_problem_and_the_program_says_what_was_expected(
      ProblemExamples.Example example) throws IOException {
    Problem problem = shown(example);
    assertFalse(InEnglish.said(problem.problem()).isBlank());
    assertEquals(1, problem.sentence(InEnglish.TEXTS).lines().count());
  }

  @Test
  void every_kind_has_its_book_in_the_order_of_the_kinds() {
    List<ProblemKind> shown = examples().stream().map(ProblemExamples.Example::kind).toList();
    assertEquals(Arrays.asList(ProblemKind.values()), shown);
  }

  @Test
  void the_page_of_problems_is_what_the_books_show() throws IOException {
    StringBuilder page = new StringBuilder();
    page.append("# Problems, and what to do about them\n\n");
    page.append("Made from the small books that test each kind of problem.\n\n");
    page.append(
        "*held*: the row is left out until it is mended. *warning*: the row is used, but look at"
            + " it. ");
    page.append(
        "*note*: worth knowing. `check` prints each as `Sheet!Cell: what is wrong; expected"
            + " what`.\n");
    for (ProblemExamples.Example example : examples()) {
      append(page, example, shown(example));
    }
    if (Boolean.getBoolean("catalogue.write")) {
      Files.writeString(PAGE, page.toString());
    }
    assertEquals(page.toString(), Files.readString(PAGE).replace("\r\n", "\n"));
  }

  private static void append(StringBuilder page, ProblemExamples.Example example, Problem problem) {
    String value = problem.value().isEmpty() ? "a blank cell" : "`" + brief(problem.value()) + "`";
    String place = problem.at().toString().isEmpty() ? "the whole book" : problem.at().toString();
    page.append("\n## ").append(example.title()).append("\n\n");
    page.append("- ").append(problem.severity().word()).append(", for example in ").append(place);
    boolean valued = !problem.at().cell().isEmpty() && problem.severity() != Severity.NOTE;
    page.append(valued ? ": " + value : "").append('\n');
    page.append("- says: `").append(brief(problem.sentence(InEnglish.TEXTS))).append("`\n");
    page.append("- remedy: ").append(example.remedy()).append('\n');
  }

  private static String brief(String text) {
    return text.length() > 190 ? text.substring(0, 60) + "…" : text;
  }
}
