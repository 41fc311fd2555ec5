package clenchbook.tax.sales;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How much of a limit of turnover is used up, and when it will be passed at the pace of the last
 * three months. The limits stand in the table {@code <country>/turnover}: rows {@code limit}, or
 * {@code limit} with a further word, each with its {@code period}, {@code tolerance} and {@code
 * then} (with the same further word where several limits differ in them).
 *
 * @param limit the limit, with its name and source
 * @param first the first month of what is counted
 * @param last the last month of what is counted
 * @param turnover taxable turnover of these months without tax
 * @param tolerated the limit with its tolerance; the limit itself where there is none
 * @param passed the first month of the period at whose end the limit was passed
 * @param passes the month in which it will be passed at this pace; empty where it was passed, or
 *     will not be within two years
 * @param then the row that says what changes; empty where the table does not say
 * @param mark what must stand beside the limit where it or its period rests on memory or on an
 *     earlier year; none for nothing
 * @param thenMark the same beside what changes
 */
public record TurnoverGauge(
    Rate limit,
    YearMonth first,
    YearMonth last,
    BigDecimal turnover,
    BigDecimal tolerated,
    Optional<YearMonth> passed,
    Optional<YearMonth> passes,
    Optional<Rate> then,
    Message mark,
    Message thenMark) {
  private static final int PACE_MONTHS = 3;
  private static final int LOOK_AHEAD = 24;

  /** The months over which a limit counts. */
  enum Window {
    ROLLING_TWELVE_MONTHS,
    CALENDAR_YEAR,
    YEAR_BEFORE,
    CALENDAR_QUARTER,
    FOUR_CALENDAR_QUARTERS;

    static Window of(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    YearMonth first(YearMonth month) {
      return switch (this) {
        case ROLLING_TWELVE_MONTHS -> month.minusMonths(11);
        case CALENDAR_YEAR -> month.withMonth(1);
        case YEAR_BEFORE -> month.withMonth(1).minusYears(1);
        case CALENDAR_QUARTER -> quarter(month);
        case FOUR_CALENDAR_QUARTERS -> quarter(month).minusMonths(9);
      };
    }

    YearMonth last(YearMonth month) {
      return this == YEAR_BEFORE ? month.withMonth(12).minusYears(1) : month;
    }

    private static YearMonth quarter(YearMonth month) {
      return month.minusMonths((month.getMonthValue() - 1) % 3);
    }
  }

  /**
   * The gauges of a country, as at the last month of the period that has turnover.
   *
   * @param country the folder of its table, as {@code uk}
   * @return one for each limit in force then; empty for a country without a table
   */
  public static List<TurnoverGauge> of(
      String country, Period period, Turnover turnover, RateLookup rates) {
    String table = country + "/turnover";
    YearMonth month = turnover.lastIn(period);
    LocalDate day = month.atEndOfMonth();
    if (rates.hasRows(table) && rates.inForce(table, day).isEmpty()) {
      rates.lacks(table, day);
    }
    List<TurnoverGauge> gauges = new ArrayList<>();
    for (Rate row : rates.inForce(table, day)) {
      if (row.code().startsWith("limit")) {
        rates
            .ask(table, row.code(), day)
            .ifPresent(limit -> gauges.add(gauge(limit, period, month, turnover, rates)));
      }
    }
    return List.copyOf(gauges);
  }

  private static TurnoverGauge gauge(
      Rate limit, Period period, YearMonth month, Turnover turnover, RateLookup rates) {
    Window window =
        with(limit, "period", month, rates)
            .map(row -> Window.of(row.value()))
            .orElse(Window.ROLLING_TWELVE_MONTHS);
    BigDecimal tolerated =
        with(limit, "tolerance", month, rates)
            .map(row -> limit.amount().multiply(BigDecimal.ONE.add(row.factor())))
            .orElse(limit.amount());
    Pace pace = new Pace(turnover, month);
    Optional<YearMonth> passed = passed(limit, window, period, month, turnover);
    return new TurnoverGauge(
        limit,
        window.first(month),
        window.last(month),
        turnover.between(window.first(month), window.last(month)),
        tolerated,
        passed,
        passed.isPresent() ? Optional.empty() : pace.passes(limit.amount(), window),
        with(limit, "then", month, rates),
        mark(Stream.of(Optional.of(limit), with(limit, "period", month, rates))),
        mark(Stream.of(with(limit, "then", month, rates))));
  }

  private static Message mark(Stream<Optional<Rate>> rows) {
    return rows.flatMap(Optional::stream)
        .map(rate -> rate.standing().mark())
        .filter(mark -> !mark.isEmpty())
        .findFirst()
        .orElse(Message.NONE);
  }

  /** The row of the limit's own word, else the table's. */
  private static Optional<Rate> with(Rate limit, String what, YearMonth month, RateLookup rates) {
    String suffix = limit.code().substring("limit".length());
    return rates
        .ask(limit.table(), what + suffix, month.atEndOfMonth())
        .or(() -> rates.ask(limit.table(), what, month.atEndOfMonth()));
  }

  private static Optional<YearMonth> passed(
      Rate limit, Window window, Period period, YearMonth last, Turnover turnover) {
    for (YearMonth month = YearMonth.from(period.first());
        !month.isAfter(last);
        month = month.plusMonths(1)) {
      BigDecimal sum = turnover.between(window.first(month), window.last(month));
      if (limit.covers(month.atEndOfMonth()) && sum.compareTo(limit.amount()) > 0) {
        return Optional.of(month);
      }
    }
    return Optional.empty();
  }

  /** The pace of the last three months, or of fewer where the book is younger. */
  private record Pace(Turnover turnover, YearMonth month) {

    private BigDecimal monthly() {
      YearMonth from = month.minusMonths(PACE_MONTHS - 1L);
      YearMonth begun = turnover.months().isEmpty() ? month : turnover.months().firstKey();
      YearMonth first = begun.isAfter(from) ? begun : from;
      long months = Math.max(1, first.until(month, ChronoUnit.MONTHS) + 1);
      return turnover
          .between(first, month)
          .divide(BigDecimal.valueOf(months), MathContext.DECIMAL64);
    }

    /** The month in which the limit is passed if each month to come brings as much. */
    private Optional<YearMonth> passes(BigDecimal limit, Window window) {
      if (window == Window.YEAR_BEFORE) {
        return Optional.empty();
      }
      for (int ahead = 1; ahead <= LOOK_AHEAD; ahead++) {
        YearMonth then = month.plusMonths(ahead);
        YearMonth first = window.first(then);
        YearMonth future = month.plusMonths(1).isAfter(first) ? month.plusMonths(1) : first;
        long months = future.until(then, ChronoUnit.MONTHS) + 1;
        BigDecimal sum =
            turnover.between(first, month).add(monthly().multiply(BigDecimal.valueOf(months)));
        if (sum.compareTo(limit) > 0) {
          return Optional.of(then);
        }
      }
      return Optional.empty();
    }
  }

  /** Turnover as a share of the limit, in per cent with one decimal. */
  public BigDecimal percent() {
    return turnover.movePointRight(2).divide(limit.amount(), 1, RoundingMode.HALF_UP);
  }

  /** What it says: the limit's name, how much of it is used, when it is passed, what follows. */
  public Message said() {
    List<Message> sentences = new ArrayList<>();
    sentences.add(
        Message.of(
            "tax.gauge.used",
            limit.said(),
            turnover.setScale(0, RoundingMode.HALF_UP),
            mark.isEmpty() ? limit.amount() : Message.of("tax.marked", limit.amount(), mark),
            percent(),
            first,
            last));
    sentences.add(when());
    if (tolerated.compareTo(limit.amount()) != 0) {
      sentences.add(Message.of("tax.gauge.tolerated", tolerated.stripTrailingZeros()));
    }
    then.ifPresent(row -> sentences.add(Message.of("tax.gauge.then", marked(row))));
    return Message.joined(" ", sentences);
  }

  /** What changes then, with what must stand beside it; nothing where the table does not say. */
  public Message changes() {
    return then.map(this::marked).orElse(Message.NONE);
  }

  private Message marked(Rate row) {
    return thenMark.isEmpty()
        ? row.saidValue()
        : Message.of("tax.marked", row.saidValue(), thenMark);
  }

  private Message when() {
    return passed
        .map(month -> Message.of("tax.gauge.passed", month))
        .or(() -> passes.map(month -> Message.of("tax.gauge.passes", month)))
        .orElse(Message.of("tax.gauge.never"));
  }
}
