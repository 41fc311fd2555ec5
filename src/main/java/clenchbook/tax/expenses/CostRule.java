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
 */
public record CostRule(String line, String rest, Function<LineItem, BigDecimal> allowed) {

  /** Nothing of it counts; each row is listed under {@code rest}. */
  public static CostRule never(String rest) {
    return new CostRule("", rest, item -> BigDecimal.ZERO);
  }

  /** The part of the row that counts; empty where no line takes it. */
  Optional<LineItem> counted(LineItem item) {
    return line.isEmpty() ? Optional.empty() : Optional.of(item.on(line).with(allowed.apply(item)));
  }

  /** The part of the row that does not count; empty where all of it does. */
  Optional<LineItem> left(LineItem item) {
    BigDecimal left = line.isEmpty() ? item.net() : item.net().subtract(allowed.apply(item));
    return Optional.of(item.on(rest).with(left)).filter(part -> part.net().signum() != 0);
  }
}
