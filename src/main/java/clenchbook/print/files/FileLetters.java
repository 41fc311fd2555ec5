package clenchbook.print.files;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The letters that the names of this machine's files can hold. Without a UTF-8 locale, as under
 * cron, these are the plain ones of ASCII alone; every other letter is then written in them.
 */
final class FileLetters {
  private static final String NO_LETTER = "_";

  /**
   * Letters that are no plain one with a mark: of Latin, Greek and Cyrillic, small ones, each
   * before what is written for it; from memory, after ICAO Doc 9303, Part 3, section 6.
   */
  private static final String PAIRS =
      "ø o æ ae œ oe ß ss ł l đ d ð d þ th ħ h ı i ’ ' ‘ ' – - — - α a β v γ g δ d ε e ζ z η i θ th"
          + " ι i κ k λ l μ m ν n ξ x ο o π p ρ r σ s ς s τ t υ y φ f χ ch ψ ps ω o а a б b в v г g"
          + " д d е e ж zh з z и i й i к k л l м m н n о o п p р r с s т t у u ф f х kh ц ts ч ch ш"
          + " sh щ shch ъ ie ы y ь ' э e ю iu я ia є ie і i ї i ґ g ђ dj ј j љ lj њ nj ћ c џ dz ў"
          + " u";

  private static final Map<String, String> PLAIN = pairs();

  private FileLetters() {}

  private static Map<String, String> pairs() {
    String[] words = PAIRS.split(" ");
    Map<String, String> pairs = new HashMap<>();
    for (int at = 0; at < words.length; at += 2) {
      pairs.put(words[at], words[at + 1]);
    }
    return pairs;
  }

  /**
   * Whether a file of this machine can bear a text in its name.
   *
   * @param text without signs that a system reserves
   * @return false where a letter can't be written
   */
  static boolean hold(String text) {
    try {
      return !Path.of("a" + text).toString().isEmpty();
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /**
   * A text as this machine's files can bear it.
   *
   * @param text without signs that a system reserves
   * @return the text itself, or with each letter that can't be written in plain ones, such as
   *     {@code O} for {@code Ø}; an underscore where there is none
   */
  static String written(String text) {
    return hold(text) ? text : written(text, FileLetters::hold);
  }

  /** The same by any machine's rule of what a file's name can hold. */
  static String written(String text, Predicate<String> holds) {
    StringBuilder written = new StringBuilder();
    text.codePoints()
        .mapToObj(Character::toString)
        .map(letter -> holds.test(letter) ? letter : plain(letter, holds))
        .forEach(written::append);
    return written.toString();
  }

  private static String plain(String letter, Predicate<String> holds) {
    StringBuilder plain = new StringBuilder();
    Normalizer.normalize(letter, Normalizer.Form.NFKD)
        .codePoints()
        .mapToObj(Character::toString)
        .map(part -> holds.test(part) ? part : known(part))
        .forEach(plain::append);
    return plain.isEmpty() ? NO_LETTER : plain.toString();
  }

  /** A letter of the table, large where it is; nothing for a mark and for what stands in none. */
  private static String known(String letter) {
    String small = letter.toLowerCase(Locale.ROOT);
    String plain = PLAIN.getOrDefault(small, "");
    boolean large = !small.equals(letter) && !plain.isEmpty();
    return large ? plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1) : plain;
  }
}
