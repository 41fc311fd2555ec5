package clenchbook.register;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;

/** Differences that runs have told, each with the month of the run that told it first. */
final class ToldTable {
  private final Connection connection;

  ToldTable(Connection connection) {
    this.connection = connection;
  }

  /** Adds differences; those already there keep their month. */
  void add(Map<String, YearMonth> told) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT OR IGNORE INTO difference_told VALUES (?, ?)")) {
      for (Map.Entry<String, YearMonth> each : told.entrySet()) {
        insert.setString(1, each.getKey());
        insert.setString(2, each.getValue().toString());
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }

  /** All of them. */
  Map<String, YearMonth> all() throws SQLException {
    Map<String, YearMonth> told = new HashMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("SELECT difference, month FROM difference_told")) {
      while (row.next()) {
        told.put(row.getString(1), YearMonth.parse(row.getString(2)));
      }
    }
    return told;
  }
}
