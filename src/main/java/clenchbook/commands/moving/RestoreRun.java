package clenchbook.commands.moving;

import clenchbook.backup.Manifest;
import clenchbook.backup.UnsoundBackup;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The command {@code restore}: puts a backup back after holding every file against its digest.
 * Nothing is overwritten, and of a damaged backup nothing is written.
 */
public final class RestoreRun {
  private static final String NOTHING = "; nothing was written";

  private final Path backup;
  private final Path folder;
  private final Terminal terminal;

  /**
   * Makes the run.
   *
   * @param backup the file that {@code backup} wrote
   * @param folder where to; made where it is missing
   * @param terminal where it speaks
   */
  public RestoreRun(Path backup, Path folder, Terminal terminal) {
    this.backup = backup;
    this.folder = folder;
    this.terminal = terminal;
  }

  /**
   * Runs it.
   *
   * @return 0
   * @throws RunFault when it could not be done
   */
  public int run() {
    if (!Files.isRegularFile(backup)) {
      throw new RunFault(backup + ": there is no such backup");
    }
    terminal.progress("looking it over");
    try (PackedBackup packed = PackedBackup.open(backup)) {
      Manifest manifest = packed.manifest();
      refuse(manifest);
      packed.verify();
      terminal.progress("putting it back");
      PutBack.all(packed, folder.toAbsolutePath().normalize());
      tell(manifest);
      return 0;
    } catch (UnsoundBackup unsound) {
      throw new RunFault(backup + ": " + unsound.getMessage() + NOTHING, unsound);
    } catch (InvalidPathException noName) {
      throw new RunFault(
          backup
              + ": a name in it has letters that this machine's setting can't put into file names;"
              + " start the program by its launcher or set a locale such as C.UTF-8"
              + NOTHING,
          noName);
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.restored"), folder, e, Message.of("commands.disk.backupWhole"));
    } finally {
      terminal.clear();
    }
  }

  private void refuse(Manifest manifest) throws IOException {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new RunFault(folder + " is no folder" + NOTHING);
    }
    List<String> standing = manifest.inTheWay(there());
    if (!standing.isEmpty()) {
      throw new RunFault(
          folder
              + " already holds "
              + String.join(", ", standing)
              + "; name a new folder, nothing is ever overwritten"
              + NOTHING);
    }
  }

  private List<String> there() throws IOException {
    List<String> names = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        files.forEach(file -> names.add(String.valueOf(file.getFileName())));
      }
    }
    return names;
  }

  private void tell(Manifest manifest) {
    Path book = folder.resolve(manifest.book());
    terminal.say("put back into " + folder + ": every file is as it was packed");
    terminal.say(
        NextStep.of(
            "go on with this copy alone, two would give the same numbers twice: "
                + NextStep.command("month-end", book)));
  }
}
