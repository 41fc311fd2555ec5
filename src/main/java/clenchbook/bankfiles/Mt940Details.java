package clenchbook.bankfiles;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Field 86, which each country fills in its own way: numbered subfields behind a three-digit code
 * (German, Austrian and Polish banks), code words between slashes (Dutch and Nordic banks), or a
 * text.
 *
 * @param who the other side's name; empty where only a text stands
 * @param account the other side's account
 * @param text what the payer wrote
 * @param creditorReference the structured creditor reference
 * @param endToEnd the payer's own reference
 * @param posting what the bank calls it
 * @param returned whether a reason for a return stands in it
 * @param structured whether it had subfields or code words
 */
record Mt940Details(
    String who,
    String account,
    String text,
    String creditorReference,
    String endToEnd,
    String posting,
    boolean returned,
    boolean structured) {
  static final Mt940Details NONE = new Mt940Details("", "", "", "", "", "", false, false);

  private static final Pattern NUMBERED = Pattern.compile("^(\\d{3})\\s*([^\\w\\s,./+])(\\d{2})");
  private static final Pattern SEPA =
      Pattern.compile("\\b(EREF|KREF|MREF|CRED|DEBT|SVWZ|ABWA|ABWE|IBAN|BIC|PURP|COAM|OAMT)\\+ ?");
  private static final Pattern SLASHED = Pattern.compile("/([A-Z]{2,4})/");
  private static final Set<String> SLASH_WORDS =
      Set.of(
          "TRTP", "IBAN", "BIC", "NAME", "REMI", "EREF", "MARF", "CSID", "ORDP", "BENM", "CNTP",
          "PREF", "RTRN", "ISDT", "PURP", "ULTD", "ULTB", "ADDR", "ID", "OCMT", "CHGS", "KREF",
          "IREF", "SVCL", "CREF", "ACSI", "EXCH", "RELA", "NRTX");

  /** Codes of returned payments in the German list of business transaction codes. */
  private static final Set<String> RETURN_CODES = Set.of("108", "109", "159", "181", "182", "183");

  private static final String WITHOUT_REFERENCE = "NOTPROVIDED";
  private static final int FULL_SUBFIELD = 27;
  private static final int FULL_LINE = 64;

  static Mt940Details of(List<String> lines) {
    Matcher numbered = NUMBERED.matcher(String.join("", lines));
    if (numbered.find()) {
      return numbered(numbered.group(1), numbered.group(2), lines);
    }
    String text = wrapped(lines);
    return isSlashed(text) ? slashed(text) : plain(lines);
  }

  // --- numbered subfields

  private static Mt940Details numbered(String code, String mark, List<String> lines) {
    Map<Integer, String> fields = subfields(mark, lines);
    StringBuilder use = new StringBuilder();
    String before = "";
    for (Map.Entry<Integer, String> field : fields.entrySet()) {
      int number = field.getKey();
      if ((number >= 20 && number <= 29) || (number >= 60 && number <= 63)) {
        String part = field.getValue();
        boolean goesOn = before.length() >= FULL_SUBFIELD || before.isEmpty();
        boolean word = SEPA.matcher(part).lookingAt();
        use.append(!use.isEmpty() && (word || !goesOn) ? " " : "").append(part);
        before = part;
      }
    }
    Map<String, String> sepa = keywords(use.toString());
    String name = joinedName(fields);
    String reason = fields.getOrDefault(34, "").strip();
    boolean returned = RETURN_CODES.contains(code) || reason.matches("9\\d\\d");
    String remittance =
        Texts.joined(
            sepa.getOrDefault("SVWZ", sepa.getOrDefault("", "")), sepa.getOrDefault("ABWA", ""));
    return new Mt940Details(
        name,
        fields.getOrDefault(31, sepa.getOrDefault("IBAN", "")).replace(" ", ""),
        remittance,
        "",
        provided(sepa.getOrDefault("EREF", "")),
        Texts.line(fields.getOrDefault(0, "")),
        returned,
        true);
  }

  private static String joinedName(Map<Integer, String> fields) {
    String first = fields.getOrDefault(32, "");
    String more = fields.getOrDefault(33, "");
    boolean goesOn = first.length() >= FULL_SUBFIELD;
    return Texts.line(goesOn ? first + more : first + " " + more);
  }

  /** The text of each numbered subfield; lines are wrapped anywhere, so their ends mean nothing. */
  private static Map<Integer, String> subfields(String mark, List<String> lines) {
    String whole = String.join("", lines);
    Matcher begins = Pattern.compile(Pattern.quote(mark) + "(\\d{2})").matcher(whole);
    Map<Integer, String> fields = new TreeMap<>();
    int number = -1;
    int from = 0;
    while (begins.find()) {
      put(fields, number, whole.substring(from, begins.start()));
      number = Integer.parseInt(begins.group(1));
      from = begins.end();
    }
    put(fields, number, whole.substring(from));
    return fields;
  }

  private static void put(Map<Integer, String> fields, int number, String text) {
    if (number >= 0) {
      fields.merge(number, text, String::concat);
    }
  }

  /** What stands behind each key word; under the empty word what stands before the first. */
  private static Map<String, String> keywords(String text) {
    Matcher word = SEPA.matcher(text);
    Map<String, String> parts = new TreeMap<>();
    String key = "";
    int from = 0;
    while (word.find()) {
      parts.merge(key, Texts.line(text.substring(from, word.start())), Texts::joined);
      key = word.group(1);
      from = word.end();
    }
    parts.merge(key, Texts.line(text.substring(from)), Texts::joined);
    return parts;
  }

  // --- code words between slashes

  private static boolean isSlashed(String text) {
    Matcher word = SLASHED.matcher(text);
    return word.find() && word.start() < 4 && SLASH_WORDS.contains(word.group(1));
  }

  private static Mt940Details slashed(String text) {
    Map<String, String> parts = new TreeMap<>();
    Matcher word = SLASHED.matcher(text);
    String key = "";
    int from = 0;
    int search = 0;
    while (word.find(search)) {
      if (SLASH_WORDS.contains(word.group(1))) {
        parts.putIfAbsent(key, text.substring(from, word.start()));
        key = word.group(1);
        from = word.end();
      }
      search = word.end() - 1;
    }
    parts.putIfAbsent(key, text.substring(Math.min(from, text.length())));
    String[] counterparty = parts.getOrDefault("CNTP", "").split("/", -1);
    String name = parts.getOrDefault("NAME", counterparty.length > 2 ? counterparty[2] : "");
    String account = parts.getOrDefault("IBAN", counterparty[0]);
    return new Mt940Details(
        Texts.line(name),
        account.replace(" ", ""),
        remittance(parts.getOrDefault("REMI", "")),
        reference(parts.getOrDefault("REMI", "")),
        provided(Texts.line(parts.getOrDefault("EREF", ""))),
        Texts.line(parts.getOrDefault("TRTP", "")),
        parts.containsKey("RTRN"),
        true);
  }

  /** {@code USTD//text}, or the bare text. */
  private static String remittance(String value) {
    String bare = value.replaceFirst("^/?(USTD//|STRD/[A-Z]*/)", "");
    return Texts.line(bare.replaceAll("/+$", ""));
  }

  /** {@code STRD/CUR/reference}: the structured creditor reference. */
  private static String reference(String value) {
    Matcher structured = Pattern.compile("^/?STRD/[A-Z]*/([A-Za-z0-9 ]+)").matcher(value);
    return structured.find() ? structured.group(1).strip() : "";
  }

  // --- a text

  private static Mt940Details plain(List<String> lines) {
    return new Mt940Details("", "", Texts.line(wrapped(lines)), "", "", "", false, false);
  }

  /** A full line goes on in the next one; a shorter one has ended, and so has a word. */
  private static String wrapped(List<String> lines) {
    StringBuilder text = new StringBuilder();
    String before = "";
    for (String line : lines) {
      boolean goesOn = text.isEmpty() || before.length() >= FULL_LINE;
      text.append(goesOn ? "" : " ").append(line);
      before = line;
    }
    return text.toString();
  }

  private static String provided(String reference) {
    String bare = Texts.line(reference);
    return bare.toUpperCase(Locale.ROOT).equals(WITHOUT_REFERENCE) ? "" : bare;
  }
}
