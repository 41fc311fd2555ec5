package clenchbook.register;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What the database complains of, in one line that says what to do. */
final class RegisterTrouble {
  private RegisterTrouble() {}

  /** The database's word in one line that says what to do. */
  static RegisterFault of(Path file, SQLException e) {
    SQLiteErrorCode code =
        e instanceof SQLiteException lite ? lite.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
    String name = "the register " + file.getFileName();
    int primary = code.code & 0xff;
    if (primary == SQLiteErrorCode.SQLITE_BUSY.code
        || primary == SQLiteErrorCode.SQLITE_LOCKED.code) {
      return new RegisterFault(name + " is in use by another run; wait for it, then run again", e);
    }
    if (primary == SQLiteErrorCode.SQLITE_CORRUPT.code
        || primary == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return new RegisterFault(damage(file), e);
    }
    if (primary == SQLiteErrorCode.SQLITE_FULL.code
        || primary == SQLiteErrorCode.SQLITE_IOERR.code) {
      return new RegisterFault(
          name + " can't be written: the disk is full or failing; make room, then run again", e);
    }
    if (primary == SQLiteErrorCode.SQLITE_READONLY.code
        || primary == SQLiteErrorCode.SQLITE_CANTOPEN.code
        || primary == SQLiteErrorCode.SQLITE_PERM.code) {
      return new RegisterFault(
          name + " can't be written; mend the rights of the file and its folder", e);
    }
    return new RegisterFault(name + " can't be used: " + e.getMessage(), e);
  }

  /** What is said of a register that is no register any more. */
  static RegisterFault damaged(Path file) {
    return new RegisterFault(damage(file));
  }

  private static String damage(Path file) {
    return "the register "
        + file.getFileName()
        + " is damaged; put back a copy of it (nothing was changed), or name another with"
        + " --register";
  }
}
