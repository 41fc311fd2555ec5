package clenchbook.reading.texts;

import clenchbook.reading.words.StarterNames;
import clenchbook.texts.TextSource;
import clenchbook.texts.Texts;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The texts in the program's own resources: {@code texts/<language>/<room>.properties}, where the
 * room is what stands before a key's first dot. A file is read when its first text is asked for, so
 * that a run reads only those of its own language that it needs.
 */
public final class TextFiles implements TextSource {
  /** The program's own texts. */
  public static final TextSource OWN = new TextFiles();

  /** The languages that have every room's texts; the others wait, and English is said. */
  private static final Set<String> WHOLE = Set.copyOf(Texts.LANGUAGES);

  private record Room(String language, String name) {}

  private final Map<Room, Map<Object, Object>> rooms = new ConcurrentHashMap<>();

  private TextFiles() {}

  /**
   * The program's texts in one language, with the names of sheets that its starter has.
   *
   * @param language two-letter code
   * @param country two-letter code; empty where not known
   * @return the texts
   */
  public static Texts in(String language, String country) {
    return Texts.of(language, country, OWN).naming(new StarterNames(language));
  }

  @Override
  public Optional<String> find(String language, String key) {
    String name = key.substring(0, Math.max(0, key.indexOf('.')));
    return Optional.ofNullable(
            rooms.computeIfAbsent(new Room(language, name), TextFiles::read).get(key))
        .map(Object::toString);
  }

  @Override
  public boolean speaks(String language) {
    return WHOLE.contains(language);
  }

  /** The texts of a room; none where the language has no such file yet. */
  private static Map<Object, Object> read(Room room) {
    Properties texts = new Properties();
    String file = "/texts/" + room.language() + "/" + room.name() + ".properties";
    try (InputStream in = TextFiles.class.getResourceAsStream(file)) {
      if (in != null) {
        texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return Map.copyOf(texts);
  }
}
