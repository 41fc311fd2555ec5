package clenchbook.schedule;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.jobs.Jobs;
import clenchbook.reports.blocks.FigureText;
import clenchbook.schedule.calendar.DueCalendar;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.round.Round;
import clenchbook.schedule.round.WeekAhead;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/** The due list of a month's end: start here. */
public final class DueList {

  private DueList() {}

  /**
   * Makes the due list as at a month's last day.
   *
   * @param jobs the whole book
   * @param month the month; visits after it are not looked at
   */
  public static DueFindings of(Jobs jobs, YearMonth month) {
    DueDates due = DueDates.of(jobs, month.atEndOfMonth());
    Settings settings = jobs.index().book().settings();
    Optional<Integer> limit =
        settings
            .findNumber(Setting.HORSES_PER_DAY_LIMIT)
            .map(number -> number.intValue())
            .filter(number -> number > 0);
    List<WeekAhead> weeks = WeekAhead.of(due, jobs.index(), limit);
    List<Round> rounds = Round.of(jobs, due);
    FigureText text = FigureText.of(settings);
    DuePages pages = new DuePages(due, weeks, rounds, text);
    return new DueFindings(
        due,
        List.of(
            DueTables.due(due),
            DueTables.horses(HorseCard.of(due)),
            DueTables.summary(due, weeks),
            DueTables.weeks(weeks),
            DueTables.rounds(rounds)),
        DueCalendar.text(due, jobs.index(), text.texts()),
        pages.next(limit),
        pages.full(),
        pages.inShort(),
        HorseSheet.of(due, weeks, limit, month, settings.text(Setting.BUSINESS_NAME), text));
  }
}
