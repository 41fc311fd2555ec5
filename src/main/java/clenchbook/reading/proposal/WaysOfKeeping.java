package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.proposal.KnownValues.Of;
import clenchbook.reading.words.DateWords;
import clenchbook.reading.words.GuessWords;
import clenchbook.reading.words.Vocabulary;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Two ways of keeping visits that need a word in Headings: a sheet for each client, and a day,
 * owner or place that is written once over its horses.
 */
final class WaysOfKeeping {
  private static final int NAMED_ELSEWHERE = 92;
  private static final int LIKE_A_NAME = 72;
  private static final int CARRIED = 88;
  private static final int FEWEST_BLANK = 3;
  private static final int LEAST_BLANK = 25;
  private static final int FEWEST_SHEETS = 2;

  private final KnownValues known;
  private final boolean horses;
  private final long alike;

  WaysOfKeeping(List<SheetGuess> book, KnownValues known) {
    this.known = known;
    this.horses = book.stream().anyMatch(guess -> guess.is(SheetKind.HORSES));
    this.alike =
        book.stream()
            .filter(guess -> guess.is(SheetKind.VISITS) && column(guess, "Owner").isEmpty())
            .map(guess -> guess.of().sheet())
            .distinct()
            .count();
  }

  /** The rows of a table with those for how it is kept. */
  List<Proposal> with(SheetGuess guess) {
    List<Proposal> rows = new ArrayList<>(guess.proposals());
    if (!guess.is(SheetKind.VISITS)) {
      return rows;
    }
    Optional<Column> horse = column(guess, "Horse");
    Optional<Column> date = column(guess, "Date");
    Optional<Column> owner = column(guess, "Owner");
    if (horse.isPresent() && date.isPresent() && isCarried(guess, date.get(), horse.get())) {
      carry(rows, guess, date.get(), "Date");
      carryWithDay(rows, guess, date.get(), horse.get());
    }
    if (owner.isEmpty() && !horses && !guess.of().given().contains("Owner")) {
      named(guess).ifPresent(rows::add);
    }
    return rows;
  }

  /** The column that has a meaning or is likely to. */
  private static Optional<Column> column(SheetGuess guess, String meaning) {
    Optional<Column> guessed =
        guess.guess().stream()
            .filter(each -> each.meaning().equals(meaning) && each.sure() >= Proposal.LEAST)
            .map(HeadingGuess::column)
            .findFirst();
    return guessed
        .flatMap(
            column ->
                guess.of().columns().stream().filter(own -> own.at() == column.at()).findFirst())
        .or(() -> guess.columns().stream().filter(c -> c.meaning().equals(meaning)).findFirst());
  }

  /**
   * The owner and place that are written with the day. Where horses have owners of their own, a
   * blank owner is theirs, unless day and owner stand in a row of their own above the horses.
   */
  private void carryWithDay(List<Proposal> rows, SheetGuess guess, Column date, Column horse) {
    boolean above = !date.cells().containsKey(horse.cells().firstKey());
    if (horses && !above) {
      return;
    }
    for (String meaning : List.of("Owner", "Place")) {
      column(guess, meaning)
          .filter(one -> isCarried(guess, one, horse) && follows(one, date))
          .ifPresent(one -> carry(rows, guess, one, meaning));
    }
  }

  /** Whether many rows with a horse have no cell here, and something stands over the first one. */
  private static boolean isCarried(SheetGuess guess, Column column, Column horse) {
    if (column.settled() || horse.cells().isEmpty() || column.cells().size() < 2) {
      return false;
    }
    long blank =
        horse.cells().keySet().stream().filter(row -> !column.cells().containsKey(row)).count();
    return blank >= FEWEST_BLANK
        && blank * 100 >= horse.cells().size() * LEAST_BLANK
        && reaches(guess, column, horse.cells().firstKey());
  }

  /** Whether a cell stands in this row or above it, with no blank row between. */
  private static boolean reaches(SheetGuess guess, Column column, int row) {
    SortedSet<Integer> filled = new TreeSet<>();
    guess.of().columns().forEach(each -> filled.addAll(each.cells().headMap(row + 1).keySet()));
    int at = row;
    while (filled.contains(at) && !column.cells().containsKey(at)) {
      at--;
    }
    return column.cells().containsKey(at);
  }

  /** Whether a cell stands here only where one stands there, for the most part. */
  private static boolean follows(Column column, Column leader) {
    long together =
        column.cells().keySet().stream().filter(row -> leader.cells().containsKey(row)).count();
    return together * 10 >= column.cells().size() * 9L;
  }

  private static void carry(List<Proposal> rows, SheetGuess guess, Column column, String meaning) {
    String heading = column.heading().replaceAll("\\s+", " ");
    Optional<Proposal> before = rows.stream().filter(r -> r.mine().equals(heading)).findFirst();
    int sure = Math.min(CARRIED, before.map(Proposal::sure).orElse(CARRIED));
    Proposal carried =
        new Proposal(
            guess.of().sheet(),
            heading,
            meaning + ", carried down",
            Math.min(sure, guess.sure()),
            Message.of("proposal.writtenOnce"));
    before.ifPresentOrElse(row -> rows.set(rows.indexOf(row), carried), () -> rows.add(carried));
  }

  /** The owner by the sheet's own name: one that the book names, or one of several like names. */
  private Optional<Proposal> named(SheetGuess guess) {
    String sheet = guess.of().sheet();
    boolean listed = known.names(Of.OWNER, sheet);
    boolean likeName =
        alike >= FEWEST_SHEETS
            && sheet.chars().noneMatch(Character::isDigit)
            && Vocabulary.load().sheetsCalled(sheet).isEmpty()
            && GuessWords.parts(sheet).stream().noneMatch(WaysOfKeeping::isOfTime);
    if (!listed && !likeName) {
      return Optional.empty();
    }
    Message why =
        listed ? Message.of("proposal.ownerCalledSo") : Message.of("proposal.sheetsBearNames");
    int sure = Math.min(guess.sure(), listed ? NAMED_ELSEWHERE : LIKE_A_NAME);
    return Optional.of(new Proposal(sheet, "(sheet name)", "Owner", sure, why));
  }

  private static boolean isOfTime(String part) {
    return DateWords.monthByName(part).isPresent() || DateWords.isWeekday(part);
  }
}
