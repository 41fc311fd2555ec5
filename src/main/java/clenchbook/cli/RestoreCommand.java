package clenchbook.cli;

import clenchbook.commands.moving.RestoreRun;
import clenchbook.commands.opening.Terminal;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The command {@code restore}. */
@Command(
    description = "Puts a backup back, every file held against its digest; overwrites nothing.",
    mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FILE", description = "The zip that backup wrote.")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path file;

  @Parameters(
      index = "1",
      paramLabel = "DIR",
      description = "The folder to put it into; made where it is missing.")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path folder;

  @Override
  public Integer call() {
    return new RestoreRun(file, folder, Terminal.ofProcess()).run();
  }
}
