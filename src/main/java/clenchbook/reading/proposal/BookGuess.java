package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.words.ExpectedContents;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.Vocabulary;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Guesses the meanings of all headings and sheets of a book that the program does not know. */
public final class BookGuess {
  /** How sure a guess must be to serve as known for the next. */
  private static final int SERVES = 80;

  private final Map<SheetKind, PairJudge> judges = new EnumMap<>(SheetKind.class);

  private BookGuess(Vocabulary vocabulary) {
    for (SheetKind kind : ExpectedContents.kinds()) {
      SheetWords words = vocabulary.of(kind);
      judges.put(kind, new PairJudge(kind, words));
    }
  }

  /**
   * The rows of the file of headings for a book, in its order.
   *
   * @param tables its tables and unread sheets; those of equal headings are judged together
   * @param vocabulary the program's own lists
   * @return a row for each unknown sheet and each unknown heading; empty where all is known
   */
  public static List<Proposal> of(List<TableContents> tables, Vocabulary vocabulary) {
    return new BookGuess(vocabulary).proposals(tables);
  }

  private List<Proposal> proposals(List<TableContents> tables) {
    List<SheetGuess> first = guesses(tables, KnownValues.of(tables));
    List<TableContents> better = new ArrayList<>();
    first.forEach(guess -> better.add(guess.table(SERVES)));
    List<SheetGuess> second = guesses(tables, KnownValues.of(better));
    WaysOfKeeping ways = new WaysOfKeeping(second, KnownValues.of(better));
    List<Proposal> rows = new ArrayList<>();
    second.forEach(guess -> rows.addAll(ways.with(guess)));
    return rows;
  }

  private List<SheetGuess> guesses(List<TableContents> tables, KnownValues known) {
    Set<SheetKind> there = EnumSet.noneOf(SheetKind.class);
    tables.forEach(table -> table.kind().ifPresent(there::add));
    Map<String, TableContents> pooled = Pools.of(tables);
    List<SheetGuess> guesses = new ArrayList<>();
    for (TableContents table : tables) {
      TableContents pool = pooled.getOrDefault(Pools.key(table), table);
      guesses.add(SheetGuess.of(table, pool, judges, known, there));
    }
    return guesses;
  }
}
