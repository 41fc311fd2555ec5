package clenchbook.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;

/** A register as an earlier version of the program began it. */
final class OlderRegister {
  private OlderRegister() {}

  /** Makes one without documents, by the scripts up to that version. */
  static void make(Path file, int version) throws SQLException, IOException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA application_id = " + 0x436c6e63);
      for (int step = 1; step <= version; step++) {
        String script =
            Files.readString(
                Path.of("src/main/resources/register/schema-" + step + ".sql"),
                StandardCharsets.UTF_8);
        for (String command : script.split(";")) {
          if (!command.isBlank()) {
            statement.execute(command);
          }
        }
      }
      statement.execute("PRAGMA user_version = " + version);
    }
  }
}
