package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.texts.Message;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Compares what a register stores with what it wrote down about it: each document and its files
 * with their digest, its state with the last change of it, and the numbers with those that ever had
 * one.
 */
final class StoredCheck {
  private static final int AT_A_TIME = 64;

  private final Connection connection;
  private final List<Message> faults = new ArrayList<>();

  private StoredCheck(Connection connection) {
    this.connection = connection;
  }

  /** What is wrong, one line each, documents by series and sequence first. */
  static List<Message> faults(Connection connection, List<BilledDocument> documents)
      throws SQLException {
    StoredCheck check = new StoredCheck(connection);
    check.digests(documents, Stored::isAsStored);
    check.states(documents);
    check.changes();
    return check.faults;
  }

  /** Documents that are not as versions 3 and 4 stored them, one line each. */
  static List<Message> faultsUntilVersion4(Connection connection, List<BilledDocument> documents)
      throws SQLException {
    StoredCheck check = new StoredCheck(connection);
    check.digests(documents, Stored::isAsStoredUntilVersion4);
    return check.faults;
  }

  /** A document as it is stored now, and the digest it was stored with. */
  private record Stored(BilledDocument document, DocumentDigest.Files files, String digest) {
    boolean isAsStored() {
      return DocumentDigest.of(document, files).equals(digest);
    }

    boolean isAsStoredUntilVersion4() {
      return DocumentDigest.untilVersion4(document, files.pdf()).contains(digest);
    }
  }

  /** A working life's PDFs are hundreds of megabytes: some at a time, on all processors. */
  private void digests(List<BilledDocument> documents, Predicate<Stored> sound)
      throws SQLException {
    for (int from = 0; from < documents.size(); from += AT_A_TIME) {
      int to = Math.min(documents.size(), from + AT_A_TIME);
      List<Stored> some = new ArrayList<>(AT_A_TIME);
      for (BilledDocument document : documents.subList(from, to)) {
        some.add(stored(connection, document));
      }
      some.parallelStream()
          .filter(sound.negate())
          .map(stored -> Message.of("register.fault.changed", stored.document().number()))
          .forEachOrdered(faults::add);
    }
  }

  private static Stored stored(Connection connection, BilledDocument document) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement(
            "SELECT pdf, xml, digest FROM document LEFT JOIN e_invoice USING (number)"
                + " WHERE number = ?")) {
      query.setString(1, document.number());
      try (ResultSet row = query.executeQuery()) {
        row.next();
        return new Stored(
            document,
            new DocumentDigest.Files(bytes(row.getBytes(1)), bytes(row.getBytes(2))),
            String.valueOf(row.getString(3)));
      }
    }
  }

  private static byte[] bytes(byte @Nullable [] bytes) {
    return bytes == null ? new byte[0] : bytes;
  }

  private void states(List<BilledDocument> documents) throws SQLException {
    Map<String, String> states = new HashMap<>();
    documents.forEach(document -> states.put(document.number(), document.state().name()));
    Map<String, String> last = new HashMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery("SELECT number, state FROM state_change ORDER BY position")) {
      while (row.next()) {
        last.put(row.getString(1), row.getString(2));
      }
    }
    for (String number : last.keySet().stream().sorted().toList()) {
      if (!states.containsKey(number)) {
        faults.add(Message.of("register.fault.missing", number));
      }
    }
    for (BilledDocument document : documents) {
      if (!document.state().name().equals(last.get(document.number()))) {
        faults.add(Message.of("register.fault.state", document.number()));
      }
    }
  }

  /** Changes of state are only ever added: their positions count up without a gap. */
  private void changes() throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT count(*), coalesce((SELECT seq FROM sqlite_sequence"
                    + " WHERE name = 'state_change'), 0) FROM state_change")) {
      row.next();
      if (row.getLong(1) != row.getLong(2)) {
        faults.add(Message.of("register.fault.changes"));
      }
    }
  }

  /** Gives a digest to each document, as after bringing an older register up. */
  static void digestAll(Connection connection, List<BilledDocument> documents) throws SQLException {
    for (BilledDocument document : documents) {
      digest(connection, document);
    }
  }

  /** Writes down a document's digest, its files being stored. */
  static void digest(Connection connection, BilledDocument document) throws SQLException {
    Stored stored = stored(connection, document);
    if (stored.isAsStored()) {
      return;
    }
    try (PreparedStatement update =
        connection.prepareStatement("UPDATE document SET digest = ? WHERE number = ?")) {
      update.setString(1, DocumentDigest.of(document, stored.files()));
      update.setString(2, document.number());
      update.executeUpdate();
    }
  }
}
