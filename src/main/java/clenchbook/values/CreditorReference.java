package clenchbook.values;

import java.util.Locale;
import java.util.Optional;

/**
 * A structured reference that says which invoice a transfer pays, with check digits against slips
 * of the keyboard.
 *
 * <p>Source: ISO 11649:2009, Structured creditor reference to remittance information; check digits
 * by ISO 7064, remainder 97-10.
 *
 * @param compact {@code RF}, two check digits and up to 21 capitals and digits, without blanks
 */
public record CreditorReference(String compact) {
  /** Letters and digits that a reference may hold behind its check digits. */
  public static final int LONGEST_BODY = 21;

  private static final String HEAD = "RF";

  /** Refuses a reference whose form or check digits are wrong. */
  public CreditorReference {
    boolean form = compact.matches(HEAD + "[0-9]{2}[A-Z0-9]{1," + LONGEST_BODY + "}");
    if (!form || CheckDigits.remainder(compact.substring(4) + compact.substring(0, 4)) != 1) {
      throw new IllegalArgumentException("no creditor reference: " + compact);
    }
  }

  /**
   * The reference of a document's number.
   *
   * @param number any text; its Latin letters without marks and its digits are used, in capitals
   * @return the reference; empty where the number has none of these, or more than {@link
   *     #LONGEST_BODY}
   */
  public static Optional<CreditorReference> of(String number) {
    String body = body(number);
    if (body.isEmpty() || body.length() > LONGEST_BODY) {
      return Optional.empty();
    }
    int check = 98 - CheckDigits.remainder(body + HEAD + "00");
    return Optional.of(
        new CreditorReference(HEAD + String.format(Locale.ROOT, "%02d", check) + body));
  }

  /**
   * What of a document's number its reference holds: two numbers with one body have one reference.
   *
   * @param number any text
   * @return its capitals A to Z and digits 0 to 9, small letters made capitals; may be empty
   */
  public static String body(String number) {
    return number.replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT);
  }

  /**
   * Reads a reference.
   *
   * @param text as typed or as a bank gives it, with or without blanks, in any case
   * @return the reference; empty where its form or check digits are wrong
   */
  public static Optional<CreditorReference> read(String text) {
    String compact = text.replaceAll("[\\s\\u00A0\\u202F]", "").toUpperCase(Locale.ROOT);
    try {
      return Optional.of(new CreditorReference(compact));
    } catch (IllegalArgumentException wrong) {
      return Optional.empty();
    }
  }

  /**
   * The letters and digits behind the check digits.
   *
   * @return 1 to 21 capitals and digits
   */
  public String body() {
    return compact.substring(4);
  }

  /**
   * As it is printed.
   *
   * @return in groups of four with a blank between
   */
  public String inFours() {
    return CheckDigits.inFours(compact);
  }
}
