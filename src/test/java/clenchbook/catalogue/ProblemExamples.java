package clenchbook.catalogue;

import clenchbook.problem.ProblemKind;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** A small book for each kind of problem, with what the catalogue says about it. */
final class ProblemExamples {
  /**
   * One kind of problem.
   *
   * @param title what is wrong, as a heading
   * @param remedy what the farrier can do
   * @param book writes the book that shows it into a folder
   */
  record Example(ProblemKind kind, String title, String remedy, Function<Path, Path> book) {}

  private ProblemExamples() {}

  /** All examples, in the order of the catalogue. */
  static List<Example> all() {
    return Stream.of(
            new CellExamples(),
            new SheetExamples(),
            new NameExamples(),
            new TradeExamples(),
            new DocumentExamples())
        .flatMap(part -> part.all().stream())
        .toList();
  }
}
