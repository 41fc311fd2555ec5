package clenchbook.register;

import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** The register's versions: each is the one before it and a script. */
final class RegisterSchema {
  /** The version this program writes. */
  static final int VERSION = 5;

  /** The first version that keeps a digest of each document. */
  private static final int DIGESTS = 3;

  /** The first version whose digest covers all that is stored of a document. */
  private static final int WHOLE_DIGESTS = 5;

  /** Marks the file as a register of this program; the letters "Clnc". */
  static final int APPLICATION = 0x436c6e63;

  private RegisterSchema() {}

  /** Lays out an empty database up to a version. */
  static void create(Connection connection, int version) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA application_id = " + APPLICATION);
    }
    for (int step = 1; step <= version; step++) {
      run(connection, step);
    }
  }

  /**
   * Brings a register up to this version, after a copy of the file has been made beside it.
   *
   * @return whether there was anything to do
   */
  static boolean migrate(Connection connection, Path file) throws SQLException {
    int version = version(connection);
    refuse(connection, version, file);
    if (version < VERSION) {
      Path copy = copy(file, version);
      lockAgain(connection);
      try {
        upgrade(connection, file);
      } catch (RegisterFault damaged) {
        // Nothing was changed: a copy beside the damaged register would be taken for a sound one.
        withdraw(copy);
        throw damaged;
      }
    }
    return version < VERSION;
  }

  /**
   * Closing the copied file gave up the lock of the whole process, unseen by the database (SQLite,
   * "How To Corrupt An SQLite Database File", section 2.2).
   */
  private static void lockAgain(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("ROLLBACK");
      statement.execute("BEGIN IMMEDIATE");
    }
  }

  private static void withdraw(Path copy) {
    try {
      Files.deleteIfExists(copy);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Runs the scripts that a register still lacks; no copy is made. Before new digests are made, the
   * old ones are looked at.
   *
   * @throws RegisterFault also where a document is not as it was stored
   */
  static void upgrade(Connection connection, Path file) throws SQLException {
    int version = version(connection);
    refuse(connection, version, file);
    for (int step = version + 1; step <= VERSION; step++) {
      if (step == WHOLE_DIGESTS && version >= DIGESTS) {
        checkOlder(connection, file);
      }
      run(connection, step);
    }
    if (version < WHOLE_DIGESTS) {
      StoredCheck.digestAll(connection, new DocumentTable(connection).all());
    }
  }

  private static void checkOlder(Connection connection, Path file) throws SQLException {
    List<Message> faults =
        StoredCheck.faultsUntilVersion4(connection, new DocumentTable(connection).all());
    if (!faults.isEmpty()) {
      throw RegisterTrouble.damaged(file, faults);
    }
  }

  private static void refuse(Connection connection, int version, Path file) throws SQLException {
    if (application(connection) != APPLICATION || version == 0) {
      throw new RegisterFault(Message.of("register.another", String.valueOf(file.getFileName())));
    }
    if (version > VERSION) {
      throw new RegisterFault(Message.of("register.newer", String.valueOf(file.getFileName())));
    }
  }

  private static Path copy(Path file, int version) {
    Path copy = file.resolveSibling(file.getFileName() + ".version-" + version + "-copy");
    try {
      Files.copy(
          file, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
      return copy;
    } catch (IOException e) {
      throw new RegisterFault(Message.of("register.noCopy", String.valueOf(copy.getFileName())), e);
    }
  }

  private static void run(Connection connection, int step) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String command : script(step).split(";")) {
        if (!command.isBlank()) {
          statement.execute(command);
        }
      }
      statement.execute("PRAGMA user_version = " + step);
    }
  }

  private static String script(int step) {
    String name = "/register/schema-" + step + ".sql";
    try (InputStream stream = RegisterSchema.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException(name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static int version(Connection connection) throws SQLException {
    return pragma(connection, "user_version");
  }

  private static int application(Connection connection) throws SQLException {
    return pragma(connection, "application_id");
  }

  private static int pragma(Connection connection, String name) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery("PRAGMA " + name)) {
      return result.next() ? result.getInt(1) : 0;
    }
  }
}
