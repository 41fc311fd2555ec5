package clenchbook.commands;

import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.StartedAs;
import clenchbook.commands.opening.Terminal;
import clenchbook.texts.Message;
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
      throw new RunFault(Message.of("commands.newBook.ending", name));
    }
    try (OutputStream out =
        Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      StarterWorkbook.write(language, started.plain(), out);
    } catch (FileAlreadyExistsException e) {
      throw new RunFault(Message.of("commands.alreadyThere", name), e);
    } catch (IOException e) {
      throw new RunFault(Message.of("commands.cantWrite", name, DiskTrouble.why(e)), e);
    }
    terminal.say(Message.of("commands.newBook.ready", name));
    String monthEnd = started.line("month-end", file.toString()) + " --month " + month;
    terminal.say(Message.of("commands.newBook.firstInvoices", monthEnd));
    String check = started.line("check", file.toString());
    terminal.say(NextStep.of(Message.of("commands.newBook.next", check)));
    return 0;
  }
}
