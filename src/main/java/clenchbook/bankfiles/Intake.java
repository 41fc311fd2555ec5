package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Takes in the statements and entries of several files, in their order. Not thread-safe. */
public final class Intake {
  /** The most entries of one run: far beyond a farrier's life, near what a small machine holds. */
  public static final int MOST_ENTRIES = 2_000_000;

  private final List<BankStatement> statements = new ArrayList<>();
  private final List<BankEntry> entries = new ArrayList<>();
  private final int most;

  /** An empty one. */
  public Intake() {
    this(MOST_ENTRIES);
  }

  /** An empty one that takes fewer. */
  Intake(int most) {
    this.most = most;
  }

  /** The place that the next statement will have; its entries bear it. */
  int nextStatement() {
    return statements.size();
  }

  void entry(BankEntry entry) {
    if (entries.size() >= most) {
      throw new UnreadableStatement(
          "more than " + most + " entries; expected the statements of a business, by the month");
    }
    entries.add(entry);
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
