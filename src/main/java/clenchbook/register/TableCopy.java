package clenchbook.register;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A whole table of the register as texts. */
final class TableCopy {
  private TableCopy() {}

  /** The header row, then all rows in the order they were written; bytes as their number. */
  static List<List<String>> of(Connection connection, String table) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("SELECT * FROM " + table)) {
      List<List<String>> rows = new ArrayList<>();
      int columns = row.getMetaData().getColumnCount();
      List<String> header = new ArrayList<>();
      for (int column = 1; column <= columns; column++) {
        header.add(row.getMetaData().getColumnName(column));
      }
      rows.add(header);
      while (row.next()) {
        List<String> values = new ArrayList<>();
        for (int column = 1; column <= columns; column++) {
          values.add(text(row.getObject(column)));
        }
        rows.add(values);
      }
      return rows;
    }
  }

  private static String text(@Nullable Object value) {
    if (value instanceof byte[] bytes) {
      return Integer.toString(bytes.length);
    }
    return value == null ? "" : value.toString();
  }
}
