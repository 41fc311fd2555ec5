package clenchbook.register;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;

/** Structured invoices that go out as files of their own, by their document's number. */
final class EInvoiceTable {
  private final Connection connection;

  EInvoiceTable(Connection connection) {
    this.connection = connection;
  }

  Optional<byte[]> find(String number) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT xml FROM e_invoice WHERE number = ?")) {
      query.setString(1, number);
      try (ResultSet result = query.executeQuery()) {
        return result.next() ? Optional.of(result.getBytes(1)) : Optional.empty();
      }
    }
  }

  /** A draft's structured invoice as the run left it: another, the same, or none any more. */
  void store(String number, Optional<byte[]> xml) throws SQLException {
    String command =
        xml.isPresent()
            ? "INSERT OR REPLACE INTO e_invoice (xml, number) VALUES (?, ?)"
            : "DELETE FROM e_invoice WHERE number = ?";
    try (PreparedStatement change = connection.prepareStatement(command)) {
      if (xml.isPresent()) {
        change.setBytes(1, xml.get());
      }
      change.setString(xml.isPresent() ? 2 : 1, number);
      change.executeUpdate();
    }
  }
}
