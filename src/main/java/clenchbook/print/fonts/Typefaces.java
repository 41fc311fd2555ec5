package clenchbook.print.fonts;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The program's own fonts, so that a page looks the same on every machine and works on one that has
 * neither fonts nor fontconfig.
 *
 * <p>{@link #prepare()} must run before anything touches AWT: Java reads the font settings once.
 */
public final class Typefaces {
  /** The family of text and figures. */
  public static final String TEXT = "Noto Sans";

  /** The family of names and headings. */
  public static final String DISPLAY = "Noto Serif";

  private static final List<String> FILES =
      List.of(
          "NotoSans-Regular.ttf",
          "NotoSans-Bold.ttf",
          "NotoSerif-Regular.ttf",
          "NotoSerif-Bold.ttf");

  private static final class Folder {
    static final Path PATH = unpack();
  }

  private Typefaces() {}

  /** Makes the fonts known to Java; a second call does nothing. */
  public static void prepare() {
    folder();
  }

  /**
   * The folder of this run that holds the font files; it goes when the program ends.
   *
   * @return a folder in the temporary folder
   */
  static Path folder() {
    return Folder.PATH;
  }

  /**
   * The face of text and figures for drawing.
   *
   * @param size in points
   * @param bold true for bold
   * @return the font, the same on every machine
   */
  public static Font text(float size, boolean bold) {
    return (bold ? Faces.BOLD : Faces.PLAIN).deriveFont(size);
  }

  /**
   * A face of one of the two families.
   *
   * @param family {@link #TEXT} or {@link #DISPLAY}
   * @param bold true for bold
   * @return the font in size 1
   */
  public static Font of(String family, boolean bold) {
    if (family.equals(TEXT)) {
      return bold ? Faces.BOLD : Faces.PLAIN;
    }
    return bold ? Faces.BOLD_DISPLAY : Faces.DISPLAY;
  }

  /**
   * Whether both families of letters have a character.
   *
   * @param letter its code point
   */
  static boolean canDisplay(int letter) {
    return Faces.PLAIN.canDisplay(letter) && Faces.DISPLAY.canDisplay(letter);
  }

  private static final class Faces {
    static final Font PLAIN = unpacked(FILES.get(0));
    static final Font BOLD = unpacked(FILES.get(1));
    static final Font DISPLAY = unpacked(FILES.get(2));
    static final Font BOLD_DISPLAY = unpacked(FILES.get(3));
  }

  private static Font unpacked(String file) {
    try {
      return Font.createFont(Font.TRUETYPE_FONT, folder().resolve(file).toFile());
    } catch (FontFormatException e) {
      throw new IllegalStateException("the program's own font is damaged", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Loads one more face.
   *
   * @param resource its file among the program's resources
   * @return the font in size 1
   */
  static synchronized Font load(String resource) {
    String file = resource.substring(resource.lastIndexOf('/') + 1);
    try (InputStream font = resource(resource)) {
      Files.copy(font, folder().resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException("a font could not be unpacked to the temporary folder", e);
    }
    return unpacked(file);
  }

  private static synchronized Path unpack() {
    try {
      System.setProperty("java.awt.headless", "true");
      Path folder = Files.createTempDirectory("clenchbook-fonts");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder)));
      for (String file : FILES) {
        try (InputStream font = resource("fonts/" + file)) {
          Files.copy(font, folder.resolve(file));
        }
      }
      if (readsFontconfig(System.getProperty("os.name", ""))) {
        useOnly(folder);
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException("the fonts could not be unpacked to the temporary folder", e);
    }
  }

  private static InputStream resource(String file) throws IOException {
    InputStream font = Typefaces.class.getResourceAsStream("/" + file);
    if (font == null) {
      throw new IOException("font missing from the program: " + file);
    }
    return font;
  }

  private static boolean readsFontconfig(String system) {
    String name = system.toLowerCase(Locale.ROOT);
    return !name.startsWith("windows") && !name.startsWith("mac");
  }

  /** Java's own configuration file stands in for fontconfig; its font names must be X11 ones. */
  private static void useOnly(Path folder) throws IOException {
    StringWriter text = new StringWriter();
    Properties settings = new Properties();
    settings.putAll(configuration(folder));
    settings.store(text, null);
    Path file = folder.resolve("fontconfig.properties");
    Files.writeString(file, text.toString());
    System.setProperty("sun.awt.fontconfig", file.toString());
    System.setProperty("sun.java2d.fontpath", folder.toString());
  }

  private static Map<String, String> configuration(Path folder) {
    Map<String, String> settings = new TreeMap<>();
    settings.put("version", "1");
    settings.put("sequence.allfonts", "default");
    for (String family : List.of("serif", "sansserif", "monospaced", "dialog", "dialoginput")) {
      for (String style : List.of("plain", "italic")) {
        settings.put(family + "." + style + ".default", x11Name("medium"));
      }
      for (String style : List.of("bold", "bolditalic")) {
        settings.put(family + "." + style + ".default", x11Name("bold"));
      }
    }
    settings.put("filename." + x11Name("medium"), folder.resolve(FILES.get(0)).toString());
    settings.put("filename." + x11Name("bold"), folder.resolve(FILES.get(1)).toString());
    return settings;
  }

  private static String x11Name(String weight) {
    return "-misc-notosans-" + weight + "-r-normal--*-%d-*-*-p-*-iso10646-1";
  }

  /** Waits for an unpacking that is still going on when the program is ended. */
  private static synchronized void remove(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
      Files.deleteIfExists(folder);
    } catch (IOException e) {
      // The temporary folder is the machine's to sweep; the farrier's work is done and safe.
      return;
    }
  }
}
