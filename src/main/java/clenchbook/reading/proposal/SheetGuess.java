package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.words.SheetWords;
import clenchbook.reading.words.WordForms;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a table is and what its headings mean.
 *
 * @param of the table
 * @param kind what it most likely is; empty for a sheet that seems to be none
 * @param sure of the kind, in per cent; 100 where it is known
 * @param why what speaks for the kind; empty where it is known
 * @param columns its own columns with the meanings that known words have for the kind
 * @param guess its headings
 */
record SheetGuess(
    TableContents of,
    Optional<SheetKind> kind,
    int sure,
    Message why,
    List<Column> columns,
    List<HeadingGuess> guess) {
  private static final int KNOWN = 100;
  private static final int MOST_NAMED = 95;
  private static final int MOST_UNNAMED = 89;
  private static final int EXTRA = 45;
  private static final int CALLED = 16;
  private static final int EXACTLY = 40;
  private static final int ELSEWHERE = 16;
  private static final int NO_PLACE = 4;
  private static final Set<SheetKind> SEVERAL =
      EnumSet.of(
          SheetKind.VISITS,
          SheetKind.TRIPS,
          SheetKind.PURCHASES,
          SheetKind.PAYMENTS,
          SheetKind.ASSETS,
          SheetKind.COUNTS);

  /** Guesses a table by its pool; see {@link BookGuess}. */
  static SheetGuess of(
      TableContents table,
      TableContents pool,
      Map<SheetKind, PairJudge> judges,
      KnownValues known,
      Set<SheetKind> there) {
    List<Evidence> evidence = EvidenceOf.columns(pool, known);
    boolean mayBeOther = !table.settled() && !there.contains(SheetKind.VISITS);
    if (table.kind().isPresent() && !mayBeOther) {
      PairJudge judge = judges.get(table.kind().get());
      List<HeadingGuess> headings =
          judge == null ? List.of() : TableGuess.of(read(judge, pool), evidence, judge).headings();
      List<Column> own = judge == null ? table.columns() : read(judge, table);
      return new SheetGuess(table, table.kind(), KNOWN, Message.NONE, own, headings);
    }
    return ofKinds(table, pool, evidence, judges, there);
  }

  /** The columns as they are read; of a sheet that is not, as its known words would be. */
  private static List<Column> read(PairJudge judge, TableContents pool) {
    boolean unread = pool.columns().stream().allMatch(column -> column.meaning().isEmpty());
    return unread ? under(judge, pool) : pool.columns();
  }

  private static SheetGuess ofKinds(
      TableContents table,
      TableContents pool,
      List<Evidence> evidence,
      Map<SheetKind, PairJudge> judges,
      Set<SheetKind> there) {
    SheetKind best = null;
    PairJudge judge = null;
    TableGuess guess = null;
    int most = EXTRA;
    int second = EXTRA;
    for (Map.Entry<SheetKind, PairJudge> entry : judges.entrySet()) {
      List<Column> columns = columns(table, pool, entry.getKey(), entry.getValue());
      TableGuess here = TableGuess.of(columns, evidence, entry.getValue());
      int points = points(table, entry, here, there) - elsewhere(here, judges);
      second = Math.max(second, Math.min(points, most));
      if (points > most) {
        most = points;
        best = entry.getKey();
        judge = entry.getValue();
        guess = here;
      }
    }
    if (best == null || judge == null || guess == null) {
      Message extra = Message.of("proposal.ownSheet");
      return new SheetGuess(table, Optional.empty(), 0, extra, List.of(), List.of());
    }
    boolean asRead = Optional.of(best).equals(table.kind());
    boolean named = called(table.sheet(), judge.words()) == EXACTLY;
    int limit = named ? MOST_NAMED : MOST_UNNAMED;
    int sure = asRead ? KNOWN : Math.min(limit, Sureness.of((most - second) / 3));
    Message why = asRead ? Message.NONE : Message.of("proposal.sheetLike", best.title());
    List<Column> own = columns(table, table, best, judge);
    return new SheetGuess(table, Optional.of(best), sure, why, own, guess.headings());
  }

  private static List<Column> columns(
      TableContents table, TableContents pool, SheetKind kind, PairJudge judge) {
    boolean asRead = Optional.of(kind).equals(table.kind());
    return asRead ? read(judge, pool) : under(judge, pool);
  }

  /** The columns with the meanings that known words have on a kind of sheet. */
  private static List<Column> under(PairJudge judge, TableContents table) {
    Set<String> taken = new HashSet<>();
    List<Column> columns = new ArrayList<>();
    for (Column column : table.columns()) {
      boolean told = column.settled() && column.meaning().isEmpty();
      String heading = told ? "" : meaning(judge.words(), column.heading());
      boolean first = !heading.isEmpty() && taken.add(heading);
      boolean settled = told || (!heading.isEmpty() && !first);
      columns.add(
          new Column(column.at(), column.heading(), first ? heading : "", settled, column.cells()));
    }
    return columns;
  }

  private static String meaning(SheetWords words, String heading) {
    int open = heading.indexOf('(');
    return words
        .heading(WordForms.of(heading))
        .or(() -> open > 0 ? words.heading(heading.substring(0, open)) : Optional.empty())
        .orElse("");
  }

  private static int points(
      TableContents table,
      Map.Entry<SheetKind, PairJudge> entry,
      TableGuess guess,
      Set<SheetKind> there) {
    SheetWords words = entry.getValue().words();
    Set<String> found = guess.found(entry.getKey() == SheetKind.VISITS);
    if (!words.isMadeBy(found)) {
      return 0;
    }
    boolean alone = !SEVERAL.contains(entry.getKey()) && there.contains(entry.getKey());
    boolean refused = words.never().stream().anyMatch(found::contains);
    if (alone || refused) {
      return 0;
    }
    long open =
        guess.choices().stream()
            .filter(each -> each.pair().isEmpty() && !PairJudge.isOwn(each.column()))
            .count();
    return guess.points() + called(table.sheet(), words) - (int) open * NO_PLACE;
  }

  /** What speaks against a kind for which known words of other kinds would mean something else. */
  private static int elsewhere(TableGuess guess, Map<SheetKind, PairJudge> judges) {
    long other =
        guess.choices().stream()
            .filter(each -> each.pair().filter(pair -> pair.name() < Pair.LIKE).isPresent())
            .filter(each -> isKnown(each.column().heading(), judges))
            .count();
    return (int) other * ELSEWHERE;
  }

  private static boolean isKnown(String heading, Map<SheetKind, PairJudge> judges) {
    return judges.values().stream().anyMatch(judge -> !meaning(judge.words(), heading).isEmpty());
  }

  private static int called(String sheet, SheetWords words) {
    Likeness.Word name = Likeness.Word.of(sheet);
    int like =
        words.namesSpelled().stream()
            .mapToInt(known -> Likeness.points(name, Likeness.Word.of(known)))
            .max()
            .orElse(0);
    return like == Likeness.SAME ? EXACTLY : like * CALLED / Likeness.SAME;
  }

  /** The table as it is understood when surer guesses count. */
  TableContents table(int least) {
    Map<Integer, String> found = new TreeMap<>();
    guess.stream()
        .filter(each -> Math.min(sure, each.sure()) >= least)
        .forEach(each -> found.put(each.column().at(), each.meaning()));
    List<Column> columns =
        of.columns().stream()
            .map(column -> column.meaning(found.getOrDefault(column.at(), column.meaning())))
            .toList();
    return new TableContents(
        of.sheet(), sure >= least ? kind : of.kind(), of.settled(), of.given(), columns);
  }

  /** Whether the table is, or is guessed to be, of a kind. */
  boolean is(SheetKind asked) {
    return kind.equals(Optional.of(asked)) && sure >= Proposal.LEAST;
  }

  /** The rows of the file: the sheet itself where it is not known, then its open headings. */
  List<Proposal> proposals() {
    return SheetRowsOf.of(this);
  }
}
