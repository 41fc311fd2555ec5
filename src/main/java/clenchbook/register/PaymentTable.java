package clenchbook.register;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Payments that runs have seen, as rows. */
final class PaymentTable {
  private final Connection connection;

  PaymentTable(Connection connection) {
    this.connection = connection;
  }

  /** Adds payments; those already there stay as they are. */
  void add(List<SeenPayment> payments) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT OR IGNORE INTO payment_seen VALUES (?, ?, ?, ?, ?, ?, ?)")) {
      each(payments, insert);
    }
  }

  /** Removes payments, those that are there. */
  void remove(List<SeenPayment> payments) throws SQLException {
    try (PreparedStatement delete =
        connection.prepareStatement(
            "DELETE FROM payment_seen WHERE date = ? AND owner = ? AND amount = ? AND invoice = ?"
                + " AND kind = ? AND reference = ? AND occurrence = ?")) {
      each(payments, delete);
    }
  }

  private static void each(List<SeenPayment> payments, PreparedStatement statement)
      throws SQLException {
    for (SeenPayment payment : payments) {
      statement.setString(1, payment.date());
      statement.setString(2, payment.owner());
      statement.setString(3, payment.amount());
      statement.setString(4, payment.invoice());
      statement.setString(5, payment.kind());
      statement.setString(6, payment.reference());
      statement.setInt(7, payment.occurrence());
      statement.addBatch();
    }
    statement.executeBatch();
  }

  /** All of them, by date, owner, amount. */
  List<SeenPayment> all() throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT date, owner, amount, invoice, kind, reference, occurrence FROM payment_seen"
                    + " ORDER BY date, owner, amount, invoice, kind, reference, occurrence")) {
      List<SeenPayment> payments = new ArrayList<>();
      while (row.next()) {
        payments.add(
            new SeenPayment(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getString(5),
                row.getString(6),
                row.getInt(7)));
      }
      return payments;
    }
  }
}
