package clenchbook.reading.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Words that tell what a column holds or what its heading can't mean, in all five languages. */
public final class GuessWords {
  private static final Set<String> METHODS = words("method");
  private static final Set<String> WORK = words("work");
  private static final Set<String> OTHER_DAY = words("other day");
  private static final Set<String> OTHER_MONEY = words("other money");
  private static final Set<String> NO_PRICE = words("no price");
  private static final Set<String> NO_COLUMN = words("no column");
  private static final Pattern PART = Pattern.compile("[^\\p{L}\\p{M}\\p{Nd}%]+");

  private GuessWords() {}

  private static Set<String> words(String key) {
    Set<String> words = new HashSet<>();
    WordLists.section("guesses", List.of(WordLists.ENGLISH)).stream()
        .filter(line -> line.key().equals(key))
        .flatMap(line -> line.words().stream())
        .forEach(word -> words.add(SameWords.bare(word)));
    return Set.copyOf(words);
  }

  /** The words of a text, bare, in their order; parted at all that is no letter or digit. */
  public static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    for (String part : PART.split(text.toLowerCase(Locale.ROOT))) {
      String bare = SameWords.writtenOut(part);
      if (!bare.isEmpty()) {
        parts.add(bare);
      }
    }
    return parts;
  }

  /** Whether a cell says how was paid. */
  public static boolean isMethod(String cell) {
    return METHODS.contains(SameWords.bare(cell));
  }

  /** Whether a cell names work on hooves. */
  public static boolean isWork(String cell) {
    return isIn(WORK, cell);
  }

  /** Whether a heading names a day that is not the row's own, such as one on which it is due. */
  public static boolean isOtherDay(String heading) {
    return isIn(OTHER_DAY, heading);
  }

  /** Whether a heading names a sum that may be another than the row's price. */
  public static boolean isOtherMoney(String heading) {
    return isIn(OTHER_MONEY, heading);
  }

  /** Whether a heading names a sum that is no price, such as a balance, a tax or a tip. */
  public static boolean isNoPrice(String heading) {
    return isIn(NO_PRICE, heading);
  }

  /** Whether a heading names something that no column of the program holds, such as a phone. */
  public static boolean isNoColumn(String heading) {
    return isIn(NO_COLUMN, heading);
  }

  private static boolean isIn(Set<String> words, String text) {
    return words.contains(SameWords.bare(text))
        || parts(text).stream().anyMatch(part -> words.contains(part) || plain(words, part));
  }

  private static boolean plain(Set<String> words, String part) {
    return words.contains(part.replace("ae", "a").replace("oe", "o").replace("ue", "u"));
  }
}
