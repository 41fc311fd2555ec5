package clenchbook.tax.expenses;

import clenchbook.book.Names;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From the farrier's word for an expense to the code of the line it counts on: the whole word
 * first, then the parts between commas, slashes and the like, then single words, each with or
 * without a plural s. How it was found is shown.
 */
public final class CategoryMap {
  /** The code of an expense whose word no table knows. */
  public static final String UNKNOWN = LineScheme.UNMAPPED;

  private static final String BETWEEN = "\\s*(?:[,/&:;+()–—-]|\\band\\b)\\s*";

  private final Map<String, Rate> words = new HashMap<>();

  /**
   * The words of a regime. They do not expire: a year beyond every row takes the latest of each
   * word.
   *
   * @param day which of several rows of one word counts: the one in force, else the nearest
   */
  public CategoryMap(Regime regime, LocalDate day, RateLookup rates) {
    rates.words(regime.table("categories"), day).forEach(row -> words.put(row.code(), row));
  }

  /**
   * A word and where it leads.
   *
   * @param code the line's code, or {@link #UNKNOWN}
   * @param by the known word it was found by; empty where none was
   */
  public record Found(String code, String by, String source) {}

  /** Where a word for an expense leads; {@link #UNKNOWN} where no table knows any part of it. */
  public Found find(String category) {
    for (String word : candidates(Names.key(category))) {
      Optional<Rate> row = lookUp(word);
      if (row.isPresent()) {
        return new Found(row.get().value(), row.get().code(), row.get().citation());
      }
    }
    return new Found(UNKNOWN, "", "");
  }

  private static List<String> candidates(String category) {
    List<String> candidates = new ArrayList<>(List.of(category));
    candidates.addAll(Arrays.asList(category.split(BETWEEN)));
    candidates.addAll(Arrays.asList(category.split("[^\\p{L}\\p{N}]+")));
    return candidates.stream().filter(word -> !word.isBlank()).distinct().toList();
  }

  private Optional<Rate> lookUp(String word) {
    return ask(word)
        .or(() -> word.endsWith("s") ? ask(word.substring(0, word.length() - 1)) : ask(word + "s"));
  }

  private Optional<Rate> ask(String word) {
    return Optional.ofNullable(words.get(word));
  }
}
