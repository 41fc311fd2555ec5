package clenchbook.cli;

import clenchbook.commands.NewBook;
import clenchbook.commands.opening.Terminal;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The command {@code new}. */
@Command(
    description = "Writes a starter workbook with headings, drop-down lists and example rows.",
    mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "BOOK", description = "The .xlsx file to make.")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path book;

  @Override
  public Integer call() {
    return NewBook.write(book, Terminal.ofProcess());
  }
}
