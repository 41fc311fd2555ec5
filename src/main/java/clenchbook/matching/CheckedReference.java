package clenchbook.matching;

/**
 * The creditor reference of ISO 11649:2009, RF and two check digits before the letters and digits
 * of a number. The digits make the whole divide by 97 with 1 left over (ISO/IEC 7064, MOD 97-10).
 */
final class CheckedReference {
  private static final int LONGEST = 21;

  private CheckedReference() {}

  /** The reference of a number, without blanks; empty where the number is too long for one. */
  static String of(String number) {
    StringBuilder bare = new StringBuilder();
    for (int at = 0; at < number.length(); at++) {
      char c = Character.toUpperCase(number.charAt(at));
      if (c >= '0' && c <= '9' || c >= 'A' && c <= 'Z') {
        bare.append(c);
      }
    }
    if (bare.isEmpty() || bare.length() > LONGEST) {
      return "";
    }
    int check = 98 - remainder(bare + "RF00");
    return "RF" + (check < 10 ? "0" : "") + check + bare;
  }

  /** What a text of letters and digits leaves over 97, each letter counting as 10 to 35. */
  static int remainder(String text) {
    int rest = 0;
    for (int at = 0; at < text.length(); at++) {
      int value = Character.digit(text.charAt(at), 36);
      rest = (value < 10 ? rest * 10 + value : rest * 100 + value) % 97;
    }
    return rest;
  }
}
