package clenchbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemLinesTest {
  private static Problem held(int row, String problem) {
    return Problem.held(
        ProblemKind.DATE_MISSING,
        new CellRef("Visits", row, "A"),
        Message.literal(problem),
        Message.literal("a day"),
        "");
  }

  private static Problem warning(String column, int row, String problem) {
    return Problem.warning(
        ProblemKind.OWNER_UNKNOWN,
        new CellRef("Visits", row, column),
        Message.literal(problem),
        Message.literal("a name"),
        "x");
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
        ProblemLines.of(
            problems, List.of(Message.literal("the currency is GBP")), InEnglish.TEXTS));
  }

  /** Every shod row without nails drowned an old book: ten lines a kind and sheet are too many. */
  @Test
  void a_kind_that_repeats_on_a_sheet_is_told_five_times_and_counted() {
    List<Problem> problems = new ArrayList<>();
    for (int row = 2; row < 302; row++) {
      problems.add(warning("C", row, "Bob " + row + " is not in Owners"));
    }
    List<String> lines = ProblemLines.grouped(problems, InEnglish.TEXTS);
    assertEquals(6, lines.size());
    assertEquals("Visits!C6: Bob 6 is not in Owners; expected a name", lines.get(4));
    assertEquals("Visits: and 295 more of this kind, the last in C301", lines.get(5));
  }

  @Test
  void each_kind_and_each_sheet_is_counted_by_itself() {
    List<Problem> problems = new ArrayList<>();
    for (int row = 2; row < 8; row++) {
      problems.add(warning("C", row, "Bob is not in Owners"));
      problems.add(held(row, "Date is missing"));
      problems.add(
          Problem.warning(
              ProblemKind.OWNER_UNKNOWN,
              new CellRef("Payments", row, "B"),
              Message.literal("x"),
              Message.literal("a name"),
              "x"));
    }
    List<String> lines = ProblemLines.grouped(problems, InEnglish.TEXTS);
    assertEquals(18, lines.size());
    assertTrue(
        lines.contains("Payments: and 1 more of this kind, the last in B7"), lines::toString);
  }

  @Test
  void five_cells_of_one_kind_have_a_line_each() {
    List<Problem> problems = new ArrayList<>();
    for (int row = 2; row < 7; row++) {
      problems.add(held(row, "Date is missing"));
    }
    List<String> lines = ProblemLines.grouped(problems, InEnglish.TEXTS);
    assertEquals(5, lines.size());
    assertTrue(lines.get(4).startsWith("Visits!A6: "));
  }

  @Test
  void a_book_without_problems_says_so() {
    assertEquals(
        List.of("No problems found."), ProblemLines.of(List.of(), List.of(), InEnglish.TEXTS));
  }
}
