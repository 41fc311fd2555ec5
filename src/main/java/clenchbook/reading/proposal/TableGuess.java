package clenchbook.reading.proposal;

import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the open headings of a table mean if the table is of one kind: one meaning each, the most
 * points in all.
 */
final class TableGuess {
  private static final int KNOWN = 24;
  private static final int MOST_NAMED = 3;

  private final List<Column> open = new ArrayList<>();
  private final List<List<Pair>> pairs = new ArrayList<>();
  private final Set<String> taken;
  private final int known;
  private final int[][] points;
  private final int[] best;

  /**
   * A column with the meaning that it gets.
   *
   * @param pair what speaks for it; empty for a column that gets none
   */
  record Choice(Column column, Optional<Pair> pair) {}

  private TableGuess(List<Column> columns, List<Evidence> evidence, PairJudge judge) {
    this.taken = judge.taken(columns);
    List<String> free = judge.free(taken);
    int sum = 0;
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      Evidence of = evidence.get(i);
      if (column.isOpen()) {
        open.add(column);
        pairs.add(free.stream().map(each -> judge.pair(column, of, each, taken)).toList());
      } else if (!column.meaning().isEmpty()) {
        sum += known(column, of, judge);
      }
    }
    this.known = sum;
    this.points = points(judge, free.size());
    this.best = OneToOne.best(points);
  }

  static TableGuess of(List<Column> columns, List<Evidence> evidence, PairJudge judge) {
    return new TableGuess(columns, evidence, judge);
  }

  /** A known heading whose cells do not go with it speaks against the kind. */
  private int known(Column column, Evidence of, PairJudge judge) {
    if (judge.isUnexpected(column.meaning())) {
      return KNOWN;
    }
    int fit = judge.pair(column, of, column.meaning(), taken).fit();
    return KNOWN + Math.max(-KNOWN, Math.min(KNOWN / 2, fit));
  }

  private int[][] points(PairJudge judge, int width) {
    int[][] all = new int[open.size()][width];
    for (int row = 0; row < open.size(); row++) {
      int none = judge.none(open.get(row), taken);
      for (int at = 0; at < width; at++) {
        all[row][at] = pairs.get(row).get(at).points() - none;
      }
    }
    return all;
  }

  /** Each open column with what it gets. */
  List<Choice> choices() {
    List<Choice> choices = new ArrayList<>();
    for (int row = 0; row < best.length; row++) {
      boolean none = best[row] == OneToOne.NONE;
      Optional<Pair> pair = none ? Optional.empty() : Optional.of(pairs.get(row).get(best[row]));
      choices.add(new Choice(open.get(row), pair));
    }
    return choices;
  }

  /**
   * The headings that are known or guessed.
   *
   * @param spoken whether something must speak for each; else those that are only left for a column
   *     count, too
   */
  Set<String> found(boolean spoken) {
    Set<String> found = new HashSet<>(taken);
    choices().stream()
        .flatMap(choice -> choice.pair().stream())
        .filter(pair -> !spoken || pair.name() >= Pair.LIKE || pair.fit() > 0)
        .forEach(pair -> found.add(pair.meaning()));
    return found;
  }

  /** All points but those that a column has for being needed, which every kind would give. */
  int points() {
    int needed =
        choices().stream().mapToInt(choice -> choice.pair().map(Pair::needed).orElse(0)).sum();
    return known + OneToOne.total(points, best) - needed;
  }

  /** Each open column with its likeliest meaning, how sure that is and why. */
  List<HeadingGuess> headings() {
    List<HeadingGuess> guesses = new ArrayList<>();
    for (int row = 0; row < best.length; row++) {
      guesses.add(best[row] == OneToOne.NONE ? unknown(row) : guess(row));
    }
    return guesses;
  }

  private HeadingGuess guess(int row) {
    Pair pair = pairs.get(row).get(best[row]);
    int margin = OneToOne.total(points, best) - without(row, best[row]);
    int sure = Math.min(pair.most(), Sureness.of(margin));
    Message others = others(row, pair.meaning());
    boolean open = sure < Proposal.LEAST && !others.isEmpty();
    Message reasons = Reasons.of(pair);
    Message why = open ? Message.of("proposal.mayAlsoBe", reasons, others) : reasons;
    return new HeadingGuess(this.open.get(row), pair.meaning(), sure, why);
  }

  /** The best that can be had where one column has not this meaning. */
  private int without(int row, int meaning) {
    int[][] other = points.clone();
    other[row] = points[row].clone();
    other[row][meaning] = OneToOne.NEVER;
    return OneToOne.total(other, OneToOne.best(other));
  }

  private HeadingGuess unknown(int row) {
    Message others = others(row, "");
    Message why = others.isEmpty() ? none(row) : Message.of("proposal.mayBe", others);
    return new HeadingGuess(open.get(row), "", 0, why);
  }

  private Message none(int row) {
    return PairJudge.isOwn(open.get(row))
        ? Message.of("proposal.ownColumn")
        : Message.of("proposal.nothing");
  }

  /** The next likeliest meanings. */
  private Message others(int row, String meaning) {
    List<Integer> likely = new ArrayList<>();
    for (int at = 0; at < points[row].length; at++) {
      if (points[row][at] > 0 && !pairs.get(row).get(at).meaning().equals(meaning)) {
        likely.add(at);
      }
    }
    likely.sort(Comparator.comparingInt((Integer at) -> -points[row][at]));
    List<String> meanings =
        likely.stream().limit(MOST_NAMED).map(at -> pairs.get(row).get(at).meaning()).toList();
    return Message.inTurn("sheets.or", meanings);
  }
}
