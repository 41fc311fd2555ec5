package clenchbook.reading.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What farriers write behind a heading that says nothing about its meaning: the currency, whether
 * the tax is in it, that an answer is yes or no. {@code Preis in €} is the price.
 */
public final class HeadingEnds {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+|\\p{Sc}");
  private static final Pattern FIGURES = Pattern.compile("\\p{N}+(?:[.,]\\p{N}+)?\\s*%?");
  private static final int LONGEST_END = 4;
  private static final int MOST_ENDS = 3;

  /** What an end says. */
  public enum End {
    /** The currency. */
    CURRENCY("currency"),
    /** That amounts include the tax. */
    WITH_TAX("with tax"),
    /** That the tax is still to be added. */
    WITHOUT_TAX("without tax"),
    /** Which answers are given. */
    YES_OR_NO("yes or no");

    private final String key;

    End(String key) {
      this.key = key;
    }
  }

  /** Behind which headings an end is one: elsewhere "net" and the like have a meaning. */
  private static final Map<End, Set<String>> BEHIND =
      Map.of(
          End.CURRENCY,
          Set.of(
              "Charge",
              "Paid",
              "Price",
              "Unit cost",
              "Pack cost",
              "Net",
              "Gross",
              "Amount",
              "Cost",
              "Proceeds",
              "Opening balance"),
          End.WITH_TAX,
          Set.of("Charge", "Price"),
          End.WITHOUT_TAX,
          Set.of("Charge", "Price"),
          End.YES_OR_NO,
          Set.of("Paid", "Tax exempt"));

  private static final class Loaded {
    static final Map<End, Set<String>> WORDS = words();

    private static Map<End, Set<String>> words() {
      Map<End, Set<String>> all = new EnumMap<>(End.class);
      for (WordLists.Line line : WordLists.section("heading ends")) {
        for (End end : End.values()) {
          if (end.key.equals(line.key())) {
            Set<String> own = all.computeIfAbsent(end, unused -> new HashSet<>());
            line.words().forEach(word -> own.add(SameWords.bare(word)));
          }
        }
      }
      return all;
    }
  }

  private HeadingEnds() {}

  /**
   * A heading with what stands behind it.
   *
   * @param heading the program's heading
   * @param ends what its end says, the last one first
   */
  public record Found(String heading, List<End> ends) {
    /** Copies its list. */
    public Found {
      ends = List.copyOf(ends);
    }
  }

  /**
   * The heading that is left when ends are taken off, one after the other.
   *
   * @param written what stands over the column
   * @param known the heading that some words are; empty for none
   * @return the heading; empty where the words have no such end, or mean nothing without it
   */
  public static Optional<Found> find(String written, Function<String, Optional<String>> known) {
    String left = written;
    List<End> ends = new ArrayList<>();
    while (ends.size() < MOST_ENDS) {
      Optional<Cut> cut = cut(left);
      if (cut.isEmpty()) {
        return Optional.empty();
      }
      left = cut.get().left();
      ends.add(cut.get().end());
      Optional<Found> found = known.apply(left).map(heading -> new Found(heading, ends));
      if (found.isPresent()) {
        return found.filter(each -> each.ends().stream().allMatch(end -> isBehind(end, each)));
      }
    }
    return Optional.empty();
  }

  /** Whether the words have an end at all; quick to tell for most. */
  public static boolean hasEnd(String written) {
    return cut(written).isPresent();
  }

  /**
   * What a heading says of the tax: at its end, as its only words, or in two words or more anywhere
   * in it. One word before others may be about something else, as in {@code Price incl. travel}.
   *
   * @param written what stands over the column; rates in it are passed over
   * @return that the tax is in the amounts or still to be added; empty where nothing is said
   */
  public static Optional<End> tax(String written) {
    String left = FIGURES.matcher(written).replaceAll(" ").replace("+", " plus ");
    Optional<Cut> cut = cut(left);
    for (int ends = 0; ends < MOST_ENDS && cut.isPresent(); ends++) {
      if (isOfTax(cut.get().end())) {
        return Optional.of(cut.get().end());
      }
      left = cut.get().left();
      cut = cut(left);
    }
    return within(words(left));
  }

  private static boolean isOfTax(End end) {
    return end == End.WITH_TAX || end == End.WITHOUT_TAX;
  }

  /** The end that all words are, or some words of several are; the longest, then the first. */
  private static Optional<End> within(List<String> words) {
    for (int length = Math.min(LONGEST_END, words.size()); length > 0; length--) {
      for (int first = 0; first + length <= words.size(); first++) {
        boolean enough = length > 1 || words.size() == 1;
        Optional<End> end = end(String.join("", words.subList(first, first + length)));
        if (enough && end.filter(HeadingEnds::isOfTax).isPresent()) {
          return end;
        }
      }
    }
    return Optional.empty();
  }

  private static List<String> words(String written) {
    return WORD.matcher(written).results().map(word -> WordForms.of(word.group()).bare()).toList();
  }

  private static Optional<End> end(String bare) {
    return Loaded.WORDS.entrySet().stream()
        .filter(end -> end.getValue().contains(bare))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static boolean isBehind(End end, Found found) {
    return BEHIND.getOrDefault(end, Set.of()).contains(found.heading());
  }

  private record Cut(String left, End end) {}

  /** Takes the longest end off that the words have, one word at least being left. */
  private static Optional<Cut> cut(String written) {
    List<Integer> starts = new ArrayList<>();
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(written);
    while (word.find()) {
      starts.add(word.start());
      words.add(WordForms.of(word.group()).bare());
    }
    for (int first = Math.max(1, words.size() - LONGEST_END); first < words.size(); first++) {
      String tail = String.join("", words.subList(first, words.size()));
      Optional<End> end = end(tail);
      if (end.isPresent()) {
        return Optional.of(new Cut(written.substring(0, starts.get(first)), end.get()));
      }
    }
    return Optional.empty();
  }
}
