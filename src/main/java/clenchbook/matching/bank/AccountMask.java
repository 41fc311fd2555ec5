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
  private static final int FEWEST_IN_LONG = 9;
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
    int digits = digits(hidden);
    boolean perhapsIban = digits >= 2 && hidden.length() >= SHORTEST_IBAN;
    hidden = perhapsIban ? ibans(hidden) : hidden;
    return digits >= FEWEST_IN_LONG ? longRuns(hidden) : hidden;
  }

  private static int digits(String text) {
    int digits = 0;
    for (int at = 0; at < text.length(); at++) {
      digits += isDigit(text.charAt(at)) ? 1 : 0;
    }
    return digits;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** An account in any case, each sign perhaps with a blank behind it. */
  private static String known(String text, String account) {
    int end = -1;
    int at = 0;
    while (at < text.length() && end < 0) {
      end = endOf(account, text, at);
      at += end < 0 ? 1 : 0;
    }
    if (end < 0) {
      return text;
    }
    return text.substring(0, at) + tail(account) + known(text.substring(end), account);
  }

  /** Where an account that begins at a place ends; below 0 where none begins. */
  private static int endOf(String account, String text, int from) {
    int at = from;
    for (int sign = 0; sign < account.length(); sign++) {
      if (sign > 0 && at < text.length() && text.charAt(at) == ' ') {
        at++;
      }
      if (at >= text.length() || !isSame(account.charAt(sign), text.charAt(at))) {
        return -1;
      }
      at++;
    }
    return at;
  }

  private static boolean isSame(char one, char other) {
    return one == other || Character.toUpperCase(one) == Character.toUpperCase(other);
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
    return word.length() >= SHORTEST_IBAN && !reference && digits(word) >= FEWEST_DIGITS;
  }

  private String longRuns(String text) {
    return LONG.matcher(text)
        .replaceAll(
            found -> {
              String digits = found.group().replace(" ", "").replace("-", "");
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
