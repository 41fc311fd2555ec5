package clenchbook.reading.words;

import clenchbook.reading.formats.cells.Cell;
import java.util.Optional;
import java.util.Set;

/** Yes and no in the spellings that are common. */
public final class YesNo {
  private static final Set<String> YES =
      Set.of(
          "yes", "y", "true", "1", "x", "on", "ja", "j", "oui", "o", "si", "sim", "wahr", "vrai");
  private static final Set<String> NO =
      Set.of("no", "n", "false", "0", "off", "none", "nein", "non", "nao", "nee", "falsch", "faux");
  private static final Set<String> TICKS = Set.of("✓", "✔", "☑");
  private static final Set<String> DASHES = Set.of("-", "–", "—", "✗", "✘", "☐");

  private YesNo() {}

  /** The answer; empty for anything else. */
  public static Optional<Boolean> read(Cell cell) {
    if (cell instanceof Cell.Truth truth) {
      return Optional.of(truth.value());
    }
    return cell instanceof Cell.Text || cell instanceof Cell.Number
        ? read(cell.shown())
        : Optional.empty();
  }

  /** The yes or no that a text says in any of the five languages; empty where it says neither. */
  public static Optional<Boolean> read(String text) {
    String mark = text.strip();
    String bare = SameWords.bare(mark);
    if (YES.contains(bare) || TICKS.contains(mark)) {
      return Optional.of(true);
    }
    return NO.contains(bare) || DASHES.contains(mark) ? Optional.of(false) : Optional.empty();
  }
}
