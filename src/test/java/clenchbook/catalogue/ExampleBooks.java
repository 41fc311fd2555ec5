package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;
import clenchbook.reading.SmallBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Examples of problems in the making, with the small books that many of them start from. */
abstract class ExampleBooks {
  static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  static final String VISITS = "Date|Owner|Horse|Work|Charge";

  private final List<ProblemExamples.Example> examples = new ArrayList<>();

  /** Adds this part's examples, in the order of the catalogue. */
  abstract void write();

  /** This part's examples. */
  final List<ProblemExamples.Example> all() {
    write();
    return List.copyOf(examples);
  }

  final void add(ProblemKind kind, String title, String remedy, SmallBook book) {
    examples.add(new ProblemExamples.Example(kind, title, remedy, book::write));
  }

  /** A book of visits with one row. */
  static SmallBook visit(String headings, Object... cells) {
    return SmallBook.visits(headings).visit(cells);
  }

  static SmallBook good() {
    return visit(VISITS, DAY, "Ann", "Bramble", "Trim", 45);
  }

  static SmallBook setting(String name, Object value) {
    return good().sheet("Settings", "Setting|Value").row("Settings", name, value);
  }
}
