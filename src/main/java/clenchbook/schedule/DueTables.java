package clenchbook.schedule;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.schedule.due.ComingVisit;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.schedule.due.UsualVisit;
import clenchbook.schedule.round.Round;
import clenchbook.schedule.round.WeekAhead;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The figures of the due list as tables for files. */
final class DueTables {

  private DueTables() {}

  static FigureTable due(DueDates due) {
    return FiguresOf.rows(due.horses())
        .column("horse", horse -> horse.id().name())
        .column("owner", DueHorse::owner)
        .column("place", DueHorse::place)
        .column("last", horse -> horse.last().toString())
        .column("interval_weeks", horse -> horse.interval().weeks())
        .column("due", horse -> horse.due().toString())
        .count("days_overdue", horse -> horse.daysOverdue())
        .column("state", DueHorse::state)
        .column("interval_from", horse -> horse.interval().source().words())
        .column("week", horse -> ComingVisit.monday(horse.due()).toString())
        .column("last_seen", horse -> horse.lastSeen().toString())
        .column("usual_work", horse -> UsualVisit.of(horse).workNames())
        .column(
            "usual_minutes",
            horse ->
                UsualVisit.of(horse)
                    .workMinutes()
                    .setScale(0, RoundingMode.HALF_UP)
                    .toPlainString())
        .named("due");
  }

  static FigureTable horses(List<HorseCard> cards) {
    return FiguresOf.rows(cards)
        .column("horse", card -> card.due().id().name())
        .column("owner", card -> card.due().owner())
        .column("place", card -> card.due().place())
        .column("last", card -> card.due().last().toString())
        .column("work", HorseCard::work)
        .column("shoe", HorseCard::shoe)
        .column("size", HorseCard::size)
        .count("shoes", card -> card.shoes())
        .count("nails", card -> card.nails())
        .column("extras", HorseCard::extras)
        .column("notes", HorseCard::notes)
        .column("due", card -> card.due().due().toString())
        .column("horse_notes", card -> card.due().horseNotes())
        .column("nail", HorseCard::nail)
        .column("shaping", HorseCard::shaping)
        .named("horses");
  }

  static FigureTable summary(DueDates due, List<WeekAhead> weeks) {
    long overdue = due.expected().stream().filter(horse -> horse.daysOverdue() > 0).count();
    int visits = weeks.stream().mapToInt(WeekAhead::horses).sum();
    return new FigureTable(
        "due-summary",
        List.of("figure", "value", "unit"),
        List.of(
            List.of("overdue", Long.toString(overdue), "horses"),
            List.of("visits in the next four weeks", Integer.toString(visits), "horses"),
            List.of("work in the next four weeks", total(weeks, WeekAhead::jobHours), "hours"),
            List.of("gone quiet", Integer.toString(due.goneQuiet().size()), "horses")));
  }

  static FigureTable weeks(List<WeekAhead> weeks) {
    List<List<String>> rows = new ArrayList<>();
    weeks.forEach(week -> rows.add(weekRow(week)));
    rows.add(
        List.of(
            "four weeks",
            weeks.get(0).from().toString(),
            weeks.get(weeks.size() - 1).to().toString(),
            Integer.toString(weeks.stream().mapToInt(WeekAhead::horses).sum()),
            "",
            total(weeks, WeekAhead::jobHours),
            total(weeks, WeekAhead::driveHours),
            total(weeks, WeekAhead::hours),
            "",
            "",
            ""));
    return new FigureTable(
        "due-weeks",
        List.of(
            "week",
            "from",
            "to",
            "horses",
            "places",
            "job_hours",
            "drive_hours",
            "hours",
            "basis",
            "days_needed_at_limit",
            "days_over_limit"),
        rows);
  }

  private static List<String> weekRow(WeekAhead week) {
    return List.of(
        "week",
        week.from().toString(),
        week.to().toString(),
        Integer.toString(week.horses()),
        Integer.toString(week.places()),
        week.jobHours().toPlainString(),
        week.driveHours().toPlainString(),
        week.hours().toPlainString(),
        week.basis().name().toLowerCase(Locale.ROOT),
        week.daysNeeded().map(Object::toString).orElse(""),
        overLimit(week));
  }

  static String overLimit(WeekAhead week) {
    List<String> days = new ArrayList<>();
    week.overLimit().forEach((day, horses) -> days.add(day + ": " + horses));
    return String.join("; ", days);
  }

  static String total(List<WeekAhead> weeks, Function<WeekAhead, BigDecimal> part) {
    return weeks.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add).toPlainString();
  }

  static FigureTable rounds(List<Round> rounds) {
    return FiguresOf.rows(rounds)
        .column("place", Round::place)
        .column("from", round -> round.from().toString())
        .column("to", round -> round.to().toString())
        .count("horses", round -> round.horses().size())
        .column("names", round -> names(round.horses()))
        .column(
            "work_minutes",
            round -> round.workMinutes().setScale(0, RoundingMode.HALF_UP).toPlainString())
        .column("neighbours", round -> String.join("; ", round.neighbours()))
        .named("rounds");
  }

  static String names(List<DueHorse> horses) {
    return String.join("; ", horses.stream().map(horse -> horse.id().name()).toList());
  }
}
