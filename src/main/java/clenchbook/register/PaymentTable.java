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
      for (SeenPayment payment : payments) {
        insert.setString(1, payment.date());
        insert.setString(2, payment.owner());
        insert.setString(3, payment.amount());
        insert.setString(4, payment.invoice());
        insert.setString(5, payment.kind());
        insert.setString(6, payment.reference());
        insert.setInt(7, payment.occurrence());
        insert.addBatch();
      }
      insert.executeBatch();
    }
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
