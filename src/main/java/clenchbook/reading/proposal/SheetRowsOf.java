package clenchbook.reading.proposal;

import clenchbook.book.SheetKind;
import clenchbook.reading.words.SameWords;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Writes down what was guessed of a sheet, a row of the file each. */
final class SheetRowsOf {
  private SheetRowsOf() {}

  static List<Proposal> of(SheetGuess guess) {
    String sheet = guess.of().sheet();
    List<Proposal> rows = new ArrayList<>();
    if (SameWords.bare(sheet).isEmpty()) {
      return rows;
    }
    boolean known = guess.why().isEmpty();
    if (!known) {
      rows.add(sheet(guess));
    }
    boolean likely = known || guess.sure() >= Proposal.LEAST;
    if (likely || guess.kind().equals(java.util.Optional.of(SheetKind.VISITS))) {
      rows.addAll(headings(guess));
    }
    return rows;
  }

  private static Proposal sheet(SheetGuess guess) {
    boolean likely = guess.sure() >= Proposal.LEAST;
    String title = guess.kind().map(SheetKind::title).orElse("");
    return new Proposal(guess.of().sheet(), "", likely ? title : "", guess.sure(), guess.why());
  }

  private static List<Proposal> headings(SheetGuess guess) {
    Map<Integer, HeadingGuess> guesses = new TreeMap<>();
    guess.guess().forEach(each -> guesses.put(each.column().at(), each));
    Map<String, Integer> same = new HashMap<>();
    guess.of().columns().forEach(column -> same.merge(key(column), 1, Integer::sum));
    Set<String> written = new HashSet<>();
    List<Proposal> rows = new ArrayList<>();
    for (Column column : guess.of().columns()) {
      HeadingGuess found = guesses.get(column.at());
      if (found != null && written.add(key(column))) {
        boolean alone = same.getOrDefault(key(column), 0) == 1;
        rows.add(heading(guess, found.within(guess.sure()), alone));
      }
    }
    return rows;
  }

  private static String key(Column column) {
    return SameWords.writtenOut(column.heading());
  }

  private static Proposal heading(SheetGuess guess, HeadingGuess found, boolean alone) {
    boolean likely = alone && found.sure() >= Proposal.LEAST && !found.meaning().isEmpty();
    return new Proposal(
        guess.of().sheet(),
        found.column().heading().replaceAll("\\s+", " "),
        likely ? found.meaning() : "",
        alone ? found.sure() : 0,
        alone ? why(found, likely) : Message.of("proposal.severalSo"));
  }

  /** A meaning that is not likely enough for its own cell stands here. */
  private static Message why(HeadingGuess found, boolean likely) {
    return likely || found.meaning().isEmpty()
        ? found.why()
        : Message.of("proposal.mostLike", found.meaning(), found.why());
  }
}
