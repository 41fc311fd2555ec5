package clenchbook.values;

import java.math.BigInteger;

/** The remainder that account numbers and creditor references are checked by: ISO 7064, 97-10. */
final class CheckDigits {
  private static final BigInteger MODULUS = BigInteger.valueOf(97);

  private CheckDigits() {}

  /**
   * The remainder of a text in which letters stand for numbers, A for 10 to Z for 35.
   *
   * @param text capitals and digits only, at least one
   * @return 0 to 96
   */
  static int remainder(String text) {
    StringBuilder digits = new StringBuilder(text.length() * 2);
    text.chars().forEach(letter -> digits.append(Character.getNumericValue(letter)));
    return new BigInteger(digits.toString()).mod(MODULUS).intValue();
  }

  /** A text in groups of four with a blank between. */
  static String inFours(String text) {
    return text.replaceAll("(.{4})(?=.)", "$1 ");
  }
}
