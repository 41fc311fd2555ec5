package clenchbook.schedule;

import clenchbook.book.Names;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.KeyFigure;
import clenchbook.reports.blocks.Block.KeyFigures;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.TableOf;
import clenchbook.schedule.due.ComingVisit;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.schedule.round.Round;
import clenchbook.schedule.round.WeekAhead;
import clenchbook.values.Basis;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The due list as blocks of a report and of the month's page. */
final class DuePages {

  private static final int ROUNDS_ON_PAGE = 6;
  private static final int ROUND_DAYS = 28;

  private DuePages() {}

  static List<Block> inShort(DueDates due, List<WeekAhead> weeks, List<Round> rounds) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Who is due"));
    blocks.add(keyFigures(due, weeks));
    List<DueHorse> overdue = overdue(due);
    if (!overdue.isEmpty()) {
      blocks.add(horseTable("Overdue", overdue));
    }
    List<Round> next = rounds.stream().limit(ROUNDS_ON_PAGE).toList();
    if (!next.isEmpty()) {
      blocks.add(roundTable("The next rounds", next));
    }
    return blocks;
  }

  static List<Block> full(
      DueDates due, List<WeekAhead> weeks, List<Round> rounds, Optional<Integer> limit) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(1, "Who is due"));
    blocks.add(keyFigures(due, weeks));
    blocks.add(
        new Paragraph(
            "A horse is due one interval after its last visit that was no lost-shoe call. The"
                + " interval in weeks is the one in Horses; where none is given it is the median of"
                + " the horse's own visits, and the table says so."));
    addHorses(blocks, "Overdue", overdue(due));
    byWeek(due).forEach((monday, horses) -> blocks.add(horseTable("Week of " + monday, horses)));
    weeksAhead(blocks, weeks, limit);
    List<Round> soon =
        rounds.stream().filter(r -> !r.from().isAfter(due.asAt().plusDays(ROUND_DAYS))).toList();
    if (!soon.isEmpty()) {
      blocks.add(new Heading(2, "Rounds of the next four weeks"));
      blocks.add(
          new Paragraph(
              "Horses of one place that come due within a week of each other. Neighbours are places"
                  + " that shared a day with it at least twice in the last twelve months and have a"
                  + " round within the same week."));
      blocks.add(roundTable("", soon));
    }
    goneQuiet(blocks, due);
    return blocks;
  }

  private static List<DueHorse> overdue(DueDates due) {
    return due.expected().stream()
        .filter(horse -> horse.daysOverdue() > 0)
        .sorted(Comparator.comparing(DueHorse::place, Names.ORDER).thenComparing(DueHorse.BY_DATE))
        .toList();
  }

  private static Map<String, List<DueHorse>> byWeek(DueDates due) {
    Map<LocalDate, List<DueHorse>> weeks = new TreeMap<>();
    due.expected().stream()
        .filter(horse -> horse.daysOverdue() == 0)
        .sorted(Comparator.comparing(DueHorse::place, Names.ORDER).thenComparing(DueHorse.BY_DATE))
        .forEach(
            horse ->
                weeks
                    .computeIfAbsent(ComingVisit.monday(horse.due()), day -> new ArrayList<>())
                    .add(horse));
    Map<String, List<DueHorse>> named = new LinkedHashMap<>();
    weeks.forEach((monday, horses) -> named.put(ScheduleText.day(monday), horses));
    return named;
  }

  private static KeyFigures keyFigures(DueDates due, List<WeekAhead> weeks) {
    Basis basis = weeks.stream().map(WeekAhead::basis).reduce(Basis.MEASURED, Basis::weaker);
    int horses = weeks.stream().mapToInt(WeekAhead::horses).sum();
    return new KeyFigures(
        List.of(
            figure("Overdue", ScheduleText.horses(overdue(due).size())),
            figure("Visits in the next four weeks", Integer.toString(horses)),
            new KeyFigure(
                "Hours of work they ask",
                DueTables.total(weeks, WeekAhead::jobHours) + " h",
                horses == 0 ? Optional.empty() : Optional.of(basis)),
            figure("Gone quiet", ScheduleText.horses(due.goneQuiet().size()))));
  }

  private static KeyFigure figure(String label, String value) {
    return new KeyFigure(label, value, Optional.empty());
  }

  private static void addHorses(List<Block> blocks, String caption, List<DueHorse> horses) {
    if (!horses.isEmpty()) {
      blocks.add(horseTable(caption, horses));
    }
  }

  private static Table horseTable(String caption, List<DueHorse> horses) {
    return TableOf.rows(horses)
        .words("Place", 15, horse -> ScheduleText.placeOrNone(horse.place()))
        .words("Horse", 11, horse -> horse.id().name())
        .words("Owner", 16, DueHorse::owner)
        .words("Last", 11, horse -> ScheduleText.date(horse.last()))
        .figure(
            "Weeks",
            9,
            horse -> horse.interval().weeks(),
            horse -> horse.interval().source().basis())
        .words("Weeks from", 11, horse -> horse.interval().source().words())
        .words("Due", 11, horse -> ScheduleText.date(horse.due()))
        .count("Overdue (days)", 9, DueHorse::daysOverdue)
        .captioned(caption);
  }

  private static void weeksAhead(
      List<Block> blocks, List<WeekAhead> weeks, Optional<Integer> limit) {
    blocks.add(new Heading(2, "The next four weeks"));
    blocks.add(weekTable(weeks));
    blocks.add(weekPicture(weeks));
    blocks.add(
        new Paragraph(
            "Hours of work are the median of each horse's own visits with its usual Work. Overdue"
                + " horses count in the first week. Driving is reckoned out and back for every"
                + " place, which overstates rounds."));
    limit.ifPresent(most -> blocks.add(new Paragraph(overLimit(weeks, most))));
  }

  private static String overLimit(List<WeekAhead> weeks, int limit) {
    List<String> days =
        weeks.stream().map(DueTables::overLimit).filter(text -> !text.isEmpty()).toList();
    return days.isEmpty()
        ? "On no day do more than " + ScheduleText.horses(limit) + ", your limit, come due."
        : "More than "
            + ScheduleText.horses(limit)
            + ", your limit, come due on: "
            + String.join("; ", days)
            + ".";
  }

  private static Table weekTable(List<WeekAhead> weeks) {
    return TableOf.rows(weeks)
        .words(
            "Week",
            18,
            week -> ScheduleText.day(week.from()) + " to " + ScheduleText.day(week.to()))
        .count("Horses", 7, WeekAhead::horses)
        .count("Places", 7, WeekAhead::places)
        .figure("Work (h)", 8, week -> week.jobHours().toPlainString(), WeekAhead::basis)
        .amount("Driving (h)", 8, WeekAhead::driveHours)
        .amount("In all (h)", 8, WeekAhead::hours)
        .number(
            "Days at your limit", 9, week -> week.daysNeeded().map(Object::toString).orElse("–"))
        .total(
            "Four weeks",
            Integer.toString(weeks.stream().mapToInt(WeekAhead::horses).sum()),
            "",
            DueTables.total(weeks, WeekAhead::jobHours),
            DueTables.total(weeks, WeekAhead::driveHours),
            DueTables.total(weeks, WeekAhead::hours),
            "")
        .plain();
  }

  private static Block weekPicture(List<WeekAhead> weeks) {
    List<String> names = weeks.stream().map(week -> ScheduleText.day(week.from())).toList();
    Chart chart =
        new Chart.Columns(
            "Week from",
            "Hours",
            names,
            List.of(
                new Chart.Series(
                    "Work", weeks.stream().map(week -> week.jobHours().doubleValue()).toList()),
                new Chart.Series(
                    "Driving",
                    weeks.stream().map(week -> week.driveHours().doubleValue()).toList())),
            true,
            false,
            List.of());
    String words =
        "The next four weeks ask "
            + DueTables.total(weeks, WeekAhead::hours)
            + " hours of work and driving.";
    return new Block.Picture("Hours the next four weeks ask", words, chart);
  }

  private static Table roundTable(String caption, List<Round> rounds) {
    return TableOf.rows(rounds)
        .words("From", 11, round -> ScheduleText.day(round.from()))
        .words("To", 11, round -> ScheduleText.day(round.to()))
        .words("Place", 15, round -> ScheduleText.placeOrNone(round.place()))
        .count("Horses", 7, round -> round.horses().size())
        .words("Which", 21, round -> DueTables.names(round.horses()))
        .amount("Work (min)", 7, round -> round.workMinutes().setScale(0, RoundingMode.HALF_UP))
        .words("Neighbours due too", 19, round -> String.join("; ", round.neighbours()))
        .captioned(caption);
  }

  private static void goneQuiet(List<Block> blocks, DueDates due) {
    if (due.goneQuiet().isEmpty()) {
      return;
    }
    blocks.add(new Heading(2, "Gone quiet"));
    blocks.add(
        new Paragraph(
            "Not seen for two of their intervals or more. A call may bring them back; an Until in"
                + " Horses takes them off the list."));
    blocks.add(horseTable("", due.goneQuiet()));
  }
}
