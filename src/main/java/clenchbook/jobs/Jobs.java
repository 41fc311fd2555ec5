package clenchbook.jobs;

import clenchbook.problem.Problem;
import java.time.LocalDate;
import java.util.List;

/**
 * All jobs of a book.
 *
 * @param index the book they came from, by name
 * @param all every row that is not held back, cancelled ones included, by date, sheet and row
 * @param problems what the rules between sheets found, in no particular order
 */
public record Jobs(BookIndex index, List<Job> all, List<Problem> problems) {
  /** Copies its lists. */
  public Jobs {
    all = List.copyOf(all);
    problems = List.copyOf(problems);
  }

  /**
   * The jobs of a period.
   *
   * @param first first day, inclusive
   * @param last last day, inclusive
   * @return in order, cancelled ones included
   */
  public List<Job> between(LocalDate first, LocalDate last) {
    return all.stream()
        .filter(job -> !job.date().isBefore(first) && !job.date().isAfter(last))
        .toList();
  }
}
