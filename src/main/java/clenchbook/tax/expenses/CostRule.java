package clenchbook.tax.expenses;

import clenchbook.tax.lines.LineItem;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

/**
 * How much of a row of one category counts, where a country limits it: a share, an amount, nothing.
 *
 * @param line the code of the line on which the counted part stands; blank where nothing counts
 * @param rest the words under which the rest is listed as not counted
 * @param allowed how much of a row counts, in the minor unit
 * @param taxLost whether the tax on a row of which nothing counts does not come back either, so
 *     that it is part of what is not counted
 */
public record CostRule(
    String line, String rest, Function<LineItem, BigDecimal> allowed, boolean taxLost) {

  /** A rule that leaves the tax on the row alone. */
  public CostRule(String line, String rest, Function<LineItem, BigDecimal> allowed) {
    this(line, rest, allowed, false);
  }

  /** Nothing of it counts; each row is listed under {@code rest}. */
  public static CostRule never(String rest) {
    return new CostRule("", rest, item -> BigDecimal.ZERO);
  }

  /** Nothing of it counts, and the tax on it does not come back. */
  public static CostRule neverWithTax(String rest) {
    return new CostRule("", rest, item -> BigDecimal.ZERO, true);
  }

  /** The part of the row that counts; empty where no line takes it. */
  Optional<LineItem> counted(LineItem item) {
    return line.isEmpty() || isLost(item)
        ? Optional.empty()
        : Optional.of(item.on(line).with(allowed.apply(item)));
  }

  /** The part of the row that does not count; empty where all of it does. */
  Optional<LineItem> left(LineItem item) {
    if (isLost(item)) {
      return Optional.of(item.on(rest).withTaxIn());
    }
    BigDecimal left = line.isEmpty() ? item.net() : item.net().subtract(allowed.apply(item));
    return Optional.of(item.on(rest).with(left)).filter(part -> part.net().signum() != 0);
  }

  private boolean isLost(LineItem item) {
    return taxLost && (line.isEmpty() || allowed.apply(item).signum() == 0);
  }
}
