package clenchbook.tax.year;

import clenchbook.book.Book;
import clenchbook.book.Payment;
import clenchbook.book.Purchase;
import clenchbook.book.Trip;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * How many of a period's months the book covers: from the month of its first dated row to that of
 * its last, over Visits, Payments, Purchases and Trips. The day of the run plays no part, so that
 * the same book gives the same files.
 *
 * @param period the period
 * @param months how many months it has
 * @param covered how many of them the book covers
 * @param first the book's first dated row within the period; empty where none is
 * @param last the last one
 * @param bare the first day of each covered month without a single row
 */
public record Coverage(
    Period period,
    int months,
    int covered,
    Optional<LocalDate> first,
    Optional<LocalDate> last,
    List<LocalDate> bare) {

  /** Copies its list. */
  public Coverage {
    bare = List.copyOf(bare);
  }

  /** What a book covers of a period. */
  public static Coverage of(Jobs jobs, Period period) {
    TreeSet<LocalDate> days = new TreeSet<>(days(jobs));
    List<Period> months = months(period);
    Optional<LocalDate> first = Optional.ofNullable(days.ceiling(period.first()));
    Optional<LocalDate> last = Optional.ofNullable(days.floor(period.last()));
    if (first.filter(period::holds).isEmpty()) {
      return new Coverage(period, months.size(), 0, Optional.empty(), Optional.empty(), List.of());
    }
    boolean begunBefore = days.first().isBefore(period.first());
    boolean goesOn = days.last().isAfter(period.last());
    List<Period> covered =
        months.stream()
            .filter(month -> begunBefore || !month.last().isBefore(first.orElseThrow()))
            .filter(month -> goesOn || !month.first().isAfter(last.orElseThrow()))
            .toList();
    List<LocalDate> bare =
        covered.stream()
            .filter(month -> days.subSet(month.first(), true, month.last(), true).isEmpty())
            .map(Period::first)
            .toList();
    return new Coverage(period, months.size(), covered.size(), first, last, bare);
  }

  private static List<LocalDate> days(Jobs jobs) {
    Book book = jobs.index().book();
    return Stream.of(
            jobs.all().stream().filter(job -> !job.cancelled()).map(Job::date),
            book.payments().stream().map(Payment::date),
            book.purchases().stream().map(Purchase::date),
            book.trips().stream().map(Trip::date))
        .flatMap(dates -> dates)
        .toList();
  }

  /** The months of a period, counted from its first day. */
  private static List<Period> months(Period period) {
    List<Period> months = new ArrayList<>();
    for (int number = 0; ; number++) {
      LocalDate first = period.first().plusMonths(number);
      if (first.isAfter(period.last())) {
        return months;
      }
      LocalDate next = period.first().plusMonths(number + 1L).minusDays(1);
      months.add(new Period(first, next.isAfter(period.last()) ? period.last() : next));
    }
  }

  /** Whether the book covers every month of the period. */
  public boolean whole() {
    return covered == months;
  }

  /** What to say of it; empty where every month is covered and has a row. */
  public List<Message> sentences() {
    if (covered == 0) {
      return List.of(Message.of("tax.coverage.none", period.first(), period.last()));
    }
    List<Message> sentences = new ArrayList<>();
    if (!whole()) {
      sentences.add(
          Message.of(
              "tax.coverage.part", covered, months, first.orElseThrow(), last.orElseThrow()));
      sentences.add(
          months == 12
              ? Message.of("tax.coverage.noWholeYear")
              : Message.of("tax.coverage.noWholeQuarter"));
    }
    if (!bare.isEmpty()) {
      sentences.add(Message.of("tax.coverage.bare", bare.size(), bare));
    }
    return List.copyOf(sentences);
  }
}
