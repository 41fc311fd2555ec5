package clenchbook.schedule.due;

import clenchbook.texts.Message;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How long a horse goes between visits, and where that comes from.
 *
 * @param days days from one visit to the next, above zero; a given half week is rounded up to a day
 * @param exactWeeks the weeks as given, else the days in weeks at two decimals
 * @param source where the figure comes from
 */
public record VisitInterval(int days, BigDecimal exactWeeks, Source source) {

  /** Where an interval comes from, the best first. */
  public enum Source {
    /** Interval weeks of the Horses sheet. */
    GIVEN("given", "schedule.interval.given", Basis.STANDARD),
    /** The median of the horse's own visits. */
    OWN_MEDIAN("own median", "schedule.interval.ownMedian", Basis.MEASURED),
    /** The median of all horses' visits, for a horse seen once. */
    BOOK_MEDIAN("median of all horses", "schedule.interval.bookMedian", Basis.DEFAULT),
    /** Six weeks: common practice, no source. */
    SIX_WEEKS("six weeks assumed", "schedule.interval.sixWeeks", Basis.DEFAULT);

    private final String words;
    private final Message said;
    private final Basis basis;

    Source(String words, String key, Basis basis) {
      this.words = words;
      this.said = Message.of(key);
      this.basis = basis;
    }

    /** Gives the words that stand beside the figure in files. */
    public String words() {
      return words;
    }

    /** Gives the words that stand beside the figure on pages. */
    public Message said() {
      return said;
    }

    /** Gives what the figure rests on. */
    public Basis basis() {
      return basis;
    }
  }

  private static final BigDecimal WEEK = BigDecimal.valueOf(7);
  private static final int SIX_WEEKS = 42;

  /** Refuses an interval of no days. */
  public VisitInterval {
    if (days <= 0) {
      throw new IllegalArgumentException("an interval needs at least a day: " + days);
    }
  }

  /**
   * Chooses the interval of a horse: the one given, else its own median, else the book's, else six
   * weeks.
   *
   * @param givenWeeks Interval weeks of Horses; zero or less counts as blank
   * @param ownGaps days between the horse's own visits, in any order
   * @param bookMedian the median of all horses' gaps
   */
  static VisitInterval of(
      Optional<BigDecimal> givenWeeks, List<Integer> ownGaps, Optional<Integer> bookMedian) {
    return givenWeeks
        .filter(weeks -> toDays(weeks) > 0)
        .map(weeks -> new VisitInterval(toDays(weeks), weeks, Source.GIVEN))
        .or(() -> median(ownGaps).map(days -> ofDays(days, Source.OWN_MEDIAN)))
        .or(() -> bookMedian.map(days -> ofDays(days, Source.BOOK_MEDIAN)))
        .orElseGet(() -> ofDays(SIX_WEEKS, Source.SIX_WEEKS));
  }

  private static VisitInterval ofDays(int days, Source source) {
    BigDecimal weeks = BigDecimal.valueOf(days).divide(WEEK, 2, RoundingMode.HALF_UP);
    return new VisitInterval(days, weeks, source);
  }

  private static int toDays(BigDecimal weeks) {
    return weeks.multiply(WEEK).setScale(0, RoundingMode.HALF_UP).intValue();
  }

  /**
   * Gives the middle of some whole numbers; between the two middle ones, half up.
   *
   * @return empty for an empty list
   */
  static Optional<Integer> median(List<Integer> numbers) {
    if (numbers.isEmpty()) {
      return Optional.empty();
    }
    List<Integer> sorted = numbers.stream().sorted().toList();
    int low = sorted.get((sorted.size() - 1) / 2);
    int high = sorted.get(sorted.size() / 2);
    return Optional.of((low + high + 1) / 2);
  }

  /** Gives the next date after a visit. */
  public LocalDate after(LocalDate visit) {
    return visit.plusDays(days);
  }

  /** Gives the weeks as a decimal text without empty decimals, such as {@code 6} or {@code 6.5}. */
  public String weeks() {
    return exactWeeks.stripTrailingZeros().toPlainString();
  }
}
