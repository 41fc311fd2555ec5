package clenchbook.tax.jurisdiction.page;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The sentences of a country's page for the preparer, in English or in the country's language. They
 * stand as data in its folder: the name of a row is English, its value the country's language.
 */
public final class PageWords {
  private static final LocalDate ANY = LocalDate.of(2000, 1, 1);

  private final List<Rate> rows;
  private final boolean local;

  private PageWords(List<Rate> rows, boolean local) {
    this.rows = rows;
    this.local = local;
  }

  /** In English. */
  public static PageWords english(String regime, RateLookup rates) {
    return new PageWords(rates.words(regime + "/page", ANY), false);
  }

  /** In the country's own language. */
  public static PageWords local(String regime, RateLookup rates) {
    return new PageWords(rates.words(regime + "/page", ANY), true);
  }

  /** Whether this is the country's own language rather than English. */
  public boolean isLocal() {
    return local;
  }

  /** The sentence with its gaps filled; the key itself where the table lacks it. */
  public String say(Sentence sentence) {
    String text = find(sentence.key()).orElse(sentence.key());
    for (int i = 0; i < sentence.gaps().size(); i++) {
      text = text.replace("{" + i + "}", sentence.gaps().get(i));
    }
    return text;
  }

  /** A sentence or word without gaps. */
  public String say(String key) {
    return say(Sentence.of(key));
  }

  /** All of them, in order. */
  public List<String> say(List<Sentence> sentences) {
    return sentences.stream().map(this::say).toList();
  }

  /** The text of a key; empty where the table lacks it. */
  public Optional<String> find(String key) {
    return rows.stream()
        .filter(row -> row.code().equals(key))
        .map(row -> local ? row.value() : row.name())
        .findFirst();
  }
}
