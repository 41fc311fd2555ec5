package clenchbook.register;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;

/** The database of a register: how it is made and opened, and its lock against other runs. */
final class RegisterDatabase implements AutoCloseable {
  private static final int WAIT_FOR_ANOTHER_RUN_MS = 2000;

  private final Connection connection;
  private boolean locked;

  private RegisterDatabase(Connection connection) {
    this.connection = connection;
  }

  /** Makes a register without documents; no other run sees it before it is whole. */
  static void make(Path file) throws SQLException, IOException {
    Path making = RegisterFile.making(file);
    try (RegisterDatabase database = open(making)) {
      database.lock();
      RegisterSchema.create(database.connection, RegisterSchema.VERSION);
      database.commit();
    }
    RegisterFile.made(making, file);
  }

  /** Opens a register for writing, not yet locked. */
  static RegisterDatabase open(Path file) throws SQLException {
    return connected(file, false);
  }

  /** Opens a register so that nothing in it can change. */
  static RegisterDatabase readOnly(Path file) throws SQLException {
    return connected(file, true);
  }

  /** Copies a register into memory, where it may change while the file stays as it is. */
  static RegisterDatabase copyInMemory(Path file) throws SQLException {
    Connection memory = new SQLiteConfig().createConnection("jdbc:sqlite::memory:");
    RegisterDatabase copy = new RegisterDatabase(memory);
    try {
      copy.execute("restore from '" + file.toAbsolutePath().toString().replace("'", "''") + "'");
      return copy;
    } catch (SQLException fault) {
      copy.close();
      throw fault;
    }
  }

  private static RegisterDatabase connected(Path file, boolean readOnly) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(readOnly);
    config.setJournalMode(SQLiteConfig.JournalMode.DELETE);
    // EXTRA also syncs the folder once the journal is gone, so that a commit survives a power cut.
    config.setPragma(SQLiteConfig.Pragma.SYNCHRONOUS, "EXTRA");
    config.enforceForeignKeys(true);
    config.setBusyTimeout(WAIT_FOR_ANOTHER_RUN_MS);
    return new RegisterDatabase(config.createConnection("jdbc:sqlite:" + file.toAbsolutePath()));
  }

  /** For the tables of this package; it is closed with this database. */
  Connection connection() {
    return connection;
  }

  /** Keeps other runs from writing until the next commit, or until the lock is given up. */
  void lock() throws SQLException {
    execute("BEGIN IMMEDIATE");
    locked = true;
  }

  /** Keeps other runs from committing until it is closed, without a right to write. */
  void hold() throws SQLException {
    execute("BEGIN");
    execute("SELECT count(*) FROM sqlite_master");
    locked = true;
  }

  /** Makes durable what was done since the lock, which is given up. */
  void commit() throws SQLException {
    execute("COMMIT");
    locked = false;
  }

  /** Gives up the lock, if it is held, and what was done since. */
  void unlock() throws SQLException {
    if (locked) {
      execute("ROLLBACK");
      locked = false;
    }
  }

  private void execute(String command) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(command);
    }
  }

  @Override
  public void close() throws SQLException {
    try (connection) {
      unlock();
    }
  }
}
