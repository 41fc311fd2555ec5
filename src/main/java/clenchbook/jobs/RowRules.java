package clenchbook.jobs;

import clenchbook.book.Book;
import clenchbook.book.HorseRow;
import clenchbook.book.Material;
import clenchbook.book.Names;
import clenchbook.book.Purchase;
import clenchbook.book.SourceRow;
import clenchbook.book.Trip;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cells of the other sheets that can be read and can't be so: intervals, periods, packs, sums of
 * purchases, odometers. All count as typed (common practice, no source).
 */
final class RowRules {
  private static final BigDecimal LONGEST_INTERVAL = new BigDecimal(30);

  private final Book book;
  private final List<Problem> problems = new ArrayList<>();

  private RowRules(Book book) {
    this.book = book;
  }

  static List<Problem> problems(Book book) {
    RowRules rules = new RowRules(book);
    book.horses().forEach(rules::interval);
    book.horses().forEach(rules::period);
    book.materials().forEach(rules::pack);
    book.purchases().forEach(rules::sum);
    rules.odometers();
    return rules.problems;
  }

  private void interval(HorseRow row) {
    row.intervalWeeks()
        .filter(weeks -> weeks.signum() == 0 || weeks.compareTo(LONGEST_INTERVAL) > 0)
        .ifPresent(
            weeks ->
                warn(
                    ProblemKind.INTERVAL_ODD,
                    row.source(),
                    "Interval weeks",
                    "an interval of " + plain(weeks) + " weeks",
                    "weeks between two visits, 1 to 30; blank where there is none",
                    plain(weeks)));
  }

  private void period(HorseRow row) {
    boolean backwards = row.until().flatMap(until -> row.from().map(until::isBefore)).orElse(false);
    if (backwards) {
      warn(
          ProblemKind.UNTIL_BEFORE_FROM,
          row.source(),
          "Until",
          "Until is before From, so that the row never counts",
          "a day on or after " + row.from().orElseThrow(),
          row.until().orElseThrow().toString());
    }
  }

  private void pack(Material row) {
    row.perPack()
        .filter(pieces -> pieces.signum() == 0)
        .ifPresent(
            pieces ->
                warn(
                    ProblemKind.PACK_EMPTY,
                    row.source(),
                    "Per pack",
                    "a pack of 0 pieces; it counts as blank",
                    "how many pieces a pack holds",
                    plain(pieces)));
  }

  private void sum(Purchase row) {
    if (row.net().isEmpty() || row.tax().isEmpty() || row.gross().isEmpty()) {
      return;
    }
    MinorUnit unit = book.settings().minorUnit();
    BigDecimal sum = unit.round(row.net().get().add(row.tax().get()));
    if (sum.compareTo(unit.round(row.gross().get())) != 0) {
      warn(
          ProblemKind.AMOUNTS_DISAGREE,
          row.source(),
          "Gross",
          "Net and Tax add to " + plain(sum) + ", not to Gross; Net and Gross count as typed",
          "Net + Tax = Gross",
          plain(row.gross().get()));
    }
  }

  /** Within a trip, and from one trip of a vehicle to its next. */
  private void odometers() {
    Map<String, BigDecimal> last = new HashMap<>();
    book.trips().stream()
        .sorted(Comparator.comparing(Trip::date).thenComparing(Trip::source))
        .forEach(trip -> odometer(trip, last));
  }

  private void odometer(Trip trip, Map<String, BigDecimal> last) {
    String vehicle = Names.key(trip.vehicle());
    Optional<BigDecimal> before = Optional.ofNullable(last.get(vehicle));
    backwards(trip, "Odometer start", trip.odometerStart(), before, "the trip before ended at ");
    backwards(trip, "Odometer end", trip.odometerEnd(), trip.odometerStart(), "it started at ");
    trip.odometerEnd().or(trip::odometerStart).ifPresent(end -> last.put(vehicle, end));
  }

  private void backwards(
      Trip trip,
      String heading,
      Optional<BigDecimal> reading,
      Optional<BigDecimal> before,
      String where) {
    boolean lower =
        reading.flatMap(now -> before.map(then -> now.compareTo(then) < 0)).orElse(false);
    if (lower) {
      warn(
          ProblemKind.ODOMETER_BACKWARDS,
          trip.source(),
          heading,
          "the odometer runs backwards: " + where + plain(before.orElseThrow()),
          "at least " + plain(before.orElseThrow()),
          plain(reading.orElseThrow()));
    }
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private void warn(
      ProblemKind kind, SourceRow row, String heading, String what, String expected, String value) {
    problems.add(Problem.warning(kind, row.at(heading), what, expected, value));
  }
}
