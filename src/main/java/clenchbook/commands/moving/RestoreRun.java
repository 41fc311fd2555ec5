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
      throw new RunFault(Message.of("commands.restore.noBackup", backup.toString()));
    }
    terminal.progress(Message.of("commands.progress.lookingOver"));
    try (PackedBackup packed = PackedBackup.open(backup)) {
      Manifest manifest = packed.manifest();
      refuse(manifest);
      packed.verify();
      terminal.progress(Message.of("commands.progress.puttingBack"));
      PutBack.all(packed, folder.toAbsolutePath().normalize());
      tell(manifest);
      return 0;
    } catch (UnsoundBackup unsound) {
      throw new RunFault(
          Message.of("commands.restore.unsound", backup.toString(), unsound.message()), unsound);
    } catch (InvalidPathException noName) {
      throw new RunFault(Message.of("commands.restore.noName", backup.toString()), noName);
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.restored"), folder, e, Message.of("commands.disk.backupWhole"));
    } finally {
      terminal.clear();
    }
  }

  private void refuse(Manifest manifest) throws IOException {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new RunFault(Message.of("commands.restore.noFolder", folder.toString()));
    }
    List<String> standing = manifest.inTheWay(there());
    if (!standing.isEmpty()) {
      throw new RunFault(Message.of("commands.restore.inTheWay", folder.toString(), standing));
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
    terminal.say(Message.of("commands.restore.done", folder.toString()));
    terminal.say(
        NextStep.of(Message.of("commands.restore.next", NextStep.command("month-end", book))));
  }
}
