package clenchbook.commands;

import clenchbook.commands.opening.Typing;
import clenchbook.commands.opening.WaitingFile;
import clenchbook.texts.Message;
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
  Message inWords() {
    String again = typing.command("month-end", "--month", month.toString());
    if (held) {
      return Message.of("commands.monthEnd.nextHeld", again);
    }
    if (waiting) {
      return Message.of("commands.monthEnd.nextPaste", WaitingFile.PATH, again);
    }
    if (drafts) {
      String send = typing.command("send", "--month", month.toString());
      return Message.of("commands.monthEnd.nextSend", page.toString(), send);
    }
    return other
        .map(
            last ->
                Message.of(
                    "commands.monthEnd.nextOther",
                    month,
                    typing.command("month-end", "--month", last.toString())))
        .orElseGet(() -> Message.of("commands.monthEnd.nextNothing", page.toString()));
  }
}
