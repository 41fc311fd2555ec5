package clenchbook.problem;

import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Problems as lines for the farrier: what holds rows back first, then what only warns, then notes.
 * A kind that repeats on a sheet is told a few times and counted, so that it does not drown others.
 */
public final class ProblemLines {
  /** How often a kind is told on a sheet. */
  private static final int MOST_TOLD = 5;

  private final Texts texts;

  private ProblemLines(Texts texts) {
    this.texts = texts;
  }

  /** What repeats: a kind on a sheet. */
  private record Repeated(ProblemKind kind, String sheet) {}

  /**
   * The lines of a whole book.
   *
   * @param problems in the order of sheets, rows and columns
   * @param assumed what was assumed for want of an entry, a line each; may be empty
   * @param texts the farrier's language
   * @return the lines, ending with the counts; never empty
   */
  public static List<String> of(List<Problem> problems, List<Message> assumed, Texts texts) {
    return new ProblemLines(texts).of(problems, assumed);
  }

  private List<String> of(List<Problem> problems, List<Message> assumed) {
    List<String> lines = new ArrayList<>();
    section(lines, texts.say("problem.held"), problems, Severity.HELD);
    section(lines, texts.say("problem.warnings"), problems, Severity.WARNING);
    section(lines, texts.say("problem.notes"), problems, Severity.NOTE);
    if (!assumed.isEmpty()) {
      lines.add(texts.say("problem.assumed"));
      assumed.forEach(line -> lines.add("  " + texts.say(line)));
      lines.add("");
    }
    lines.add(counts(problems));
    return List.copyOf(lines);
  }

  private void section(
      List<String> lines, String title, List<Problem> problems, Severity severity) {
    List<Problem> own = problems.stream().filter(p -> p.severity() == severity).toList();
    if (!own.isEmpty()) {
      lines.add(title);
      lines.addAll(grouped(own));
      lines.add("");
    }
  }

  /** The lines of problems of one severity: of each kind on a sheet the first, then the count. */
  static List<String> grouped(List<Problem> problems, Texts texts) {
    return new ProblemLines(texts).grouped(problems);
  }

  private List<String> grouped(List<Problem> problems) {
    Map<Repeated, List<Problem>> groups = new HashMap<>();
    problems.forEach(
        problem ->
            groups.computeIfAbsent(repeated(problem), group -> new ArrayList<>()).add(problem));
    Map<Repeated, Integer> told = new HashMap<>();
    List<String> lines = new ArrayList<>();
    for (Problem problem : problems) {
      int place = told.merge(repeated(problem), 1, Integer::sum);
      if (place <= MOST_TOLD) {
        lines.add(problem.sentence(texts));
      } else if (place == MOST_TOLD + 1) {
        lines.add(rest(groups.getOrDefault(repeated(problem), List.of())));
      }
    }
    return lines;
  }

  private static Repeated repeated(Problem problem) {
    return new Repeated(problem.kind(), problem.at().sheet());
  }

  private String rest(List<Problem> all) {
    Problem last = all.get(all.size() - 1);
    String sheet = last.at().sheet().isEmpty() ? "" : last.at().sheet() + ": ";
    return sheet + texts.say(more(all.size() - MOST_TOLD, last.at()));
  }

  private static Message more(int count, CellRef last) {
    if (last.row() == 0) {
      return Message.of("problem.more", count);
    }
    return last.cell().isEmpty()
        ? Message.of("problem.moreToRow", count, Integer.toString(last.row()))
        : Message.of("problem.moreToCell", count, last.cell());
  }

  private String counts(List<Problem> problems) {
    long held =
        problems.stream()
            .filter(p -> p.severity() == Severity.HELD)
            .map(p -> new CellRef(p.at().sheet(), p.at().row(), ""))
            .distinct()
            .count();
    long warnings = problems.stream().filter(p -> p.severity() == Severity.WARNING).count();
    long notes = problems.stream().filter(p -> p.severity() == Severity.NOTE).count();
    if (problems.isEmpty()) {
      return texts.say("problem.none");
    }
    return texts.say("problem.counts", held, warnings, notes);
  }
}
