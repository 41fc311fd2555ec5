package clenchbook.reading.proposal;

import clenchbook.reading.cells.DateText;
import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.words.Choices;
import clenchbook.reading.words.CountryNames;
import clenchbook.reading.words.GuessWords;
import clenchbook.reading.words.LanguageNames;
import clenchbook.reading.words.SameWords;
import clenchbook.reading.words.SettingWords;
import clenchbook.reading.words.YesNo;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What one cell looks like.
 *
 * @param traits what it may be
 * @param number its number, where it is one; of a length of time its minutes
 */
record CellTraits(Set<Trait> traits, Optional<BigDecimal> number) {
  private static final BigDecimal MOST_SHOES = BigDecimal.valueOf(8);
  private static final BigDecimal LEAST_MINUTES = BigDecimal.valueOf(5);
  private static final BigDecimal MOST_MINUTES = BigDecimal.valueOf(240);
  private static final BigDecimal FIVE = BigDecimal.valueOf(5);
  private static final int LONGEST = 80;
  private static final int LONGEST_NUMBER = 20;
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,3}([.,' ]?\\d{3})*([.,]\\d+)?");
  private static final Pattern CENTS = Pattern.compile(".*\\d[.,]\\d{2}");
  private static final Pattern MONEY =
      Pattern.compile(
          "(?i)[-+(]?\\s*(\\p{Sc}|eur|gbp|usd|chf)?\\s*[\\d.,'"
              + " ]+[-\u2013]*\\s*(\\p{Sc}|eur|euros?|gbp|usd|chf)?\\)?");
  private static final Pattern SIGN = Pattern.compile("(?i).*(\\p{Sc}|eur|gbp|usd|chf).*");
  private static final Pattern TIME = Pattern.compile("\\d{1,2}[:]\\d{2}(:\\d{2})?");
  private static final Pattern MINUTES =
      Pattern.compile(
          "(?i)[\\d.,]+\\s*(m|min|mins|minutes?|minuten|minutos|h|hrs?|std|uur)\\.?(\\s*\\d+\\s*(m|min)?)?");
  private static final Pattern EMAIL = Pattern.compile("[^@\\s]+@[^@\\s]+\\.[^@\\s]+");
  private static final Pattern SIZE =
      Pattern.compile("0{2,4}|\\d{1,2}x0{1,2}|[0-9]/0|[3-9]/(16|8)|\\d{1,2}\\s?(F|H|V|FR|R)");
  private static final Pattern PLAIN_SIZE = Pattern.compile("\\d{1,3}");
  private static final Pattern PARTS =
      Pattern.compile(
          "(?s).*\\S\\s*:\\s*\\d+(?:\\s*[;,+\\n].*)?|[^\\d;]+ \\d+(\\s*[;,+]\\s*[^\\d;]+ \\d+)*");
  private static final Pattern PHONE = Pattern.compile("[+(]?\\d[\\d ()/.-]{7,20}");
  private static final Pattern CODE = Pattern.compile("(?=.*\\d)[\\p{L}\\d/._# -]{2,25}");
  private static final Pattern SECTION =
      Pattern.compile("(?i)[\\d/ ]+\\s*x\\s*[\\d/ ]+\\s*(mm|in)?");
  private static final Pattern PERSON =
      Pattern.compile(
          "(\\p{Lu}[\\p{L}'\u2019.-]*\\s+){1,3}(&\\s+\\p{Lu}\\S*\\s+)?\\p{Lu}[\\p{L}'\u2019-]*");

  /** Looks at a cell. */
  static CellTraits of(Cell cell) {
    if (cell instanceof Cell.Moment) {
      return new CellTraits(EnumSet.of(Trait.DAY), Optional.empty());
    }
    if (cell instanceof Cell.Span span) {
      BigDecimal minutes = BigDecimal.valueOf(span.length().toMinutes());
      return new CellTraits(EnumSet.of(Trait.CLOCK), Optional.of(minutes));
    }
    if (cell instanceof Cell.Truth) {
      return new CellTraits(EnumSet.of(Trait.YES_NO), Optional.empty());
    }
    if (cell instanceof Cell.Number number) {
      return ofNumber(number);
    }
    return cell instanceof Cell.Text text
        ? ofText(text.text().strip())
        : new CellTraits(EnumSet.noneOf(Trait.class), Optional.empty());
  }

  private static CellTraits ofNumber(Cell.Number cell) {
    EnumSet<Trait> traits = EnumSet.noneOf(Trait.class);
    Optional<BigDecimal> value = cell.decimal();
    value.ifPresent(number -> addNumber(traits, number));
    String code = cell.format().code();
    if (code.codePoints().anyMatch(c -> Character.getType(c) == Character.CURRENCY_SYMBOL)) {
      traits.add(Trait.MONEY);
    }
    if (code.contains("0.00") && cell.format().kind() == CellFormat.Kind.PLAIN) {
      traits.add(Trait.CENTS);
    }
    if (cell.format().kind() == CellFormat.Kind.PERCENT) {
      traits.add(Trait.PERCENT);
    }
    return new CellTraits(traits, value);
  }

  private static void addNumber(Set<Trait> traits, BigDecimal value) {
    traits.add(Trait.NUMBER);
    boolean whole = value.stripTrailingZeros().scale() <= 0;
    if (whole) {
      traits.add(Trait.WHOLE);
    }
    if (whole && value.signum() >= 0 && value.compareTo(MOST_SHOES) <= 0) {
      traits.add(Trait.FEW);
    }
    if (value.compareTo(LEAST_MINUTES) >= 0 && value.compareTo(MOST_MINUTES) <= 0) {
      traits.add(Trait.OF_A_JOB);
    }
    if (whole && value.remainder(FIVE).signum() == 0) {
      traits.add(Trait.FIVES);
    }
    if (whole && value.signum() >= 0 && value.precision() - value.scale() <= 2) {
      traits.add(Trait.PLAIN_SIZE);
    }
    if (whole && value.precision() - value.scale() >= 8) {
      traits.add(Trait.PHONE);
    }
  }

  private static CellTraits ofText(String text) {
    EnumSet<Trait> traits = EnumSet.noneOf(Trait.class);
    if (text.isEmpty() || text.length() > LONGEST) {
      if (!text.isEmpty()) {
        traits.addAll(List.of(Trait.TEXT, Trait.LONG));
      }
      return new CellTraits(traits, Optional.empty());
    }
    Optional<BigDecimal> number = number(text, traits);
    if (number.isEmpty()) {
      if (!DateText.read(text, Optional.of(DateText.Order.DMY)).days().isEmpty()) {
        traits.add(Trait.DAY);
      } else {
        addWords(text, traits);
      }
    }
    addChoices(text, traits);
    return new CellTraits(traits, number);
  }

  /** A number that is typed as a text, with or without a sign or unit. */
  private static Optional<BigDecimal> number(String text, Set<Trait> traits) {
    if (text.length() > LONGEST_NUMBER) {
      return Optional.empty();
    }
    if (TIME.matcher(text).matches()) {
      traits.add(Trait.CLOCK);
      String[] parts = text.split(":");
      return Optional.of(
          BigDecimal.valueOf(Long.parseLong(parts[0]) * 60 + Long.parseLong(parts[1])));
    }
    if (MINUTES.matcher(text).matches()) {
      traits.add(Trait.MINUTES);
      return plain(text);
    }
    boolean money = MONEY.matcher(text).matches() && SIGN.matcher(text).matches();
    if (!money && !NUMBER.matcher(text).matches() && !text.endsWith("%")) {
      return Optional.empty();
    }
    if (text.startsWith("00") || (text.startsWith("0") && text.length() > 4)) {
      return Optional.empty();
    }
    Optional<BigDecimal> value = plain(text);
    value.ifPresent(found -> addNumber(traits, found));
    if (money) {
      traits.add(Trait.MONEY);
    }
    if (CENTS.matcher(text.replaceAll("[^\\d.,]", "")).matches()) {
      traits.add(Trait.CENTS);
    }
    if (text.endsWith("%") && value.isPresent()) {
      traits.add(Trait.PERCENT);
    }
    return value;
  }

  /** The digits of a text with its last mark as that of decimals, where two or fewer follow it. */
  private static Optional<BigDecimal> plain(String text) {
    String bare = text.replaceAll("[^\\d.,]", "");
    int mark = Math.max(bare.lastIndexOf('.'), bare.lastIndexOf(','));
    boolean decimals = mark >= 0 && bare.length() - mark - 1 <= 2;
    String whole = (decimals ? bare.substring(0, mark) : bare).replaceAll("\\D", "");
    String digits = decimals ? whole + "." + bare.substring(mark + 1) : whole;
    String sound = digits.endsWith(".") ? digits.substring(0, digits.length() - 1) : digits;
    return sound.matches("\\d+(\\.\\d+)?") ? Optional.of(new BigDecimal(sound)) : Optional.empty();
  }

  private static void addWords(String text, Set<Trait> traits) {
    if (PHONE.matcher(text).matches() && text.chars().filter(Character::isDigit).count() >= 7) {
      traits.add(Trait.PHONE);
      return;
    }
    if (SIZE.matcher(text).matches()) {
      traits.add(Trait.SIZE);
      return;
    }
    traits.add(Trait.TEXT);
    add(traits, Trait.FIGURES, text.chars().anyMatch(Character::isDigit));
    int words = text.split("\\s+").length;
    if (words >= 4) {
      traits.add(Trait.LONG);
    }
    if (words == 1) {
      traits.add(Trait.ONE_WORD);
    }
    if (PERSON.matcher(text).matches()) {
      traits.add(Trait.PERSON);
    }
  }

  private static void addChoices(String text, Set<Trait> traits) {
    String bare = SameWords.bare(text);
    add(traits, Trait.SHAPING, Choices.SHAPING.containsKey(bare));
    add(traits, Trait.HOT_COLD, isHotOrCold(bare));
    add(traits, Trait.REASON, Choices.REASON.containsKey(bare));
    add(traits, Trait.METHOD, GuessWords.isMethod(text));
    add(traits, Trait.MATERIAL, Choices.MATERIAL.containsKey(bare));
    add(traits, Trait.UNIT, Choices.UNIT.containsKey(bare));
    add(traits, Trait.PAYMENT, Choices.PAYMENT.containsKey(bare));
    add(traits, Trait.TAX, Choices.TAX.containsKey(bare));
    add(traits, Trait.FEE, Choices.FEE.containsKey(bare));
    add(traits, Trait.E_INVOICE, Choices.E_INVOICE.containsKey(bare));
    boolean digits = bare.chars().anyMatch(Character::isDigit);
    add(traits, Trait.YES_NO, !digits && YesNo.read(text).isPresent());
    add(traits, Trait.EMAIL, EMAIL.matcher(text).matches());
    add(traits, Trait.PLAIN_SIZE, PLAIN_SIZE.matcher(text).matches());
    add(traits, Trait.PARTS, PARTS.matcher(text).matches());
    add(traits, Trait.WORK, !digits && GuessWords.isWork(text));
    add(traits, Trait.SETTING, SettingWords.find(text).isPresent());
    add(traits, Trait.COUNTRY, text.matches("[A-Z]{2}") && CountryNames.code(text).isPresent());
    add(traits, Trait.LANGUAGE, text.matches("[a-z]{2}") && LanguageNames.code(text).isPresent());
    add(traits, Trait.CODE, digits && CODE.matcher(text).matches());
    add(traits, Trait.SECTION, SECTION.matcher(text).matches());
  }

  private static boolean isHotOrCold(String bare) {
    return Optional.ofNullable(Choices.SHAPING.get(bare))
        .filter(shaping -> !shaping.word().equals("none"))
        .isPresent();
  }

  private static void add(Set<Trait> traits, Trait trait, boolean has) {
    if (has) {
      traits.add(trait);
    }
  }
}
