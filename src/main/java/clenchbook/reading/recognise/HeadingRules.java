package clenchbook.reading.recognise;

import clenchbook.problem.NearestName;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.words.SheetWords;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Says what is odd about the headings of a table that is read. */
final class HeadingRules {
  private static final int SHORTEST_FOR_OFFER = 5;
  private static final String OWNER = "Owner";

  private final SheetLayout layout;
  private final SheetWords words;
  private final Consumer<Problem> problems;

  HeadingRules(SheetLayout layout, SheetWords words, Consumer<Problem> problems) {
    this.layout = layout;
    this.words = words;
    this.problems = problems;
  }

  void say() {
    Set<Integer> said = new HashSet<>();
    for (Headings.Twice twice : layout.headings().twice()) {
      problems.accept(twice(twice));
      said.add(twice.later().column());
    }
    Set<String> missing = new HashSet<>(words.canonicalHeadings());
    missing.removeAll(layout.columns().keySet());
    for (HeadingCell heading : layout.headings().cells()) {
      boolean open = heading.heading().isEmpty() && !heading.told();
      if (open && !said.contains(heading.cell().column())) {
        offer(heading.cell(), missing)
            .ifPresent(meant -> problems.accept(unknown(heading.cell(), meant)));
      }
    }
  }

  private Problem twice(Headings.Twice twice) {
    String later = SoundCells.brief(twice.later().shown());
    String left = SoundCells.brief(twice.left().shown());
    BookName means = BookName.of(layout.kind().title(), twice.heading());
    String at = layout.heading(twice.left().column()).cell();
    return Problem.warning(
        ProblemKind.HEADING_TWICE,
        layout.heading(twice.later().column()),
        Message.of("sheets.heading.twice", later, left, at, means),
        Message.of("sheets.heading.oneColumn", means),
        later);
  }

  /**
   * The heading that a misspelt one most likely is; only one that no other column has. Short words
   * are near to too many others; but without an owner hardly a row can be billed.
   */
  private static Optional<String> offer(Cell cell, Set<String> missing) {
    int length = cell.shown().strip().length();
    boolean heading = HeadingReader.isHeading(cell);
    if (heading && length == SHORTEST_FOR_OFFER - 1 && missing.contains(OWNER)) {
      return NearestName.find(cell.shown(), Set.of(OWNER));
    }
    return heading && length >= SHORTEST_FOR_OFFER
        ? NearestName.find(cell.shown(), missing)
        : Optional.empty();
  }

  private Problem unknown(Cell cell, String meant) {
    return Problem.warning(
        ProblemKind.HEADING_UNKNOWN,
        layout.heading(cell.column()),
        Message.of("sheets.heading.unknown", cell.shown()),
        Message.of("sheets.heading.ifMeant", meant),
        cell.shown());
  }
}
