package clenchbook.reading.words;

import clenchbook.reading.formats.cells.Cell;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Yes and no in the spellings that are common. */
public final class YesNo {
  /** Read when a word is first asked about. */
  private static final class Loaded {
    static final Set<String> YES = words("Yes");
    static final Set<String> NO = words("No");
    static final Set<String> PAID = words("Paid in full");
    static final Set<String> OWED = words("Not paid");
    static final Set<String> FREE = words("Free of charge");
  }

  private static final Set<String> TICKS = Set.of("✓", "✔", "☑");
  private static final Set<String> DASHES = Set.of("-", "–", "—", "✗", "✘", "☐");

  private static final int LONGEST_WORDS = 40;

  private YesNo() {}

  private static Set<String> words(String list) {
    Set<String> words = new HashSet<>();
    WordLists.section("cells").stream()
        .filter(line -> !line.indented() && line.key().equals(list))
        .flatMap(line -> line.words().stream())
        .forEach(word -> words.add(SameWords.bare(word)));
    return Set.copyOf(words);
  }

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
    if (Loaded.YES.contains(bare) || TICKS.contains(mark)) {
      return Optional.of(true);
    }
    return Loaded.NO.contains(bare) || DASHES.contains(mark)
        ? Optional.of(false)
        : Optional.empty();
  }

  /**
   * Whether a cell of money says in words that all is paid, or nothing; a number is an amount, also
   * 1 and 0.
   */
  public static Optional<Boolean> paid(Cell cell) {
    if (cell instanceof Cell.Truth truth) {
      return Optional.of(truth.value());
    }
    if (!(cell instanceof Cell.Text text) || text.text().length() > LONGEST_WORDS) {
      return Optional.empty();
    }
    String bare = SameWords.bare(text.text());
    if (bare.chars().anyMatch(Character::isDigit)) {
      return Optional.empty();
    }
    if (Loaded.PAID.contains(bare) || Loaded.OWED.contains(bare)) {
      return Optional.of(Loaded.PAID.contains(bare));
    }
    return read(text.text());
  }

  /** Whether a cell of money says in words that nothing is charged. */
  public static boolean isFree(Cell cell) {
    return cell instanceof Cell.Text text
        && text.text().length() <= LONGEST_WORDS
        && Loaded.FREE.contains(SameWords.bare(text.text()));
  }
}
