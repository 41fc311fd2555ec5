package clenchbook.einvoice;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A tax number as structured invoices tell it: one for value-added tax begins with its country's
 * two letters, any other is the local tax office's.
 *
 * <p>Source: EN 16931-1:2017+A1:2019, BT-31, BT-32 and rule BR-CO-9, which takes the codes of ISO
 * 3166-1 alpha-2 and EL for Greece, XI for Northern Ireland.
 */
final class TaxNumber {
  private static final Set<String> PREFIXES = prefixes();

  private TaxNumber() {}

  /**
   * A number for value-added tax.
   *
   * @param text as typed
   * @return the number in capitals without blanks, dots and hyphens; empty where it does not begin
   *     with a country's two letters, or fewer digits than letters follow
   */
  static Optional<String> vat(String text) {
    String number = text.replaceAll("[\\s\\u00A0\\u202F.\\-]", "").toUpperCase(Locale.ROOT);
    boolean shaped =
        number.matches("[A-Z]{2}[A-Z0-9+*]{2,15}") && PREFIXES.contains(number.substring(0, 2));
    return shaped && mostlyDigits(number.substring(2)) ? Optional.of(number) : Optional.empty();
  }

  /**
   * A number at the local tax office.
   *
   * @param text as typed
   * @return the text without outer blanks; empty where it is blank or a number for value-added tax
   */
  static Optional<String> local(String text) {
    return Optional.of(text.strip()).filter(number -> !number.isEmpty() && vat(number).isEmpty());
  }

  private static boolean mostlyDigits(String rest) {
    long digits = rest.chars().filter(sign -> sign >= '0' && sign <= '9').count();
    return 2 * digits >= rest.length();
  }

  private static Set<String> prefixes() {
    Set<String> prefixes = new HashSet<>(Arrays.asList(Locale.getISOCountries()));
    prefixes.add("EL");
    prefixes.add("XI");
    return prefixes;
  }
}
