package clenchbook.register;

import clenchbook.billing.mails.MailId;
import clenchbook.billing.mails.MailLedger;
import clenchbook.billing.mails.MailState;
import clenchbook.texts.Message;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The steps of each mail in the register's table {@code mail}, one committed statement a step.
 *
 * <p>Of two runs over one register only the one that intended a mail last can hand it over: each
 * run signs its intentions with a token, and the hand-over is refused under another's.
 *
 * <p>While it is open the register keeps a write-ahead log, whose one sync a commit is a third of
 * the wait of a rollback journal; closing brings the file back to one file alone, and so does the
 * next opening after a run that was killed.
 */
public final class MailRegister implements MailLedger, AutoCloseable {
  private static final String TABLE =
      "CREATE TABLE IF NOT EXISTS mail ("
          + " owner TEXT NOT NULL,"
          + " period TEXT NOT NULL,"
          + " documents TEXT NOT NULL,"
          + " state TEXT NOT NULL"
          + " CHECK (state IN ('intended', 'handed over', 'delivered', 'refused', 'unsure')),"
          + " reason TEXT NOT NULL,"
          + " run TEXT NOT NULL,"
          + " PRIMARY KEY (owner, period, documents)) WITHOUT ROWID";

  private static final String FIND =
      "SELECT state FROM mail WHERE owner = ? AND period = ? AND documents = ?";

  private static final String INTEND =
      "INSERT INTO mail (owner, period, documents, state, reason, run)"
          + " VALUES (?, ?, ?, 'intended', '', ?)"
          + " ON CONFLICT DO UPDATE SET state = 'intended', reason = '', run = excluded.run"
          + " WHERE ? OR state IN ('intended', 'refused')";

  private static final String HAND_OVER =
      "UPDATE mail SET state = 'handed over', reason = ''"
          + " WHERE owner = ? AND period = ? AND documents = ? AND run = ? AND state = 'intended'";

  private static final String STEP =
      "UPDATE mail SET state = ?, reason = ?"
          + " WHERE owner = ? AND period = ? AND documents = ? AND run = ?";

  /** A mail that another run left handed over; its token stays, should that run still be alive. */
  private static final String LEFT_BEHIND =
      "UPDATE mail SET state = 'unsure', reason = ?"
          + " WHERE owner = ? AND period = ? AND documents = ? AND state = 'handed over'";

  private static final String ALL =
      "SELECT owner, period, documents, state, reason FROM mail"
          + " ORDER BY period, owner, documents";

  private final Connection connection;
  private final String run;

  /**
   * One mail of the register.
   *
   * @param id which
   * @param state how far it has come
   * @param reason the server's words or what was seen; may be empty
   */
  public record Entry(MailId id, MailState state, String reason) {}

  /**
   * Opens the table, making it where it is missing.
   *
   * @param connection to the register; it commits each statement by itself and syncs each commit
   * @param run a token no other run has
   * @throws RegisterFault where the register cannot be written
   */
  MailRegister(Connection connection, String run) {
    this.connection = connection;
    this.run = run;
    journal("WAL");
    change(TABLE);
  }

  /** Brings the register back to one file; the connection stays open. */
  @Override
  public void close() {
    journal("DELETE");
  }

  /** Where another run has the file open the journal stays as it is: slower, as safe. */
  private void journal(String mode) {
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA journal_mode = " + mode);
    } catch (SQLException fault) {
      if (!isBusy(fault)) {
        throw new RegisterFault(Message.of("register.cantWrite"), fault);
      }
    }
  }

  /** The low byte tells the kind; the rest says more about it. */
  private static boolean isBusy(SQLException fault) {
    return fault instanceof SQLiteException known
        && (known.getResultCode().code & 0xff) == SQLiteErrorCode.SQLITE_BUSY.code;
  }

  @Override
  public void together(Runnable steps) {
    try {
      connection.setAutoCommit(false);
      try {
        steps.run();
        connection.commit();
      } finally {
        connection.rollback();
        connection.setAutoCommit(true);
      }
    } catch (SQLException fault) {
      throw new RegisterFault(Message.of("register.cantWrite"), fault);
    }
  }

  @Override
  public Optional<MailState> find(MailId id) {
    try (PreparedStatement query = prepared(FIND, key(id));
        ResultSet row = query.executeQuery()) {
      return row.next() ? Optional.of(MailState.of(row.getString(1))) : Optional.empty();
    } catch (SQLException fault) {
      throw new RegisterFault(Message.of("register.cantRead"), fault);
    }
  }

  @Override
  public boolean intend(MailId id, boolean again) {
    return change(INTEND, id.owner(), id.period(), id.documents(), run, again) == 1;
  }

  @Override
  public void handedOver(MailId id) {
    if (change(HAND_OVER, id.owner(), id.period(), id.documents(), run) != 1) {
      throw new IllegalStateException("another run has taken the mail to " + id.line());
    }
  }

  @Override
  public void delivered(MailId id) {
    step(id, MailState.DELIVERED, "");
  }

  @Override
  public void refused(MailId id, String reason) {
    step(id, MailState.REFUSED, reason);
  }

  @Override
  public void putOff(MailId id, String reason) {
    step(id, MailState.INTENDED, reason);
  }

  @Override
  public void unsure(MailId id, String reason) {
    if (step(id, MailState.UNSURE, reason) == 0) {
      change(LEFT_BEHIND, reason, id.owner(), id.period(), id.documents());
    }
  }

  /** Every mail on record, by period, owner and documents. */
  public List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    try (PreparedStatement query = prepared(ALL);
        ResultSet row = query.executeQuery()) {
      while (row.next()) {
        MailId id = new MailId(row.getString(1), row.getString(2), row.getString(3));
        entries.add(new Entry(id, MailState.of(row.getString(4)), row.getString(5)));
      }
    } catch (SQLException fault) {
      throw new RegisterFault(Message.of("register.cantRead"), fault);
    }
    return entries;
  }

  private int step(MailId id, MailState state, String reason) {
    return change(STEP, state.words(), reason, id.owner(), id.period(), id.documents(), run);
  }

  private static Object[] key(MailId id) {
    return new Object[] {id.owner(), id.period(), id.documents()};
  }

  private int change(String statement, Object... values) {
    try (PreparedStatement change = prepared(statement, values)) {
      return change.executeUpdate();
    } catch (SQLException fault) {
      throw new RegisterFault(Message.of("register.cantWrite"), fault);
    }
  }

  private PreparedStatement prepared(String statement, Object... values) throws SQLException {
    PreparedStatement prepared = connection.prepareStatement(statement);
    for (int i = 0; i < values.length; i++) {
      prepared.setObject(i + 1, values[i]);
    }
    return prepared;
  }
}
