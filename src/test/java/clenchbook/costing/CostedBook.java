package clenchbook.costing;

import clenchbook.jobs.WrittenBook;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/** The costs of a written book's jobs as at the end of October 2026, read off in a test. */
final class CostedBook {
  static final LocalDate LAST = LocalDate.of(2026, 10, 31);

  private CostedBook() {}

  static List<JobCost> costs(WrittenBook book) {
    return JobCosts.of(book.jobs(), LAST).all();
  }

  /** One figure of every job, in the order of the jobs, written out. */
  static String each(WrittenBook book, Function<JobCost, ?> figure) {
    return String.join(" ", costs(book).stream().map(figure).map(value -> text(value)).toList());
  }

  private static String text(Object value) {
    return value instanceof java.math.BigDecimal number
        ? number.toPlainString()
        : String.valueOf(value);
  }
}
