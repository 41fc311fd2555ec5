package clenchbook.commands.opening;

import clenchbook.texts.Message;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/** The month that is meant where none is named. */
public final class LastFullMonth {
  private LastFullMonth() {}

  /**
   * The month named, else the last full month before the day of the run, which is said.
   *
   * @param named the month of the command line
   * @param today the day of the run
   * @param terminal told first, where no month was named
   * @return the month
   */
  public static YearMonth of(Optional<YearMonth> named, LocalDate today, Terminal terminal) {
    if (named.isPresent()) {
      return named.get();
    }
    YearMonth month = YearMonth.from(today).minusMonths(1);
    terminal.say(
        Message.of(
            "commands.lastFullMonth", month.getMonth(), Integer.toString(month.getYear()), today));
    return month;
  }
}
