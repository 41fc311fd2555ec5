package clenchbook.matching;

import clenchbook.matching.known.KnownDocument;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Which of an owner's open invoices add to an amount. */
final class Sums {
  private static final int MOST_FOR_ALL = 10;
  private static final int MOST_FOUND = 4;

  private final List<KnownDocument> open;
  private final BigDecimal amount;
  private final Set<KnownDocument> must;
  private final List<List<KnownDocument>> found = new ArrayList<>();

  private Sums(List<KnownDocument> open, BigDecimal amount, Set<KnownDocument> must) {
    this.open = open;
    this.amount = amount;
    this.must = must;
  }

  /**
   * The sets of at least two invoices that add to an amount, at most four.
   *
   * @param open the owner's open invoices, the oldest first
   * @param amount the amount
   * @param must those that must be among them
   */
  static List<List<KnownDocument>> of(
      List<KnownDocument> open, BigDecimal amount, Set<KnownDocument> must) {
    Sums sums = new Sums(open, amount, must);
    if (open.size() <= MOST_FOR_ALL) {
      sums.search(0, BigDecimal.ZERO, new ArrayList<>());
    } else {
      sums.oldest();
    }
    return sums.found;
  }

  /** In how many ways some of so many invoices could have added to an amount by chance. */
  static int ways(int open) {
    return open <= MOST_FOR_ALL ? Math.max(1, (1 << open) - open - 1) : open;
  }

  private void search(int from, BigDecimal sum, List<KnownDocument> taken) {
    if (found.size() >= MOST_FOUND) {
      return;
    }
    int compared = sum.compareTo(amount);
    if (compared == 0 && taken.size() > 1 && taken.containsAll(must)) {
      found.add(List.copyOf(taken));
      return;
    }
    if (compared >= 0) {
      return;
    }
    for (int at = from; at < open.size(); at++) {
      taken.add(open.get(at));
      search(at + 1, sum.add(open.get(at).open()), taken);
      taken.remove(taken.size() - 1);
    }
  }

  /** With many open, only the oldest ones together, up to all, are looked at. */
  private void oldest() {
    BigDecimal sum = BigDecimal.ZERO;
    for (int count = 1; count <= open.size(); count++) {
      sum = sum.add(open.get(count - 1).open());
      List<KnownDocument> taken = open.subList(0, count);
      if (count > 1 && sum.compareTo(amount) == 0 && taken.containsAll(must)) {
        found.add(List.copyOf(taken));
      }
    }
  }
}
