package clenchbook.register;

import clenchbook.texts.Message;
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
    String name = String.valueOf(file.getFileName());
    int primary = code.code & 0xff;
    if (primary == SQLiteErrorCode.SQLITE_BUSY.code
        || primary == SQLiteErrorCode.SQLITE_LOCKED.code) {
      return new RegisterFault(Message.of("register.inUse", name), e);
    }
    if (primary == SQLiteErrorCode.SQLITE_CORRUPT.code
        || primary == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return new RegisterFault(damage(file), e);
    }
    if (primary == SQLiteErrorCode.SQLITE_FULL.code
        || primary == SQLiteErrorCode.SQLITE_IOERR.code) {
      return new RegisterFault(Message.of("register.diskFull", name), e);
    }
    if (primary == SQLiteErrorCode.SQLITE_READONLY.code
        || primary == SQLiteErrorCode.SQLITE_CANTOPEN.code
        || primary == SQLiteErrorCode.SQLITE_PERM.code) {
      return new RegisterFault(Message.of("register.noRight", name), e);
    }
    return new RegisterFault(
        Message.of("register.cantUse", name, String.valueOf(e.getMessage())), e);
  }

  /** What is said of a register that is no register any more. */
  static RegisterFault damaged(Path file) {
    return new RegisterFault(damage(file));
  }

  /** What is said of a register whose documents are not as they were stored. */
  static RegisterFault damaged(Path file, List<Message> faults) {
    int more = faults.size() - MOST_NAMED;
    String name = String.valueOf(file.getFileName());
    Message named = Message.joined("; ", faults.subList(0, Math.min(MOST_NAMED, faults.size())));
    return new RegisterFault(
        more > 0
            ? Message.of("register.damaged.more", name, named, more)
            : Message.of("register.damaged.faults", name, named));
  }

  private static Message damage(Path file) {
    return Message.of("register.damaged", String.valueOf(file.getFileName()));
  }
}
