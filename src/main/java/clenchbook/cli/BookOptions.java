package clenchbook.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** What nearly every command takes: the workbook, and where files lie. */
final class BookOptions extends RunOptions {
  @Parameters(index = "0", paramLabel = "BOOK", descriptionKey = "cli.help.book")
  @SuppressWarnings("NullAway.Init") // set by the command line
  Path book;
}
