package clenchbook.commands;

import clenchbook.commands.opening.Typing;
import clenchbook.commands.opening.WaitingFile;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;

/**
 * What a month's end is followed by.
 *
 * @param typing how the next command is typed
 * @param month the month that was run
 * @param page its page
 * @param held whether rows are held back
 * @param waiting whether payments wait to be pasted
 * @param drafts whether documents are left to issue
 * @param other the month of the last visits, where this one has neither visits nor documents
 */
record AfterMonthEnd(
    Typing typing,
    YearMonth month,
    Path page,
    boolean held,
    boolean waiting,
    boolean drafts,
    Optional<YearMonth> other) {

  /** A clause in the imperative; the first thing that is in the way comes first. */
  String inWords() {
    String again = typing.command("month-end", "--month", month.toString());
    if (held) {
      return "put the rows right that are held back, marked-copy.xlsx shows them; then " + again;
    }
    if (waiting) {
      return "paste " + WaitingFile.PATH + " into Payments; then " + again;
    }
    if (drafts) {
      String send = typing.command("send", "--month", month.toString());
      return "look at " + page + "; if it is right, " + send;
    }
    return other
        .map(
            last ->
                month
                    + " has no visits; run the month of the last ones, "
                    + typing.command("month-end", "--month", last.toString()))
        .orElse("look at " + page + "; nothing is left to send");
  }
}
