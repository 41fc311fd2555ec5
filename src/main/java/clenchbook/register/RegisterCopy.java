package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;

/** A copy of a register, byte for byte, as no run is writing it. */
public final class RegisterCopy {
  private RegisterCopy() {}

  /**
   * Copies a register that is sound. It is locked meanwhile as a run locks it; one that may not be
   * written, as on a disk that can only be read, is held against writing instead.
   *
   * @param file the register's file
   * @param to the copy; made anew
   * @return the documents that the copy holds
   * @throws RegisterFault when it is in use by a run, damaged, of a newer version, or the copy
   *     can't be written
   */
  public static List<BilledDocument> write(Path file, Path to) {
    Register.read(file);
    boolean writable = writable(file);
    try (RegisterDatabase database =
            writable ? RegisterDatabase.open(file) : RegisterDatabase.readOnly(file);
        OutputStream out = Files.newOutputStream(to)) {
      if (writable) {
        database.lock();
      } else {
        database.hold();
      }
      // Closing the file gives up what the process holds of its lock (SQLite, "How To Corrupt An
      // SQLite Database File", section 2.2): by then it is read, and nothing is written after.
      Files.copy(file, out);
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    } catch (IOException e) {
      throw new RegisterFault(
          Message.of(
              "register.cantCopy",
              String.valueOf(file.getFileName()),
              String.valueOf(e.getMessage())),
          e);
    }
    return Register.read(to);
  }

  private static boolean writable(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return Files.isWritable(file) && folder != null && Files.isWritable(folder);
  }
}
