package clenchbook.print.fonts;

import java.awt.Font;
import java.lang.Character.UnicodeBlock;
import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The faces for letters that the text faces lack. Each is loaded when a document first needs it;
 * most never do.
 */
public enum ScriptFace {
  HEBREW("Hebrew", true),
  ARABIC("Arabic", true),
  DEVANAGARI("Devanagari", true),
  THAI("Thai", true),
  /** Before Chinese: where there is kana, Han letters are written the Japanese way. */
  JAPANESE("CJKjp", false),
  CHINESE("CJKsc", false),
  KOREAN("CJKkr", false);

  /** Below this the text faces have all that any face has. */
  private static final char FIRST = '\u0590';

  private static final Map<Integer, Optional<ScriptFace>> KNOWN = new ConcurrentHashMap<>();

  private final String name;
  private final boolean hasBold;
  private volatile Font[] loaded = {};

  ScriptFace(String name, boolean hasBold) {
    this.name = name;
    this.hasBold = hasBold;
  }

  /**
   * Whether it has a bold face of its own; else the plain one is drawn heavier.
   *
   * @return false for the East Asian ones
   */
  public boolean hasBold() {
    return hasBold;
  }

  /**
   * Where its file lies.
   *
   * @param bold true for the bold face, where there is one
   * @return a resource of the program
   */
  public String file(boolean bold) {
    return "fonts/scripts/NotoSans" + name + (bold && hasBold ? "-Bold.ttf" : "-Regular.ttf");
  }

  /**
   * The face for measuring and drawing.
   *
   * @param bold true for the bold face, where there is one
   * @return the font in size 1
   */
  public Font font(boolean bold) {
    Font[] both = loaded;
    if (both.length == 0) {
      synchronized (this) {
        both = loaded;
        if (both.length == 0) {
          Font plain = Typefaces.load(file(false));
          both = new Font[] {plain, hasBold ? Typefaces.load(file(true)) : plain};
          loaded = both;
        }
      }
    }
    return both[bold ? 1 : 0];
  }

  /**
   * The faces that texts need beside the text faces.
   *
   * @param texts any texts
   * @return in their order; empty for most
   */
  public static Set<ScriptFace> neededBy(Iterable<String> texts) {
    Set<ScriptFace> needed = EnumSet.noneOf(ScriptFace.class);
    for (String text : texts) {
      for (int i = 0; i < text.length(); i++) {
        if (text.charAt(i) >= FIRST) {
          of(text.codePointAt(i)).ifPresent(needed::add);
        }
      }
    }
    return needed;
  }

  /**
   * The face for a letter that the text faces lack.
   *
   * @param letter its code point
   * @return empty where the text faces have it, and where no face does
   */
  public static Optional<ScriptFace> of(int letter) {
    if (letter < FIRST) {
      return Optional.empty();
    }
    return KNOWN.computeIfAbsent(letter, ScriptFace::find);
  }

  private static Optional<ScriptFace> find(int letter) {
    if (Typefaces.canDisplay(letter)) {
      return Optional.empty();
    }
    return candidates(letter).stream()
        .filter(face -> face.font(false).canDisplay(letter))
        .findFirst();
  }

  private static List<ScriptFace> candidates(int letter) {
    return switch (UnicodeScript.of(letter)) {
      case HEBREW -> List.of(HEBREW);
      case ARABIC -> List.of(ARABIC);
      case DEVANAGARI -> List.of(DEVANAGARI);
      case THAI -> List.of(THAI);
      case HANGUL -> List.of(KOREAN);
      case HIRAGANA, KATAKANA -> List.of(JAPANESE);
      case HAN, BOPOMOFO -> List.of(CHINESE, JAPANESE);
      default -> Shared.faces(letter);
    };
  }

  /** Signs and joiners that belong to several scripts, by the block they stand in. */
  private static final class Shared {
    private static final Map<UnicodeBlock, List<ScriptFace>> BY_BLOCK =
        Map.ofEntries(
            Map.entry(UnicodeBlock.ARABIC, List.of(ARABIC)),
            Map.entry(UnicodeBlock.DEVANAGARI, List.of(DEVANAGARI)),
            Map.entry(UnicodeBlock.VEDIC_EXTENSIONS, List.of(DEVANAGARI)),
            Map.entry(UnicodeBlock.THAI, List.of(THAI)),
            Map.entry(UnicodeBlock.KATAKANA, List.of(JAPANESE)),
            Map.entry(UnicodeBlock.HIRAGANA, List.of(JAPANESE)),
            Map.entry(UnicodeBlock.CJK_SYMBOLS_AND_PUNCTUATION, List.of(CHINESE, JAPANESE)),
            Map.entry(UnicodeBlock.HALFWIDTH_AND_FULLWIDTH_FORMS, List.of(CHINESE, JAPANESE)));

    static List<ScriptFace> faces(int letter) {
      UnicodeBlock block = UnicodeBlock.of(letter);
      return block == null ? List.of() : BY_BLOCK.getOrDefault(block, List.of());
    }
  }
}
