package clenchbook.matching;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.bank.BankStatement;
import clenchbook.matching.evidence.Segments;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the second copy of an entry in overlapping statements: the same account, day and amount,
 * and the bank's reference, else the text. Equal entries of one statement are told apart by their
 * place among themselves and are never copies. Statements that follow on each other by balance do
 * not overlap, so that equal texts in them are two entries.
 */
final class Copies {
  private final List<BankStatement> statements;
  private final List<BankEntry> entries;
  private final Message[] copies;
  private final Map<String, Integer> batches = new HashMap<>();
  private final Map<Long, Boolean> followed = new HashMap<>();

  private record Seen(int statement, String bankReference) {}

  private Copies(List<BankStatement> statements, List<BankEntry> entries) {
    this.statements = statements;
    this.entries = entries;
    this.copies = new Message[entries.size()];
  }

  /**
   * Where the first copy of each entry stands.
   *
   * @return for each entry the name of the statement, and how it was known, or {@link Message#NONE}
   *     for an entry that is the first
   */
  static Message[] of(List<BankStatement> statements, List<BankEntry> entries) {
    Copies copies = new Copies(statements, entries);
    java.util.Arrays.fill(copies.copies, Message.NONE);
    if (statements.size() > 1) {
      copies.batches();
      copies.byReference();
      copies.byText();
    }
    return copies.copies;
  }

  /** A batch in one piece whose payments stand singly in another statement. */
  private void batches() {
    for (BankEntry entry : entries) {
      if (!entry.batch().isEmpty()) {
        batches.putIfAbsent(entry.batch(), entry.statement());
      }
    }
    if (batches.isEmpty()) {
      return;
    }
    for (int at = 0; at < copies.length; at++) {
      BankEntry entry = entries.get(at);
      if (entry.batch().isEmpty() && !entry.note().isEmpty()) {
        Integer other = batches.get(BankEntry.batch(entry.bankReference(), entry.amount()));
        if (other != null && other != entry.statement()) {
          copies[at] = Message.of("matching.copy.singly", statements.get(other).name());
        }
      }
    }
  }

  /** By what an entry is known to be another's copy. */
  private enum By {
    REFERENCE("matching.copy.reference"),
    TEXT("matching.copy.text");

    private final String key;

    By(String key) {
      this.key = key;
    }
  }

  private void byReference() {
    Map<String, List<Seen>> seen = new HashMap<>();
    Map<String, Integer> times = new HashMap<>();
    for (int at = 0; at < copies.length; at++) {
      BankEntry entry = entries.get(at);
      if (!entry.bankReference().isEmpty() && isFirst(at)) {
        String key = base(entry) + "|" + entry.bankReference();
        mark(at, key, times, seen, By.REFERENCE);
      }
    }
  }

  private void byText() {
    Map<String, List<Seen>> seen = new HashMap<>();
    Map<String, Integer> times = new HashMap<>();
    for (int at = 0; at < copies.length; at++) {
      if (isFirst(at)) {
        BankEntry entry = entries.get(at);
        mark(at, base(entry) + "|" + text(entry), times, seen, By.TEXT);
      }
    }
  }

  /** What is only announced is neither a copy nor has one. */
  private boolean isFirst(int at) {
    return copies[at].isEmpty() && entries.get(at).standing() != BankEntry.Standing.PENDING;
  }

  private static String base(BankEntry entry) {
    return entry.date().toEpochDay() + "|" + Amounts.key(entry.amount()).toPlainString();
  }

  private static String text(BankEntry entry) {
    return Segments.of(entry.text().isEmpty() ? entry.who() : entry.text()).compact();
  }

  private void mark(
      int at, String key, Map<String, Integer> times, Map<String, List<Seen>> seen, By by) {
    BankEntry entry = entries.get(at);
    int time = times.merge(entry.statement() + "|" + key, 1, Integer::sum);
    List<Seen> others = seen.computeIfAbsent(key + "|" + time, unused -> new ArrayList<>(1));
    for (Seen other : others) {
      if (isCopy(entry, other, by)) {
        copies[at] = Message.of(by.key, statements.get(other.statement()).name());
        return;
      }
    }
    others.add(new Seen(entry.statement(), entry.bankReference()));
  }

  private boolean isCopy(BankEntry entry, Seen other, By by) {
    if (entry.statement() == other.statement()) {
      return false;
    }
    boolean referenced = by == By.REFERENCE;
    boolean differ =
        !entry.bankReference().isEmpty()
            && !other.bankReference().isEmpty()
            && !entry.bankReference().equals(other.bankReference());
    if (!referenced && differ) {
      return false;
    }
    BankStatement one = statements.get(entry.statement());
    BankStatement first = statements.get(other.statement());
    return one.sameAccount(first) && (referenced || !follow(entry.statement(), other.statement()));
  }

  private boolean follow(int one, int other) {
    long pair = (long) Math.min(one, other) << 32 | Math.max(one, other);
    return followed.computeIfAbsent(
        pair,
        unused -> {
          BankStatement a = statements.get(one);
          BankStatement b = statements.get(other);
          return a.isFollowedBy(b) || b.isFollowedBy(a);
        });
  }
}
