package clenchbook.reading.cells;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

  private final NumberText numbers;
  private final Optional<String> currency;

  /**
   * Reads amounts of a book.
   *
   * @param currency the book's own currency; empty accepts every sign
   */
  public MoneyText(NumberText numbers, Optional<String> currency) {
    this.numbers = numbers;
    this.currency = currency;
  }

  /** The amount; empty when it is none, or is in another currency. */
  public Optional<NumberText.Reading> read(String text) {
    Matcher found = SIGNED.matcher(text.replace('\u00a0', ' ').strip());
    if (!found.matches() || !isOwn(found.group(2)) || !isOwn(found.group(4))) {
      return Optional.empty();
    }
    boolean open = found.group(1).contains("(");
    boolean closed = found.group(5).equals(")");
    String sign = found.group(1).replace("(", "");
    String body = (open ? "(" : "") + sign + found.group(3) + (closed ? ")" : "");
    return numbers.read(open && !sign.isEmpty() ? "" : body);
  }

  private boolean isOwn(String sign) {
    String upper = sign.toUpperCase(Locale.ROOT);
    if (upper.isEmpty()) {
      return true;
    }
    List<String> meant = SIGNS.getOrDefault(upper, List.of(upper));
    boolean known = SIGNS.containsKey(upper) || upper.matches("[A-Z]{3}");
    return known && (currency.isEmpty() || meant.contains(currency.get()));
  }

  /** The currency that a sign or code stands for in a country; empty for none. */
  public static Optional<String> currencyOf(String sign, String country) {
    List<String> meant = SIGNS.getOrDefault(sign, List.of(sign));
    Optional<String> own =
        meant.stream().filter(code -> !country.isEmpty() && code.startsWith(country)).findFirst();
    return own.or(() -> meant.stream().findFirst());
  }
}
