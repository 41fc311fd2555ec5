package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Takes in the statements and entries of several files, in their order. Not thread-safe. */
public final class Intake {
  /** The most entries of one run: far beyond a farrier's life, near what a small machine holds. */
  public static final int MOST_ENTRIES = 2_000_000;

  private final List<BankStatement> statements = new ArrayList<>();
  private final List<BankEntry> entries = new ArrayList<>();

  /** What an entry takes beside its texts, with all that matching adds to it. */
  private static final long BYTES_EACH = 400;

  private static final long BYTES_A_SIGN = 2;

  private final int most;
  private final long room;
  private long taken;

  /** An empty one, which takes as much as three fifths of the program's memory hold. */
  public Intake() {
    this(MOST_ENTRIES, Runtime.getRuntime().maxMemory() / 5 * 3);
  }

  /**
   * An empty one that takes fewer.
   *
   * @param most the most entries
   * @param room the most bytes
   */
  Intake(int most, long room) {
    this.most = most;
    this.room = room;
  }

  /** The place that the next statement will have; its entries bear it. */
  int nextStatement() {
    return statements.size();
  }

  void entry(BankEntry entry) {
    if (entries.size() >= most) {
      throw new UnreadableStatement(Message.of("bankfiles.tooMany", most));
    }
    taken += BYTES_EACH + BYTES_A_SIGN * signs(entry);
    if (taken > room) {
      // Said before memory runs out: a program that fights for its last bytes takes minutes.
      throw new UnreadableStatement(Message.of("bankfiles.noRoom", entries.size()));
    }
    entries.add(entry);
  }

  private static long signs(BankEntry entry) {
    return (long) entry.who().length()
        + entry.account().length()
        + entry.text().length()
        + entry.reference().length()
        + entry.endToEnd().length()
        + entry.bankReference().length();
  }

  /** Closes a statement, when all its entries have been given. */
  void statement(BankStatement statement) {
    statements.add(statement);
  }

  /**
   * The statements.
   *
   * @return in the order of files, then as they stand there; unmodifiable
   */
  public List<BankStatement> statements() {
    return Collections.unmodifiableList(statements);
  }

  /**
   * The entries.
   *
   * @return in the order of statements, then as they stand there; unmodifiable
   */
  public List<BankEntry> entries() {
    return Collections.unmodifiableList(entries);
  }
}
