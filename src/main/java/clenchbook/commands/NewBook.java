package clenchbook.commands;

import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.StartedAs;
import clenchbook.commands.opening.Terminal;
import clenchbook.writing.StarterWorkbook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.YearMonth;
import java.util.Locale;

/** The command {@code new}: a starter workbook; an existing file is never overwritten. */
public final class NewBook {
  private NewBook() {}

  /**
   * Writes a starter workbook.
   *
   * @param file where to; must not exist
   * @param language in which it speaks: one that there is a starter in, ISO 639-1
   * @param started how the person starts the program
   * @param month the month that is under way
   * @param terminal where it says what to do next
   * @return 0
   * @throws RunFault when the file exists or can't be written
   */
  public static int write(
      Path file, String language, StartedAs started, YearMonth month, Terminal terminal) {
    String name = String.valueOf(file.getFileName());
    if (!name.toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new RunFault(name + ": a new workbook is an .xlsx file; give it that ending");
    }
    try (OutputStream out =
        Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      StarterWorkbook.write(language, started.plain(), out);
    } catch (FileAlreadyExistsException e) {
      throw new RunFault(name + " is already there; it was not touched", e);
    } catch (IOException e) {
      throw new RunFault(name + " can't be written: " + DiskTrouble.why(e), e);
    }
    terminal.say(
        name
            + " is ready; its first sheet tells how it is kept. The examples count for nothing as"
            + " they stand.");
    terminal.say(
        "Your first invoices: " + started.line("month-end", file.toString()) + " --month " + month);
    terminal.say(
        NextStep.of(
            "open it, write your own rows over the examples, save it; then "
                + started.line("check", file.toString())));
    return 0;
  }
}
