package clenchbook.cli;

import clenchbook.commands.moving.RestoreRun;
import clenchbook.commands.opening.Terminal;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The command {@code restore}. */
@Command(description = "cli.command.restore", mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "cli.help.backupFile")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path file;

  @Parameters(index = "1", paramLabel = "DIR", descriptionKey = "cli.help.backupFolder")
  @SuppressWarnings("NullAway.Init") // set by the command line
  private Path folder;

  @Override
  public Integer call() {
    return new RestoreRun(file, folder, Terminal.ofProcess()).run();
  }
}
