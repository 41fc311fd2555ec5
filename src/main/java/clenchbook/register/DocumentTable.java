package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.billing.documents.VisitKey;
import clenchbook.book.TaxCategory;
import clenchbook.book.TaxKind;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.jobs.charge.LineTax;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Documents as rows: a draft that changes gets a new version, older versions stay. */
final class DocumentTable {
  private final Connection connection;

  DocumentTable(Connection connection) {
    this.connection = connection;
  }

  /**
   * Every document.
   *
   * @throws SQLException also where a value is none of its kind: then the register is damaged
   */
  List<BilledDocument> all() throws SQLException {
    try {
      return read();
    } catch (IllegalArgumentException | DateTimeException unreadable) {
      throw new SQLiteException(
          String.valueOf(unreadable.getMessage()), SQLiteErrorCode.SQLITE_CORRUPT);
    }
  }

  private List<BilledDocument> read() throws SQLException {
    Map<String, List<DocumentLine>> lines = lines();
    Map<String, List<TaxTotal>> taxes = taxes();
    List<BilledDocument> documents = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT number, series, sequence, kind, owner, month, date, due, corrects, state,"
                    + " net, tax, gross FROM document ORDER BY series, sequence, number")) {
      while (row.next()) {
        String number = row.getString(1);
        documents.add(
            document(
                row, lines.getOrDefault(number, List.of()), taxes.getOrDefault(number, List.of())));
      }
    }
    return documents;
  }

  private static BilledDocument document(
      ResultSet row, List<DocumentLine> lines, List<TaxTotal> taxes) throws SQLException {
    return new BilledDocument(
        row.getString(1),
        row.getString(2),
        row.getInt(3),
        BilledDocument.Kind.valueOf(row.getString(4)),
        row.getString(5),
        YearMonth.parse(row.getString(6)),
        LocalDate.parse(row.getString(7)),
        LocalDate.parse(row.getString(8)),
        row.getString(9),
        DocumentState.valueOf(row.getString(10)),
        lines,
        taxes,
        new BigDecimal(row.getString(11)),
        new BigDecimal(row.getString(12)),
        new BigDecimal(row.getString(13)));
  }

  private Map<String, List<DocumentLine>> lines() throws SQLException {
    Map<String, List<DocumentLine>> lines = new HashMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT line.* FROM line JOIN document USING (number, version)"
                    + " ORDER BY number, position")) {
      while (row.next()) {
        lines.computeIfAbsent(row.getString("number"), unused -> new ArrayList<>()).add(line(row));
      }
    }
    return lines;
  }

  private static DocumentLine line(ResultSet row) throws SQLException {
    return new DocumentLine(
        new VisitKey(
            LocalDate.parse(row.getString("visit_date")),
            row.getString("visit_horse"),
            row.getString("visit_work"),
            row.getString("visit_owner"),
            row.getInt("visit_occurrence")),
        row.getString("formerly"),
        row.getString("own"),
        row.getString("sheet"),
        row.getInt("row"),
        row.getString("horse"),
        row.getString("work"),
        ChargeLine.Kind.valueOf(row.getString("kind")),
        ChargeLine.Part.valueOf(row.getString("part")),
        row.getString("item"),
        row.getInt("count"),
        row.getString("shoeing"),
        row.getString("reason"),
        new BigDecimal(row.getString("share_percent")),
        new BigDecimal(row.getString("discount_percent")),
        new BigDecimal(row.getString("amount")),
        new BigDecimal(row.getString("net")),
        new LineTax(
            row.getString("tax_code"),
            row.getString("tax_name"),
            new BigDecimal(row.getString("tax_rate")),
            TaxKind.valueOf(row.getString("tax_kind")),
            row.getString("tax_reason"),
            row.getBoolean("tax_exempt"),
            row.getBoolean("tax_included")));
  }

  private Map<String, List<TaxTotal>> taxes() throws SQLException {
    Map<String, List<TaxTotal>> taxes = new HashMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT tax_total.* FROM tax_total JOIN document USING (number, version)"
                    + " ORDER BY number, position")) {
      while (row.next()) {
        taxes
            .computeIfAbsent(row.getString("number"), unused -> new ArrayList<>())
            .add(
                new TaxTotal(
                    row.getString("code"),
                    row.getString("name"),
                    new BigDecimal(row.getString("rate")),
                    new BigDecimal(row.getString("net")),
                    new BigDecimal(row.getString("tax")),
                    TaxCategory.valueOf(row.getString("category")),
                    row.getString("reason")));
      }
    }
    return taxes;
  }

  /**
   * Stores a document: new, or a draft's next version, or only its state. Its digest is written
   * down by who stores its other files.
   *
   * @param before the document as it is stored; empty for a new one
   */
  void store(BilledDocument document, Optional<byte[]> pdf, Optional<BilledDocument> before)
      throws SQLException {
    Optional<Stored> stored = stored(document.number());
    if (stored.isEmpty() || before.isEmpty()) {
      insert(document, pdf);
    } else if (!stored.get().state().fixed()) {
      replace(document, pdf, stored.get(), before.get());
    } else {
      move(document.number(), document.state());
    }
  }

  private record Stored(int version, DocumentState state, byte[] pdf) {}

  private Optional<Stored> stored(String number) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT version, state, pdf FROM document WHERE number = ?")) {
      query.setString(1, number);
      try (ResultSet row = query.executeQuery()) {
        if (!row.next()) {
          return Optional.empty();
        }
        byte[] pdf = row.getBytes(3);
        return Optional.of(
            new Stored(
                row.getInt(1),
                DocumentState.valueOf(row.getString(2)),
                pdf == null ? new byte[0] : pdf));
      }
    }
  }

  private void insert(BilledDocument document, Optional<byte[]> pdf) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO document VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 1, ?, '')")) {
      List<Object> values = new ArrayList<>(DocumentValues.head(document));
      values.add(document.state().name());
      values.addAll(DocumentValues.sums(document));
      DocumentValues.bind(insert, values);
      insert.setBytes(14, pdf.orElse(null));
      insert.executeUpdate();
    }
    insertParts(document, 1);
    change(document.number(), 1, document.state());
  }

  /** A draft as the run left it. Its version moves on only when what it says has changed. */
  private void replace(
      BilledDocument document, Optional<byte[]> pdf, Stored stored, BilledDocument before)
      throws SQLException {
    boolean sameContent = before.in(document.state()).equals(document);
    boolean samePdf = pdf.isEmpty() || Arrays.equals(pdf.get(), stored.pdf());
    if (sameContent && samePdf && before.state() == document.state()) {
      return;
    }
    int version = sameContent ? stored.version() : stored.version() + 1;
    try (PreparedStatement update =
        connection.prepareStatement(
            "UPDATE document SET owner = ?, due = ?, state = ?, net = ?, tax = ?, gross = ?,"
                + " version = ?, pdf = coalesce(?, pdf) WHERE number = ?")) {
      update.setString(1, document.owner());
      update.setString(2, document.due().toString());
      update.setString(3, document.state().name());
      update.setString(4, document.net().toPlainString());
      update.setString(5, document.tax().toPlainString());
      update.setString(6, document.gross().toPlainString());
      update.setInt(7, version);
      update.setBytes(8, pdf.orElse(null));
      update.setString(9, document.number());
      update.executeUpdate();
    }
    if (!sameContent) {
      insertParts(document, version);
    }
    if (before.state() != document.state() || !sameContent) {
      change(document.number(), version, document.state());
    }
  }

  private void insertParts(BilledDocument document, int version) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT INTO line VALUES (" + "?, ".repeat(30) + "?)")) {
      int position = 1;
      for (DocumentLine line : document.lines()) {
        bind(insert, document.number(), version, position++, line);
        insert.addBatch();
      }
      insert.executeBatch();
    }
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO tax_total VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
      int position = 1;
      for (TaxTotal total : document.taxes()) {
        List<Object> values = new ArrayList<>(List.of(document.number(), version, position++));
        values.addAll(DocumentValues.total(total));
        values.addAll(List.of(total.category().name(), total.reason()));
        DocumentValues.bind(insert, values);
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }

  private static void bind(
      PreparedStatement insert, String number, int version, int position, DocumentLine line)
      throws SQLException {
    List<Object> values =
        new ArrayList<>(
            List.of(
                number,
                version,
                position,
                line.visit().date().toString(),
                line.visit().horse(),
                line.visit().work(),
                line.visit().occurrence()));
    values.addAll(DocumentValues.line(line));
    values.addAll(
        List.of(
            line.visit().owner(), line.formerly(), line.tax().kind().name(), line.tax().reason()));
    DocumentValues.bind(insert, values);
  }

  /** Moves a state on: draft, issued, delivered; never back, never out of void. */
  void move(String number, DocumentState state) throws SQLException {
    Optional<Stored> stored = stored(number);
    boolean onward =
        stored.isPresent()
            && stored.get().state() != DocumentState.VOID
            && state.fixed()
            && stored.get().state().compareTo(state) < 0;
    if (!onward) {
      return;
    }
    try (PreparedStatement update =
        connection.prepareStatement("UPDATE document SET state = ? WHERE number = ?")) {
      update.setString(1, state.name());
      update.setString(2, number);
      update.executeUpdate();
    }
    change(number, stored.get().version(), state);
  }

  private void change(String number, int version, DocumentState state) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO state_change (number, version, state) VALUES (?, ?, ?)")) {
      insert.setString(1, number);
      insert.setInt(2, version);
      insert.setString(3, state.name());
      insert.executeUpdate();
    }
  }
}
