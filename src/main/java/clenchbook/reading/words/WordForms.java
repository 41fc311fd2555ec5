package clenchbook.reading.words;

import java.util.Set;

/**
 * The forms under which written words are looked up.
 *
 * @param writtenOut letters and digits, umlauts written out
 * @param bare letters and digits, umlauts and accents left out
 */
public record WordForms(String writtenOut, String bare) {
  private static final String CURRENCY_SIGN = "currencysign";

  /** Currencies whose codes and names stand for their sign; other codes are words of a language. */
  private static final Set<String> CODES =
      Set.of("eur", "gbp", "usd", "chf", "cad", "aud", "nzd", "mxn", "sfr", "euro", "euros");

  /** The forms of some words; a currency's sign, code or name alone is a word of its own. */
  public static WordForms of(String words) {
    String bare = SameWords.bare(words);
    if (CODES.contains(bare) || (bare.isEmpty() && isCurrencySign(words))) {
      return new WordForms(CURRENCY_SIGN, CURRENCY_SIGN);
    }
    return new WordForms(SameWords.writtenOut(words), bare);
  }

  private static boolean isCurrencySign(String words) {
    String text = words.strip();
    return !text.isEmpty()
        && text.codePoints().allMatch(c -> Character.getType(c) == Character.CURRENCY_SYMBOL);
  }
}
