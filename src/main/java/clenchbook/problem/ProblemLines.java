package clenchbook.problem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Problems as lines for the farrier: what holds rows back first, then what only warns, then notes.
 * Many rows with one cause are one line, at the first of their cells.
 */
public final class ProblemLines {
  /** Up to so many cells of one cause each have their own line. */
  private static final int MOST_ALONE = 10;

  private ProblemLines() {}

  /** One cause: what is wrong in one column of one sheet. */
  private record Cause(ProblemKind kind, String sheet, String column, String words) {}

  /**
   * The lines of a whole book.
   *
   * @param problems in the order of sheets, rows and columns
   * @param assumed what was assumed for want of an entry, a line each; may be empty
   * @return the lines, ending with the counts; never empty
   */
  public static List<String> of(List<Problem> problems, List<String> assumed) {
    List<String> lines = new ArrayList<>();
    section(
        lines, "Rows held back: not billed and not counted until mended", problems, Severity.HELD);
    section(lines, "Warnings: used all the same, but worth a look", problems, Severity.WARNING);
    section(lines, "Notes", problems, Severity.NOTE);
    if (!assumed.isEmpty()) {
      lines.add("Assumed, because the book does not say");
      assumed.forEach(line -> lines.add("  " + line));
      lines.add("");
    }
    lines.add(counts(problems));
    return List.copyOf(lines);
  }

  private static void section(
      List<String> lines, String title, List<Problem> problems, Severity severity) {
    List<Problem> own = problems.stream().filter(p -> p.severity() == severity).toList();
    if (!own.isEmpty()) {
      lines.add(title);
      lines.addAll(grouped(own));
      lines.add("");
    }
  }

  /**
   * The lines of problems of one severity: equal sentences of one column first, then sentences that
   * differ only in the value they quote.
   */
  static List<String> grouped(List<Problem> problems) {
    Map<Cause, List<Problem>> byColumn = group(problems, problem -> "");
    Map<Cause, List<Problem>> bySentence = group(problems, Problem::problem);
    Map<Cause, Long> sentences =
        bySentence.values().stream()
            .collect(Collectors.groupingBy(all -> cause(all.get(0), ""), Collectors.counting()));
    Set<Cause> folded = new HashSet<>();
    List<String> lines = new ArrayList<>();
    for (Problem problem : problems) {
      Cause column = cause(problem, "");
      boolean many = sentences.getOrDefault(column, 0L) > MOST_ALONE;
      Cause own = many ? column : cause(problem, problem.problem());
      List<Problem> alike = (many ? byColumn : bySentence).getOrDefault(own, List.of());
      if (alike.size() <= MOST_ALONE) {
        lines.add(problem.sentence());
      } else if (folded.add(own)) {
        lines.add(folded(alike));
      }
    }
    return lines;
  }

  private static Map<Cause, List<Problem>> group(
      List<Problem> problems, Function<Problem, String> words) {
    Map<Cause, List<Problem>> groups = new LinkedHashMap<>();
    for (Problem problem : problems) {
      Cause cause = cause(problem, words.apply(problem));
      groups.computeIfAbsent(cause, unused -> new ArrayList<>()).add(problem);
    }
    return groups;
  }

  private static Cause cause(Problem problem, String words) {
    return new Cause(problem.kind(), problem.at().sheet(), problem.at().column(), words);
  }

  private static String folded(List<Problem> all) {
    Problem first = all.get(0);
    Problem last = all.get(all.size() - 1);
    String end = last.at().cell().isEmpty() ? last.at().toString() : last.at().cell();
    return first.sentence()
        + " (and "
        + (all.size() - 1)
        + " more like it, the last in "
        + end
        + ")";
  }

  private static String counts(List<Problem> problems) {
    long held =
        problems.stream()
            .filter(p -> p.severity() == Severity.HELD)
            .map(p -> new CellRef(p.at().sheet(), p.at().row(), ""))
            .distinct()
            .count();
    long warnings = problems.stream().filter(p -> p.severity() == Severity.WARNING).count();
    long notes = problems.stream().filter(p -> p.severity() == Severity.NOTE).count();
    if (problems.isEmpty()) {
      return "No problems found.";
    }
    return counted(held, "row")
        + " held back, "
        + counted(warnings, "warning")
        + ", "
        + counted(notes, "note")
        + ".";
  }

  private static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
