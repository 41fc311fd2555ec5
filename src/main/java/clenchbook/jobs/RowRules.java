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
import clenchbook.texts.Message;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

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
                    Message.of("jobs.row.interval", bare(weeks)),
                    Message.of("jobs.row.anInterval"),
                    plain(weeks)));
  }

  private void period(HorseRow row) {
    boolean backwards = row.until().flatMap(until -> row.from().map(until::isBefore)).orElse(false);
    if (backwards) {
      warn(
          ProblemKind.UNTIL_BEFORE_FROM,
          row.source(),
          "Until",
          Message.of("jobs.row.untilBeforeFrom"),
          Message.of("jobs.row.untilFrom", row.from().orElseThrow()),
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
                    Message.of("jobs.row.emptyPack"),
                    Message.of("jobs.row.aPack"),
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
          Message.of("jobs.row.sumOff", bare(sum)),
          Message.of("jobs.row.aSum"),
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
    backwards(
        trip,
        "Odometer start",
        trip.odometerStart(),
        before,
        end -> Message.of("jobs.row.odometerBeforeTrip", end));
    backwards(
        trip,
        "Odometer end",
        trip.odometerEnd(),
        trip.odometerStart(),
        start -> Message.of("jobs.row.odometerInTrip", start));
    trip.odometerEnd().or(trip::odometerStart).ifPresent(end -> last.put(vehicle, end));
  }

  private void backwards(
      Trip trip,
      String heading,
      Optional<BigDecimal> reading,
      Optional<BigDecimal> before,
      Function<String, Message> what) {
    boolean lower =
        reading.flatMap(now -> before.map(then -> now.compareTo(then) < 0)).orElse(false);
    if (lower) {
      warn(
          ProblemKind.ODOMETER_BACKWARDS,
          trip.source(),
          heading,
          what.apply(plain(before.orElseThrow())),
          Message.of("jobs.row.atLeast", plain(before.orElseThrow())),
          plain(reading.orElseThrow()));
    }
  }

  /** Without empty decimals, to be written in the farrier's language. */
  private static BigDecimal bare(BigDecimal value) {
    return value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
  }

  /** As a cell would hold it. */
  private static String plain(BigDecimal value) {
    return bare(value).toPlainString();
  }

  private void warn(
      ProblemKind kind,
      SourceRow row,
      String heading,
      Message what,
      Message expected,
      String value) {
    problems.add(Problem.warning(kind, row.at(heading), what, expected, value));
  }
}
