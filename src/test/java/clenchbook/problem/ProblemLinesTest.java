package clenchbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemLinesTest {
  private static Problem held(int row, String problem) {
    return Problem.held(
        ProblemKind.DATE_MISSING, new CellRef("Visits", row, "A"), problem, "a day", "");
  }

  private static Problem warning(String column, int row, String problem) {
    return Problem.warning(
        ProblemKind.OWNER_UNKNOWN, new CellRef("Visits", row, column), problem, "a name", "x");
  }

  @Test
  void what_holds_rows_back_comes_first_and_the_counts_last() {
    List<Problem> problems =
        List.of(warning("C", 2, "Bob is not in Owners"), held(3, "Date is missing"));
    assertEquals(
        List.of(
            "Rows held back: not billed and not counted until mended",
            "Visits!A3: Date is missing; expected a day",
            "",
            "Warnings: used all the same, but worth a look",
            "Visits!C2: Bob is not in Owners; expected a name",
            "",
            "Assumed, because the book does not say",
            "  the currency is GBP",
            "",
            "1 row held back, 1 warning, 0 notes."),
        ProblemLines.of(problems, List.of("the currency is GBP")));
  }

  @Test
  void three_hundred_rows_with_one_cause_are_one_line() {
    List<Problem> problems = new ArrayList<>();
    for (int row = 2; row < 302; row++) {
      problems.add(warning("C", row, "Bob is not in Owners"));
    }
    assertEquals(
        List.of(
            "Visits!C2: Bob is not in Owners; expected a name (and 299 more like it, the last in"
                + " C301)"),
        ProblemLines.grouped(problems));
  }

  @Test
  void many_values_of_one_cause_in_one_column_are_one_line_as_well() {
    List<Problem> problems = new ArrayList<>();
    for (int row = 2; row < 52; row++) {
      problems.add(warning("C", row, "Bob " + row + " is not in Owners"));
      problems.add(warning("D", row, "Ann is not in Owners"));
    }
    assertEquals(2, ProblemLines.grouped(problems).size());
  }

  @Test
  void a_few_cells_of_one_cause_have_a_line_each() {
    List<Problem> problems = new ArrayList<>();
    for (int row = 2; row < 10; row++) {
      problems.add(held(row, "Date is missing"));
    }
    List<String> lines = ProblemLines.grouped(problems);
    assertEquals(8, lines.size());
    assertTrue(lines.get(7).startsWith("Visits!A9: "));
  }

  @Test
  void a_book_without_problems_says_so() {
    assertEquals(List.of("No problems found."), ProblemLines.of(List.of(), List.of()));
  }
}
