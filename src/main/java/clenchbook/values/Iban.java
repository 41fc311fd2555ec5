package clenchbook.values;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A bank account's number whose length is its country's and whose check digits are right.
 *
 * <p>Source: ISO 13616-1:2020 and the lengths of its registry (SWIFT, IBAN Registry), as Apache
 * Commons Validator 1.10.1 carries them; check digits by ISO 7064, remainder 97-10.
 *
 * @param compact its letters and digits, without blanks, in capitals
 */
public record Iban(String compact) {
  private static final Map<String, Integer> LENGTHS =
      lengths(
          "AD24 AE23 AL28 AT20 AZ28 BA20 BE16 BG22 BH22 BI27 BR29 BY28 CH21 CR22 CY28 CZ24 DE22"
              + " DJ27 DK18 DO28 EE20 EG29 ES24 FI18 FK18 FO18 FR27 GB22 GE22 GI23 GL18 GR27 GT28"
              + " HN28 HR21 HU28 IE22 IL23 IQ23 IS26 IT27 JO30 KW30 KZ20 LB28 LC32 LI21 LT20 LU20"
              + " LV21 LY25 MC27 MD24 ME22 MK19 MN20 MR27 MT31 MU30 NI28 NL18 NO15 OM23 PK24 PL28"
              + " PS29 PT25 QA29 RO24 RS22 RU33 SA24 SC31 SD18 SE24 SI19 SK24 SM27 SO23 ST25 SV28"
              + " TL23 TN24 TR26 UA29 VA22 VG24 XK20 YE30");

  /** Refuses what {@link #of} would. */
  public Iban {
    Optional<Fault> fault = fault(compact);
    if (fault.isPresent() || !compact.equals(compacted(compact))) {
      throw new IllegalArgumentException("no IBAN: " + compact);
    }
  }

  /** Why a text is no IBAN. */
  public enum Fault {
    /** It has other signs than a country's two letters, two digits, letters and digits. */
    FORM,
    /** No country of the registry begins so. */
    COUNTRY,
    /** Its length is not its country's. */
    LENGTH,
    /** Its check digits don't fit the rest: a digit is mistyped or two changed places. */
    CHECK_DIGITS
  }

  /**
   * Reads an IBAN.
   *
   * @param text as typed, with or without blanks, in any case
   * @return the IBAN; empty where {@link #fault} finds one
   */
  public static Optional<Iban> of(String text) {
    return fault(text).isPresent() ? Optional.empty() : Optional.of(new Iban(compacted(text)));
  }

  /**
   * What is wrong with a text.
   *
   * @param text as typed, with or without blanks, in any case
   * @return the first fault found; empty for a sound IBAN
   */
  public static Optional<Fault> fault(String text) {
    String account = compacted(text);
    if (!account.matches("[A-Z]{2}[0-9]{2}[A-Z0-9]+")) {
      return Optional.of(Fault.FORM);
    }
    int length = length(account.substring(0, 2)).orElse(0);
    if (length == 0) {
      return Optional.of(Fault.COUNTRY);
    }
    if (account.length() != length) {
      return Optional.of(Fault.LENGTH);
    }
    boolean right = CheckDigits.remainder(account.substring(4) + account.substring(0, 4)) == 1;
    return right ? Optional.empty() : Optional.of(Fault.CHECK_DIGITS);
  }

  /**
   * How long the IBANs of a country are.
   *
   * @param country ISO 3166 alpha-2, in capitals
   * @return letters and digits in all; empty for a country that is not in the registry
   */
  public static Optional<Integer> length(String country) {
    return Optional.ofNullable(LENGTHS.get(country));
  }

  /**
   * As it is printed.
   *
   * @return in groups of four with a blank between
   */
  public String inFours() {
    return CheckDigits.inFours(compact);
  }

  private static String compacted(String text) {
    return text.replaceAll("[\\s\\u00A0\\u202F]", "").toUpperCase(Locale.ROOT);
  }

  private static Map<String, Integer> lengths(String table) {
    Map<String, Integer> lengths = new HashMap<>();
    for (String entry : table.split(" ")) {
      lengths.put(entry.substring(0, 2), Integer.valueOf(entry.substring(2)));
    }
    return lengths;
  }
}
