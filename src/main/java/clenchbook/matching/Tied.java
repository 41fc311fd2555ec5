package clenchbook.matching;

import clenchbook.book.PaymentKind;
import clenchbook.matching.bank.BankEntry;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds what goes into the three files against what the statements moved: a cent that went missing
 * or stands twice is a fault of the program, and nothing is written.
 */
final class Tied {
  private final Map<Integer, BigDecimal> sums = new HashMap<>();
  private int count;

  private Tied() {}

  /**
   * Checks a result, statement by statement.
   *
   * @param entries all entries
   * @param result where they went
   * @return the result
   * @throws IllegalStateException where the totals part ways
   */
  static MatchResult checked(List<BankEntry> entries, MatchResult result) {
    Tied moved = new Tied();
    entries.forEach(entry -> moved.add(entry, entry.amount()));
    Tied written = new Tied();
    result.toAdd().forEach(proposal -> written.add(proposal.entry(), amount(proposal)));
    result.unmatched().forEach(left -> written.add(left.entry(), left.entry().amount()));
    result.alreadyThere().forEach(left -> written.add(left.entry(), left.entry().amount()));
    if (moved.count != written.count || !moved.sums.equals(written.sums)) {
      throw new IllegalStateException(
          moved.count
              + " entries of "
              + moved.sums
              + " would be written as "
              + written.count
              + " of "
              + written.sums);
    }
    return result;
  }

  private void add(BankEntry entry, BigDecimal amount) {
    count++;
    sums.merge(entry.statement(), amount.stripTrailingZeros(), Tied::sum);
  }

  private static BigDecimal sum(BigDecimal one, BigDecimal other) {
    return one.add(other).stripTrailingZeros();
  }

  /** What its rows come to; a refund went out. */
  private static BigDecimal amount(Proposal proposal) {
    return proposal.rows().stream()
        .map(row -> row.kind() == PaymentKind.REFUND ? row.amount().negate() : row.amount())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
