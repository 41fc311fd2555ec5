package clenchbook.commands.moving;

import clenchbook.backup.Contents;
import clenchbook.backup.Manifest;
import clenchbook.backup.PackedFile;
import clenchbook.backup.UnsoundBackup;
import clenchbook.commands.opening.DiskTrouble;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.NextStep;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Places;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.print.files.OwnerOnly;
import clenchbook.print.files.Tree;
import clenchbook.reading.FileSum;
import clenchbook.register.RegisterCopy;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The command {@code backup}: the book, its register and all that a run reads beside it, in one zip
 * with digests. Same files, same bytes. A file that exists is never overwritten.
 */
public final class BackupRun {
  private final BackupRequest request;
  private final Machine machine;
  private final Terminal terminal;

  /**
   * Makes the run.
   *
   * @param request what was asked
   * @param machine the machine
   * @param terminal where it speaks
   */
  public BackupRun(BackupRequest request, Machine machine, Terminal terminal) {
    this.request = request;
    this.machine = machine;
    this.terminal = terminal;
  }

  /**
   * Runs it.
   *
   * @return 0
   * @throws RunFault when it could not be done; then nothing was written
   */
  public int run() {
    Path to = request.to().toAbsolutePath();
    refuse(to);
    try {
      OpenBook open = OpenBook.read(request.book(), machine, terminal);
      Path registerFile = request.register().in(open, reports());
      terminal.progress(Message.of("commands.progress.packing"));
      List<PackedFile> packed = write(open, registerFile, to);
      terminal.say(
          Message.of("commands.backup.packed", request.to().toString(), Contents.inWords(packed)));
      if (!Files.exists(registerFile)) {
        terminal.warn(Message.of("commands.backup.noRegister"));
      }
      terminal.say(Message.of("commands.backup.notInIt"));
      terminal.say(
          NextStep.of(
              Message.of(
                  "commands.backup.next", NextStep.command("restore", request.to(), "DIR"))));
      return 0;
    } finally {
      terminal.clear();
    }
  }

  private Path reports() {
    return Places.reports(request.book(), request.out());
  }

  private void refuse(Path to) {
    if (Files.isDirectory(to)) {
      throw new RunFault(
          Message.of(
              "commands.backup.isFolder",
              request.to().toString(),
              to.resolve("mybook.zip").toString()));
    }
    if (Files.exists(to)) {
      throw new RunFault(Message.of("commands.alreadyThere", request.to().toString()));
    }
    Path folder = to.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new RunFault(Message.of("commands.backup.noFolder", String.valueOf(folder)));
    }
  }

  private List<PackedFile> write(OpenBook open, Path registerFile, Path to) {
    Path beside = to.resolveSibling("." + to.getFileName() + ".being-written");
    try {
      return write(open, registerFile, to, beside);
    } catch (UnsoundBackup unsound) {
      throw new RunFault(Message.of("commands.backup.unsound", unsound.message()), unsound);
    } catch (java.util.zip.ZipException changed) {
      throw changed(changed);
    } catch (IOException e) {
      throw DiskTrouble.writing(
          Message.of("commands.disk.backup"),
          request.to(),
          e,
          Message.of("commands.disk.nothingLost"));
    } finally {
      Tree.removeQuietly(beside);
    }
  }

  private List<PackedFile> write(OpenBook open, Path registerFile, Path to, Path beside)
      throws IOException, UnsoundBackup {
    Tree.remove(beside);
    OwnerOnly.makeFolders(beside);
    Optional<Path> register = register(open, registerFile, beside.resolve("register"));
    BesideTheBook place = new BesideTheBook(open);
    Map<PackedFile, Path> found =
        place.find(register, machine.headings(), request.rates(), reports());
    List<PackedFile> contents = Contents.of(found.keySet());
    Map<String, Path> files = new LinkedHashMap<>();
    contents.forEach(file -> files.put(file.name(), found.get(file)));
    Path zip = beside.resolve("zip");
    Manifest written = PackingFile.write(zip, place.book(), files);
    if (!FileSum.sha256(open.file()).equals(open.sha256()) || !sameBook(open, written)) {
      throw changed(null);
    }
    Files.move(zip, to);
    return contents;
  }

  /** A book that is a single file is the very one that was read. */
  private static boolean sameBook(OpenBook open, Manifest written) {
    return Files.isDirectory(open.file())
        || open.sha256().equals(written.digests().get(written.book()));
  }

  private Optional<Path> register(OpenBook open, Path file, Path copy) {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    request.register().checkBook(open, file, RegisterCopy.write(file, copy));
    return Optional.of(copy);
  }

  private RunFault changed(@org.jspecify.annotations.Nullable Throwable seen) {
    Message why = Message.of("commands.backup.changed");
    return seen == null ? new RunFault(why) : new RunFault(why, seen);
  }
}
