package clenchbook.reading.words;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What the farrier says of a heading.
 *
 * @param means the heading it stands for, in any words; empty for a column that is left out
 * @param carried whether its blank cells take the value above them
 * @param leftOut whether the column is not to be read
 */
public record OwnMeaning(String means, boolean carried, boolean leftOut) {
  private static final Set<String> CARRIED = phrases("carried down");
  private static final Set<String> LEFT_OUT = phrases("not read");
  private static final Set<String> SHEET_NAME = phrases("sheet name");
  private static final Pattern BEHIND_COMMA = Pattern.compile("(.+?)[,;(]\\s*([^,;()]+)\\)?\\s*");

  private static Set<String> phrases(String key) {
    return WordLists.section("headings").stream()
        .filter(line -> line.key().equals(key))
        .flatMap(line -> line.all().stream())
        .map(SameWords::bare)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Reads a cell of the column Means. */
  public static OwnMeaning of(String means) {
    if (LEFT_OUT.contains(SameWords.bare(means))) {
      return new OwnMeaning("", false, true);
    }
    Matcher parts = BEHIND_COMMA.matcher(means);
    boolean carried = parts.matches() && CARRIED.contains(SameWords.bare(parts.group(2)));
    return new OwnMeaning(carried ? parts.group(1).strip() : means, carried, false);
  }

  /** Whether a cell of the column Mine stands for the sheet's own name. */
  public static boolean isSheetName(String mine) {
    String words = mine.strip().toLowerCase(Locale.ROOT);
    boolean bracketed = words.startsWith("(") && words.endsWith(")");
    return bracketed && SHEET_NAME.contains(SameWords.bare(words));
  }
}
