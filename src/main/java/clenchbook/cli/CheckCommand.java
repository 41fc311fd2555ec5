package clenchbook.cli;

import clenchbook.commands.BookCheck;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command {@code check}. */
@Command(
    description =
        "Reads everything and prints each problem with its cell; writes nothing but what its"
            + " options ask for.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Mixin private final BookOptions book = new BookOptions();

  @Option(
      names = "--marked",
      paramLabel = "COPY",
      description = "Write a copy of the book with each problem cell coloured and noted.")
  private Optional<Path> marked = Optional.empty();

  @Option(
      names = "--propose",
      description =
          "Guess what unknown sheets and headings mean, from their names and contents, and write it"
              + " to '<workbook name>.headings.csv' beside the workbook, to look through; never"
              + " over a file that is there.")
  private boolean propose;

  @Override
  public Integer call() {
    return new BookCheck(book.book, book.register, marked, propose, book.machine(), book.terminal())
        .run();
  }
}
