package clenchbook.matching.bank;

import clenchbook.values.Iban;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Hides account numbers in texts that go into files, but for their last four signs: IBANs (ISO
 * 13616, recognised by their check digits, and those the statement itself names) and long runs of
 * digits, unless these are an invoice's number or reference.
 */
public final class AccountMask {
  private static final Pattern IBAN =
      Pattern.compile("(?i)(?<![A-Z0-9])[A-Z]{2}\\d{2}(?:[ ]?[A-Z0-9]){11,30}");
  private static final Pattern LONG = Pattern.compile("(?<![0-9])\\d(?:[ -]?\\d){8,}(?![0-9])");
  private static final int SHORTEST_IBAN = 15;
  private static final int FEWEST_DIGITS = 8;
  private static final int LEFT = 4;

  private final Set<String> numbers;

  /**
   * Makes one.
   *
   * @param numbers the numbers and references of invoices, letters and digits alone; never hidden
   */
  public AccountMask(Set<String> numbers) {
    this.numbers = Set.copyOf(numbers);
  }

  /**
   * One that spares no number.
   *
   * @return for names of files
   */
  public static AccountMask ofAll() {
    return new AccountMask(Set.of());
  }

  /**
   * Hides what looks like an account number.
   *
   * @param text any text
   * @return the text, each account number as three dots and its last four signs
   */
  public String hide(String text) {
    return hide(text, List.of());
  }

  /**
   * Hides given accounts and what looks like one.
   *
   * @param text any text
   * @param accounts accounts as the statement names them, without blanks; empty ones are passed
   *     over
   * @return the text, each account number as three dots and its last four signs
   */
  public String hide(String text, List<String> accounts) {
    String hidden = text;
    for (String account : accounts) {
      hidden = account.length() > LEFT + 1 ? known(hidden, account) : hidden;
    }
    if (hidden.length() < 9) {
      return hidden;
    }
    return longRuns(ibans(hidden));
  }

  private static String known(String text, String account) {
    StringBuilder spaced = new StringBuilder("(?i)");
    for (int at = 0; at < account.length(); at++) {
      spaced.append(at == 0 ? "" : "[ ]?").append(Pattern.quote(account.substring(at, at + 1)));
    }
    return Pattern.compile(spaced.toString())
        .matcher(text)
        .replaceAll(Matcher.quoteReplacement(tail(account)));
  }

  private String ibans(String text) {
    Matcher found = IBAN.matcher(text);
    StringBuilder hidden = new StringBuilder();
    int from = 0;
    int search = 0;
    while (found.find(search)) {
      int end = ibanEnd(text, found.start(), found.end());
      if (end > 0) {
        hidden
            .append(text, from, found.start())
            .append(tail(text.substring(found.start(), end).replace(" ", "")));
        from = end;
      }
      search = Math.max(end, found.start() + 1);
    }
    return hidden.append(text.substring(from)).toString();
  }

  /** Where an account number that begins here ends; 0 for none. */
  private int ibanEnd(String text, int start, int end) {
    int word = start;
    while (word < end && text.charAt(word) != ' ') {
      word++;
    }
    String whole = text.substring(start, word);
    if (looksLikeIban(whole)) {
      return word;
    }
    for (int at = end; at > start + SHORTEST_IBAN; at--) {
      boolean atWord = text.charAt(at - 1) != ' ';
      if (atWord && Iban.of(text.substring(start, at)).isPresent()) {
        return at;
      }
    }
    return 0;
  }

  /** One word of the form of an IBAN, whether or not its check digits are right. */
  private boolean looksLikeIban(String word) {
    String upper = word.toUpperCase(Locale.ROOT);
    boolean reference = upper.startsWith("RF") || numbers.contains(upper);
    return word.length() >= SHORTEST_IBAN
        && !reference
        && word.chars().filter(c -> c >= '0' && c <= '9').count() >= FEWEST_DIGITS;
  }

  private String longRuns(String text) {
    return LONG.matcher(text)
        .replaceAll(
            found -> {
              String digits = found.group().replaceAll("[^0-9]", "");
              return Matcher.quoteReplacement(spared(digits) ? found.group() : tail(digits));
            });
  }

  /** Whether digits are an invoice's number, or hold one that is long enough to be told. */
  private boolean spared(String digits) {
    return numbers.contains(digits);
  }

  private static String tail(String account) {
    return "..." + account.substring(Math.max(0, account.length() - LEFT));
  }
}
