package clenchbook.jobs;

import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

/**
 * Minutes with what they rest on.
 *
 * @param minutes minutes, not negative
 * @param basis measured in the visit, the Work's standard, or zero by default
 */
public record Timed(BigDecimal minutes, Basis basis) {
  /** No minutes, for want of any. */
  public static final Timed NONE = new Timed(BigDecimal.ZERO, Basis.DEFAULT);

  static Timed of(
      Visit visit,
      Optional<WorkItem> work,
      Function<Visit, Optional<BigDecimal>> own,
      Function<WorkItem, Optional<BigDecimal>> standard) {
    return own.apply(visit)
        .map(minutes -> new Timed(minutes, Basis.MEASURED))
        .or(() -> work.flatMap(standard).map(minutes -> new Timed(minutes, Basis.STANDARD)))
        .orElse(NONE);
  }

  /**
   * Whether the visit's own row gave them.
   *
   * @return true for measured minutes
   */
  public boolean measured() {
    return basis == Basis.MEASURED;
  }
}
