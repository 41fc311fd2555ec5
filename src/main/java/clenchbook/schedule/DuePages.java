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
      String more =
          overdue.size() > HORSES_ON_PAGE
              ? ": %s of %s".formatted(text.count(HORSES_ON_PAGE), text.count(overdue.size()))
              : "";
      blocks.add(
          TableOf.rows(overdue.stream().limit(HORSES_ON_PAGE).toList())
              .words("Horse", 8, horse -> horse.id().name())
              .words("Owner", 12, DueHorse::owner)
              .words("Place", 12, horse -> ScheduleText.placeOrNone(horse.place()))
              .number("Days overdue", 5, horse -> text.count(horse.daysOverdue()))
              .captioned("Overdue horses, the longest first" + more));
    }
    blocks.add(weekTable());
    return blocks;
  }

  /** For the report of stock and round: the next four weeks and the rounds of the first two. */
  List<Block> next(Optional<Integer> limit) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "The next four weeks"));
    blocks.add(weekTable());
    limit.ifPresent(most -> blocks.add(new Paragraph(overLimit(most))));
    List<Round> soon = roundsWithin(ROUND_DAYS);
    if (!soon.isEmpty()) {
      blocks.add(roundTable("Rounds of the next two weeks", soon));
    }
    return blocks;
  }

  /** For the annex: every horse by week, and the rounds beyond two weeks. */
  List<Block> full() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Who is due, week by week"));
    blocks.add(
        new Paragraph(
            "A horse is due one interval after its last visit that was no lost-shoe call. The"
                + " interval in weeks is the one in Horses; where none is given it is the median of"
                + " the horse's own visits, and the table says so. Hours of work are the median of"
                + " each horse's own visits with its usual Work. Overdue horses count in the first"
                + " week. Driving is taken out and back for every place, which overstates"
                + " rounds."));
    if (!due.overdue().isEmpty()) {
      blocks.add(horseTable("Overdue", due.overdue()));
    }
    byWeek()
        .forEach((monday, horses) -> blocks.add(horseTable("Week of " + text.day(monday), horses)));
    if (!due.goneQuiet().isEmpty()) {
      blocks.add(new Heading(2, "Gone quiet"));
      blocks.add(
          new Paragraph(
              "Not seen for two of their intervals or more. A call may bring them back; an Until in"
                  + " Horses takes them off the list."));
      blocks.add(horseTable("", due.goneQuiet()));
    }
    blocks.add(new Heading(2, "Rounds of the next eight weeks"));
    blocks.add(
        new Paragraph(
            "Horses of one place that come due within a week of each other. Neighbours are places"
                + " that shared a day with it at least twice in the last twelve months and have a"
                + " round within the same week."));
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
        .words("Place", 15, horse -> ScheduleText.placeOrNone(horse.place()))
        .words("Horse", 11, horse -> horse.id().name())
        .words("Owner", 16, DueHorse::owner)
        .words("Last", 8, horse -> text.shortDay(horse.last()))
        .figure(
            "Weeks",
            9,
            horse -> horse.interval().weeks(),
            horse -> horse.interval().source().basis())
        .words("Weeks from", 12, horse -> horse.interval().source().words())
        .words("Due", 8, horse -> text.shortDay(horse.due()))
        .number("Days overdue", 8, DuePages::overdueDays)
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
        ? "On no day do more horses than %s, your limit, come due.".formatted(text.count(limit))
        : "More horses than %s, your limit, come due on %s."
            .formatted(text.count(limit), String.join(", ", days));
  }

  private Table weekTable() {
    return TableOf.rows(weeks)
        .words("Week", 18, week -> weekName(week, text))
        .count("Horses", 7, WeekAhead::horses)
        .count("Places", 7, WeekAhead::places)
        .figure("Work", 8, week -> text.hours(week.jobHours()), WeekAhead::basis)
        .number("Driving", 8, week -> text.hours(week.driveHours()))
        .number("In all", 8, week -> text.hours(week.hours()))
        .number(
            "Days at your limit", 9, week -> week.daysNeeded().map(Object::toString).orElse("–"))
        .plain();
  }

  /** Weeks begin on Monday; what is left of the present one stands with the first. */
  static String weekName(WeekAhead week, FigureText text) {
    LocalDate monday = ComingVisit.monday(week.to());
    return week.from().isBefore(monday)
        ? "Week of %s, and the days before it".formatted(text.day(monday))
        : "Week of " + text.day(monday);
  }

  private Table roundTable(String caption, List<Round> some) {
    return TableOf.rows(some)
        .words("When", 15, this::when)
        .words("Place", 14, round -> ScheduleText.placeOrNone(round.place()))
        .words("Horses", 28, round -> DueTables.names(round.horses()).replace(";", ","))
        .number(
            "Work", 8, round -> text.minutes(round.workMinutes().setScale(0, RoundingMode.HALF_UP)))
        .words("Neighbours due too", 24, round -> String.join(", ", round.neighbours()))
        .captioned(caption);
  }

  private String when(Round round) {
    return round.from().equals(round.to())
        ? text.weekday(round.from())
        : "%s to %s".formatted(text.weekday(round.from()), text.shortDay(round.to()));
  }
}
