package clenchbook.reading.cells;

import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Amounts of money written as text, with or without the currency's sign or code. */
public final class MoneyText {
  private static final Pattern SIGNED =
      Pattern.compile(
          "([-−(+]*)\\s*([\\p{L}\\p{Sc}.]*?)\\s*([-−(]?[\\d.,].*?)\\s*([\\p{L}\\p{Sc}.]*)(\\)?)");

  /** The currencies that a sign stands for; a currency's own code always stands for it. */
  private static final Map<String, List<String>> SIGNS =
      Map.ofEntries(
          Map.entry("£", List.of("GBP", "GIP", "FKP", "SHP", "EGP")),
          Map.entry("€", List.of("EUR")),
          Map.entry("$", List.of("USD", "CAD", "AUD", "NZD", "SGD", "HKD", "MXN", "BBD", "TTD")),
          Map.entry("US$", List.of("USD")),
          Map.entry("C$", List.of("CAD")),
          Map.entry("CA$", List.of("CAD")),
          Map.entry("A$", List.of("AUD")),
          Map.entry("AU$", List.of("AUD")),
          Map.entry("NZ$", List.of("NZD")),
          Map.entry("KR", List.of("SEK", "NOK", "DKK", "ISK")),
          Map.entry("KR.", List.of("SEK", "NOK", "DKK", "ISK")),
          Map.entry("FR", List.of("CHF")),
          Map.entry("FR.", List.of("CHF")),
          Map.entry("SFR", List.of("CHF")),
          Map.entry("SFR.", List.of("CHF")),
          Map.entry("ZŁ", List.of("PLN")),
          Map.entry("KČ", List.of("CZK")),
          Map.entry("FT", List.of("HUF")),
          Map.entry("LEI", List.of("RON")),
          Map.entry("R", List.of("ZAR")),
          Map.entry("R$", List.of("BRL")),
          Map.entry("¥", List.of("JPY", "CNY")),
          Map.entry("₹", List.of("INR")),
          Map.entry("₪", List.of("ILS")),
          Map.entry("EURO", List.of("EUR")),
          Map.entry("EUROS", List.of("EUR")),
          Map.entry("POUNDS", List.of("GBP")),
          Map.entry("DOLLARS", List.of("USD", "CAD", "AUD", "NZD")));

  private static final Set<String> CODES =
      Currency.getAvailableCurrencies().stream()
          .map(Currency::getCurrencyCode)
          .collect(Collectors.toUnmodifiableSet());

  private static final Set<String> NAMED =
      SIGNS.values().stream().flatMap(List::stream).collect(Collectors.toUnmodifiableSet());

  private static final Pattern MONEY_WORD = Pattern.compile("[\\p{L}]{0,2}\\p{Sc}|\\p{L}{3,}");

  private final NumberText numbers;
  private final Optional<String> currency;

  /**
   * Reads amounts of a book.
   *
   * @param currency the book's own currency; empty has no foreign sign
   */
  public MoneyText(NumberText numbers, Optional<String> currency) {
    this.numbers = numbers;
    this.currency = currency;
  }

  /** The book's own currency; empty where nobody says. */
  Optional<String> currency() {
    return currency;
  }

  /** The amount, in whichever currency; empty when it is none. */
  public Optional<NumberText.Reading> read(String text) {
    Matcher found = matcher(text);
    if (!found.matches() || !isKnown(found.group(2)) || !isKnown(found.group(4))) {
      return Optional.empty();
    }
    boolean open = found.group(1).contains("(");
    boolean closed = found.group(5).equals(")");
    String sign = found.group(1).replace("(", "");
    String body = (open ? "(" : "") + sign + found.group(3) + (closed ? ")" : "");
    return numbers.read(open && !sign.isEmpty() ? "" : body);
  }

  /**
   * Whether three figures stand behind the only mark of an amount, which is the book's decimal one:
   * no money is written so, but thousands are in other countries.
   */
  boolean isOneOrThousand(String text) {
    Matcher found = matcher(text);
    return found.matches() && numbers.isOneOrThousand(found.group(3));
  }

  private static Matcher matcher(String text) {
    return SIGNED.matcher(text.replace('\u00a0', ' ').strip());
  }

  /** The sign or code of a text that is another currency's than the book's. */
  public Optional<String> foreign(String text) {
    if (text.chars().allMatch(c -> c < 'A' && c != '$')) {
      return Optional.empty();
    }
    Matcher found = matcher(text);
    return found.matches()
        ? Stream.of(found.group(2), found.group(4)).filter(this::isForeign).findFirst()
        : Optional.empty();
  }

  /** The first sign, code or name among some words that is another currency's than the book's. */
  Optional<String> foreignAmong(String words) {
    Matcher word = MONEY_WORD.matcher(words);
    while (word.find()) {
      boolean known = word.group().length() < 3 ? isSigned(word.group()) : isNamed(word.group());
      if (known && isForeign(word.group())) {
        return Optional.of(word.group());
      }
    }
    return Optional.empty();
  }

  private static boolean isSigned(String word) {
    return word.codePoints().anyMatch(c -> Character.getType(c) == Character.CURRENCY_SYMBOL);
  }

  /** Codes that are words of a language, too, are left out: only those that have a sign count. */
  private static boolean isNamed(String word) {
    String upper = word.toUpperCase(Locale.ROOT);
    return SIGNS.containsKey(upper) || NAMED.contains(upper);
  }

  /** Whether a sign or code is known and stands for another currency than the book's. */
  boolean isForeign(String sign) {
    String upper = sign.toUpperCase(Locale.ROOT);
    return !upper.isEmpty()
        && isKnown(sign)
        && currency.isPresent()
        && !SIGNS.getOrDefault(upper, List.of(upper)).contains(currency.get());
  }

  private static boolean isKnown(String sign) {
    String upper = sign.toUpperCase(Locale.ROOT);
    return upper.isEmpty() || SIGNS.containsKey(upper) || CODES.contains(upper);
  }

  /** The currency that a sign or code stands for in a country; empty for none. */
  public static Optional<String> currencyOf(String sign, String country) {
    List<String> meant = SIGNS.getOrDefault(sign, List.of(sign));
    Optional<String> own =
        meant.stream().filter(code -> !country.isEmpty() && code.startsWith(country)).findFirst();
    return own.or(() -> meant.stream().findFirst());
  }
}
