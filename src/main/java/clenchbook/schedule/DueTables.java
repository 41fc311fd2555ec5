package clenchbook.schedule;

import clenchbook.reports.blocks.FigureTable;
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
    return new FigureTable(
        "due",
        List.of(
            "horse",
            "owner",
            "place",
            "last",
            "interval_weeks",
            "due",
            "days_overdue",
            "state",
            "interval_from",
            "week",
            "last_seen",
            "usual_work",
            "usual_minutes"),
        due.horses().stream().map(DueTables::dueRow).toList());
  }

  private static List<String> dueRow(DueHorse horse) {
    UsualVisit usual = UsualVisit.of(horse);
    return List.of(
        horse.id().name(),
        horse.owner(),
        horse.place(),
        horse.last().toString(),
        horse.interval().weeks(),
        horse.due().toString(),
        Long.toString(horse.daysOverdue()),
        horse.state(),
        horse.interval().source().words(),
        ComingVisit.monday(horse.due()).toString(),
        horse.lastSeen().toString(),
        usual.workNames(),
        usual.workMinutes().setScale(0, RoundingMode.HALF_UP).toPlainString());
  }

  static FigureTable horses(List<HorseCard> cards) {
    return new FigureTable(
        "horses",
        List.of(
            "horse",
            "owner",
            "place",
            "last",
            "work",
            "shoe",
            "size",
            "shoes",
            "nails",
            "extras",
            "notes",
            "due",
            "horse_notes",
            "nail",
            "shaping"),
        cards.stream().map(DueTables::horseRow).toList());
  }

  private static List<String> horseRow(HorseCard card) {
    DueHorse horse = card.due();
    return List.of(
        horse.id().name(),
        horse.owner(),
        horse.place(),
        horse.last().toString(),
        card.work(),
        card.shoe(),
        card.size(),
        Integer.toString(card.shoes()),
        Integer.toString(card.nails()),
        card.extras(),
        card.notes(),
        horse.due().toString(),
        horse.horseNotes(),
        card.nail(),
        card.shaping());
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
    return new FigureTable(
        "rounds",
        List.of("place", "from", "to", "horses", "names", "work_minutes", "neighbours"),
        rounds.stream()
            .map(
                round ->
                    List.of(
                        round.place(),
                        round.from().toString(),
                        round.to().toString(),
                        Integer.toString(round.horses().size()),
                        names(round.horses()),
                        round.workMinutes().setScale(0, RoundingMode.HALF_UP).toPlainString(),
                        String.join("; ", round.neighbours())))
            .toList());
  }

  static String names(List<DueHorse> horses) {
    return String.join("; ", horses.stream().map(horse -> horse.id().name()).toList());
  }
}
