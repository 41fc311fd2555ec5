package clenchbook.bankfiles;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The balance that some banks print behind each row, from the oldest to the newest row or the other
 * way round. Not thread-safe.
 */
final class RunningBalance {
  private @Nullable BigDecimal firstAmount;
  private @Nullable BigDecimal firstAfter;
  private @Nullable BigDecimal lastAmount;
  private @Nullable BigDecimal lastAfter;
  private @Nullable BigDecimal before;
  private int steps;
  private int downwards;
  private int upwards;

  void add(BigDecimal amount, BigDecimal after) {
    if (firstAfter == null) {
      firstAfter = after;
      firstAmount = amount;
    }
    if (before != null && lastAmount != null) {
      steps++;
      downwards += before.add(amount).compareTo(after) == 0 ? 1 : 0;
      upwards += after.add(lastAmount).compareTo(before) == 0 ? 1 : 0;
    }
    before = after;
    lastAmount = amount;
    lastAfter = after;
  }

  /** Whether the newest row stands first. */
  private boolean newestFirst() {
    return upwards > downwards;
  }

  /** The balance before the oldest row; empty where the rows bear none. */
  Optional<BigDecimal> opening() {
    BigDecimal amount = newestFirst() ? lastAmount : firstAmount;
    BigDecimal after = newestFirst() ? lastAfter : firstAfter;
    return amount == null || after == null ? Optional.empty() : Optional.of(after.subtract(amount));
  }

  /** The balance after the newest row. */
  Optional<BigDecimal> closing() {
    return Optional.ofNullable(newestFirst() ? firstAfter : lastAfter);
  }

  /** How many steps from row to row there were. */
  int steps() {
    return steps;
  }
}
