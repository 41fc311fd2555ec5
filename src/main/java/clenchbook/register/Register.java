package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sqlite.SQLiteJDBCLoader;

/**
 * An open register. From opening to the first commit it is locked against other runs; each method
 * that records commits durably before it returns.
 */
public final class Register implements AutoCloseable {
  private final Path file;
  private final RegisterDatabase database;
  private final Connection connection;

  private Register(Path file, RegisterDatabase database) {
    this.file = file;
    this.database = database;
    this.connection = database.connection();
  }

  /**
   * Opens the register, making it where it is missing and bringing an older one up to date.
   *
   * @param file the register's file
   * @return the register, locked
   * @throws RegisterFault when it is locked, damaged, of a newer version or can't be written
   */
  public static Register open(Path file) {
    if (Files.isDirectory(file)) {
      throw new RegisterFault(Message.of("register.isFolder", String.valueOf(file.getFileName())));
    }
    try {
      if (!Files.exists(file)) {
        RegisterDatabase.make(file);
      }
      if (Files.size(file) == 0) {
        throw RegisterTrouble.damaged(file);
      }
      Register register = new Register(file, RegisterDatabase.open(file));
      register.locked();
      return register;
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    } catch (IOException e) {
      throw new RegisterFault(
          Message.of(
              "register.cantMake",
              String.valueOf(file.getFileName()),
              e.getClass().getSimpleName()),
          e);
    }
  }

  /** Locks, brings up to date and checks; closed again where one of them fails. */
  private void locked() throws SQLException {
    boolean sound = false;
    try {
      database.lock();
      boolean upgraded = RegisterSchema.migrate(connection, file);
      checked(connection, file);
      if (upgraded) {
        committed();
      }
      sound = true;
    } finally {
      if (!sound) {
        close();
      }
    }
  }

  /** The documents, once it is known that all is as it was stored. */
  private static List<BilledDocument> checked(Connection connection, Path file)
      throws SQLException {
    List<BilledDocument> documents = new DocumentTable(connection).all();
    List<Message> faults = new ArrayList<>(RegisterCheck.faults(documents));
    faults.addAll(StoredCheck.faults(connection, documents));
    if (!faults.isEmpty()) {
      throw RegisterTrouble.damaged(file, faults);
    }
    return documents;
  }

  /**
   * Loads the database library, which takes a while, before a register is asked for. What goes
   * wrong shows itself when one is opened.
   */
  public static void loadAhead() {
    try {
      SQLiteJDBCLoader.initialize();
    } catch (Exception seenLater) {
      return;
    }
  }

  /**
   * Reads the documents of a register without locking or changing it.
   *
   * @param file the register's file
   * @return its documents; empty when there is no such file
   * @throws RegisterFault when it is damaged or of a newer version
   */
  public static List<BilledDocument> read(Path file) {
    if (!Files.exists(file)) {
      return List.of();
    }
    if (RegisterFile.leftOpen(file)) {
      // A run was killed while it wrote: the opening brings the file back to its last commit.
      try (Register register = open(file)) {
        return register.documents();
      }
    }
    try (RegisterDatabase database = RegisterDatabase.readOnly(file)) {
      if (RegisterSchema.version(database.connection()) == RegisterSchema.VERSION) {
        return checked(database.connection(), file);
      }
      return older(file);
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /** Reads an older register from a copy in memory, which alone is brought up to date. */
  private static List<BilledDocument> older(Path file) throws SQLException {
    try (RegisterDatabase copy = RegisterDatabase.copyInMemory(file)) {
      RegisterSchema.upgrade(copy.connection(), file);
      return checked(copy.connection(), file);
    }
  }

  /** Commits what was done and locks again for what follows. */
  private void committed() throws SQLException {
    database.commit();
    database.lock();
  }

  /**
   * All documents, with their lines.
   *
   * @return by series and sequence
   * @throws RegisterFault when the register is damaged
   */
  public List<BilledDocument> documents() {
    try {
      return new DocumentTable(connection).all();
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * The stored bytes of a document.
   *
   * @param number its number
   * @return its PDF; empty when none is stored
   * @throws RegisterFault when the register is damaged
   */
  public Optional<byte[]> pdf(String number) {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT pdf FROM document WHERE number = ?")) {
      query.setString(1, number);
      try (ResultSet result = query.executeQuery()) {
        return result.next() ? Optional.ofNullable(result.getBytes(1)) : Optional.empty();
      }
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * The stored structured invoice of a document.
   *
   * @param number its number
   * @return its XML; empty when none is stored
   * @throws RegisterFault when the register is damaged
   */
  public Optional<byte[]> eInvoice(String number) {
    try {
      return new EInvoiceTable(connection).find(number);
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * Records a month's documents in one durable step: new ones are added, drafts get a new version,
   * states move on; fixed documents keep their lines and bytes.
   *
   * @param documents the month's documents after the run, and others whose state changed
   * @param pdfs the PDF of each draft, by number
   * @param payments the payments seen
   * @throws RegisterFault when it can't be written; then nothing was changed
   */
  public void record(
      List<BilledDocument> documents, Map<String, byte[]> pdfs, List<SeenPayment> payments) {
    record(documents, pdfs, Map.of(), payments, Map.of());
  }

  /**
   * Records a month's documents and what was told of them in one durable step.
   *
   * @param documents as above
   * @param pdfs as above
   * @param eInvoices the structured invoice of each draft that has one as a file, by number
   * @param payments as above
   * @param told differences that a run tells, with the month it is run for; one already told stays
   *     with its first month
   * @throws RegisterFault when it can't be written; then nothing was changed
   */
  public void record(
      List<BilledDocument> documents,
      Map<String, byte[]> pdfs,
      Map<String, byte[]> eInvoices,
      List<SeenPayment> payments,
      Map<String, YearMonth> told) {
    try {
      DocumentTable table = new DocumentTable(connection);
      EInvoiceTable files = new EInvoiceTable(connection);
      Map<String, BilledDocument> before = new HashMap<>();
      table.all().forEach(document -> before.put(document.number(), document));
      for (BilledDocument document : documents) {
        Optional<BilledDocument> earlier = Optional.ofNullable(before.get(document.number()));
        boolean printed = pdfs.containsKey(document.number());
        table.store(document, Optional.ofNullable(pdfs.get(document.number())), earlier);
        if (earlier.filter(stored -> stored.state().fixed()).isEmpty()) {
          if (printed) {
            files.store(document.number(), Optional.ofNullable(eInvoices.get(document.number())));
          }
          if (printed || !earlier.equals(Optional.of(document))) {
            StoredCheck.digest(connection, document);
          }
        }
      }
      new PaymentTable(connection).add(payments);
      new ToldTable(connection).add(told);
      committed();
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * Forgets payments that the book holds in another form now, durably.
   *
   * @param payments seen once
   * @throws RegisterFault when it can't be written
   */
  public void forget(List<SeenPayment> payments) {
    if (payments.isEmpty()) {
      return;
    }
    try {
      new PaymentTable(connection).remove(payments);
      committed();
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * The payments that earlier runs have seen.
   *
   * @return by date, owner, amount
   * @throws RegisterFault when the register is damaged
   */
  public List<SeenPayment> payments() {
    try {
      return new PaymentTable(connection).all();
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * The differences that earlier runs have told.
   *
   * @return by what {@code Difference.line()} says of them, the month of the run that told it first
   * @throws RegisterFault when the register is damaged
   */
  public Map<String, YearMonth> told() {
    try {
      return new ToldTable(connection).all();
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * Moves documents on to another state, durably.
   *
   * @param numbers their numbers
   * @param state the state; a document that is already further, or void, stays as it is
   * @throws RegisterFault when it can't be written
   */
  public void move(Collection<String> numbers, DocumentState state) {
    try {
      DocumentTable table = new DocumentTable(connection);
      for (String number : numbers) {
        table.move(number, state);
      }
      committed();
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /**
   * Gives up the lock for the steps of mails: each is durable by itself, and another run may read
   * in between.
   *
   * @param run a token no other run has
   * @return the mails of this register, to be closed before it
   * @throws RegisterFault when it can't be used
   */
  public MailRegister mails(String run) {
    try {
      database.unlock();
      return new MailRegister(connection, run);
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  /** The tables of the register, none left out. */
  public static final List<String> TABLES =
      List.of(
          "document",
          "line",
          "tax_total",
          "state_change",
          "payment_seen",
          "mail",
          "difference_told",
          "e_invoice");

  /**
   * A whole table as texts, PDFs as their length in bytes.
   *
   * @param table one of {@link #TABLES}
   * @return header row, then all rows in the order they were written
   * @throws RegisterFault when the register is damaged
   */
  public List<List<String>> dump(String table) {
    if (!TABLES.contains(table)) {
      throw new IllegalArgumentException(table);
    }
    try {
      return TableCopy.of(connection, table);
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }

  @Override
  public void close() {
    try {
      database.close();
    } catch (SQLException e) {
      throw RegisterTrouble.of(file, e);
    }
  }
}
