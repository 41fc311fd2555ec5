package clenchbook.register;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What the database complains of, in one line that says what to do. */
final class RegisterTrouble {
  private static final int MOST_NAMED = 5;

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

  /** What is said of a register whose documents are not as they were stored. */
  static RegisterFault damaged(Path file, List<String> faults) {
    int more = faults.size() - MOST_NAMED;
    return new RegisterFault(
        "the register "
            + file.getFileName()
            + " is damaged: "
            + String.join("; ", faults.subList(0, Math.min(MOST_NAMED, faults.size())))
            + (more > 0 ? " and " + more + " more" : "")
            + "; put back a copy of it, nothing was written or sent");
  }

  private static String damage(Path file) {
    return "the register "
        + file.getFileName()
        + " is damaged; put back a copy of it (nothing was changed), or name another with"
        + " --register";
  }
}
