package clenchbook.schedule;

import clenchbook.book.Names;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.schedule.due.ComingVisit;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.schedule.round.Round;
import clenchbook.schedule.round.WeekAhead;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The due list as blocks of reports and of the month's page. */
final class DuePages {

  private static final int HORSES_ON_PAGE = 8;
  private static final int ROUND_DAYS = 14;

  private final DueDates due;
  private final List<WeekAhead> weeks;
  private final List<Round> rounds;
  private final FigureText text;

  DuePages(DueDates due, List<WeekAhead> weeks, List<Round> rounds, FigureText text) {
    this.due = due;
    this.weeks = weeks;
    this.rounds = rounds;
    this.text = text;
  }

  /** For the month's page: who is overdue, and what the next weeks ask. */
  List<Block> inShort() {
    List<Block> blocks = new ArrayList<>();
    List<DueHorse> overdue = due.overdue();
    if (!overdue.isEmpty()) {
      blocks.add(
          TableOf.rows(overdue.stream().limit(HORSES_ON_PAGE).toList())
              .words(text.say("schedule.column.horse"), 8, horse -> horse.id().name())
              .words(text.say("schedule.column.owner"), 12, DueHorse::owner)
              .words(text.say("schedule.column.place"), 12, horse -> placeOrNone(horse.place()))
              .number(
                  text.say("schedule.column.daysOverdue"),
                  5,
                  horse -> text.count(horse.daysOverdue()))
              .captioned(overdueCaption(overdue.size())));
    }
    blocks.add(weekTable());
    return blocks;
  }

  private String overdueCaption(int overdue) {
    return overdue > HORSES_ON_PAGE
        ? text.say("schedule.overdueSome", HORSES_ON_PAGE, overdue)
        : text.say("schedule.overdueLongest");
  }

  /** For the report of stock and round: the next four weeks and the rounds of the first two. */
  List<Block> next(Optional<Integer> limit) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, text.say("schedule.nextWeeks")));
    blocks.add(weekTable());
    limit.ifPresent(most -> blocks.add(new Paragraph(overLimit(most))));
    List<Round> soon = roundsWithin(ROUND_DAYS);
    if (!soon.isEmpty()) {
      blocks.add(roundTable(text.say("schedule.rounds.soon"), soon));
    }
    return blocks;
  }

  /** For the annex: every horse by week, and the rounds beyond two weeks. */
  List<Block> full() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, text.say("schedule.full")));
    blocks.add(new Paragraph(text.say("schedule.full.how")));
    if (!due.overdue().isEmpty()) {
      blocks.add(horseTable(text.say("schedule.overdue"), due.overdue()));
    }
    byWeek()
        .forEach(
            (monday, horses) ->
                blocks.add(horseTable(text.say("schedule.weekOf", text.day(monday)), horses)));
    if (!due.goneQuiet().isEmpty()) {
      blocks.add(new Heading(2, text.say("schedule.quiet")));
      blocks.add(new Paragraph(text.say("schedule.quiet.what")));
      blocks.add(horseTable("", due.goneQuiet()));
    }
    blocks.add(new Heading(2, text.say("schedule.rounds")));
    blocks.add(new Paragraph(text.say("schedule.rounds.what")));
    blocks.add(roundTable("", rounds));
    return blocks;
  }

  private List<Round> roundsWithin(int days) {
    return rounds.stream()
        .filter(round -> !round.from().isAfter(due.asAt().plusDays(days)))
        .toList();
  }

  private Map<LocalDate, List<DueHorse>> byWeek() {
    Map<LocalDate, List<DueHorse>> byMonday = new TreeMap<>();
    due.expected().stream()
        .filter(horse -> horse.daysOverdue() == 0)
        .sorted(Comparator.comparing(DueHorse::place, Names.ORDER).thenComparing(DueHorse.BY_DATE))
        .forEach(
            horse ->
                byMonday
                    .computeIfAbsent(ComingVisit.monday(horse.due()), day -> new ArrayList<>())
                    .add(horse));
    return byMonday;
  }

  private Table horseTable(String caption, List<DueHorse> horses) {
    return TableOf.rows(horses)
        .words(text.say("schedule.column.place"), 15, horse -> placeOrNone(horse.place()))
        .words(text.say("schedule.column.horse"), 11, horse -> horse.id().name())
        .words(text.say("schedule.column.owner"), 16, DueHorse::owner)
        .words(text.say("schedule.column.last"), 8, horse -> text.shortDay(horse.last()))
        .figure(
            text.say("schedule.column.weeks"),
            9,
            horse -> horse.interval().weeks(),
            horse -> horse.interval().source().basis())
        .words(
            text.say("schedule.column.weeksFrom"),
            12,
            horse -> text.say(horse.interval().source().said()))
        .words(text.say("schedule.column.due"), 8, horse -> text.shortDay(horse.due()))
        .number(text.say("schedule.column.daysOverdue"), 8, DuePages::overdueDays)
        .captioned(caption);
  }

  private static String overdueDays(DueHorse horse) {
    return horse.daysOverdue() == 0 ? "" : Long.toString(horse.daysOverdue());
  }

  private String overLimit(int limit) {
    List<String> days = new ArrayList<>();
    for (WeekAhead week : weeks) {
      week.overLimit()
          .forEach(
              (day, horses) -> days.add("%s (%s)".formatted(text.day(day), text.count(horses))));
    }
    return days.isEmpty()
        ? text.say("schedule.limit.never", limit)
        : text.say("schedule.limit.days", limit, days);
  }

  private Table weekTable() {
    return TableOf.rows(weeks)
        .words(text.say("schedule.column.week"), 18, week -> weekName(week, text))
        .count(text.say("schedule.column.horses"), 7, WeekAhead::horses)
        .count(text.say("schedule.column.places"), 7, WeekAhead::places)
        .figure(
            text.say("schedule.column.work"),
            8,
            week -> text.hours(week.jobHours()),
            WeekAhead::basis)
        .number(text.say("schedule.column.driving"), 8, week -> text.hours(week.driveHours()))
        .number(text.say("schedule.column.inAll"), 8, week -> text.hours(week.hours()))
        .number(
            text.say("schedule.column.daysAtLimit"),
            9,
            week -> week.daysNeeded().map(Object::toString).orElse("–"))
        .plain();
  }

  /** Weeks begin on Monday; what is left of the present one stands with the first. */
  static String weekName(WeekAhead week, FigureText text) {
    LocalDate monday = ComingVisit.monday(week.to());
    return week.from().isBefore(monday)
        ? text.say("schedule.weekOfAndBefore", text.day(monday))
        : text.say("schedule.weekOf", text.day(monday));
  }

  private Table roundTable(String caption, List<Round> some) {
    return TableOf.rows(some)
        .words(text.say("schedule.column.when"), 15, this::when)
        .words(text.say("schedule.column.place"), 14, round -> placeOrNone(round.place()))
        .words(
            text.say("schedule.column.horses"),
            28,
            round -> DueTables.names(round.horses()).replace(";", ","))
        .number(
            text.say("schedule.column.work"),
            8,
            round -> text.minutes(round.workMinutes().setScale(0, RoundingMode.HALF_UP)))
        .words(
            text.say("schedule.column.neighbours"),
            24,
            round -> String.join(", ", round.neighbours()))
        .captioned(caption);
  }

  private String when(Round round) {
    return round.from().equals(round.to())
        ? text.weekday(round.from())
        : text.say("schedule.fromTo", text.weekday(round.from()), text.shortDay(round.to()));
  }

  private String placeOrNone(String place) {
    return placeOrNone(place, text);
  }

  /** A place's name, or that there is none. */
  static String placeOrNone(String place, FigureText text) {
    return place.isEmpty() ? text.say("schedule.noPlace") : place;
  }
}
