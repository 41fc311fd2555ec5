package clenchbook.delivery.wording;

import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Reads the wording of mails: the built-in one, and over it the farrier's own entries.
 *
 * <p>The farrier's file is {@code report-templates/mail.<language>.properties} beside the workbook:
 * UTF-8, one {@code key = text} a line, any of the keys of {@link WordingPart}; a key that is not
 * there keeps its built-in text, an empty text leaves the paragraph out. {@code \n} starts a new
 * line within a paragraph.
 */
public final class WordingReader {
  /** The languages that have a wording, by their codes. */
  public static final List<String> LANGUAGES = List.of("de", "en", "es", "fr", "nl");

  private static final String DEFAULT = "en";
  private static final String FOLDER = "report-templates";
  private static final long LARGEST_FILE = 65_536;

  private WordingReader() {}

  /**
   * A wording and what of the farrier's own file could not be used.
   *
   * @param wording complete in any case
   * @param faults in the order of the keys
   */
  public record Reading(MailWording wording, List<WordingFault> faults) {
    /** Copies the list. */
    public Reading {
      faults = List.copyOf(faults);
    }
  }

  /**
   * The wording of a language as built in.
   *
   * @param language a code, with or without a region: {@code de}, {@code de-CH}; one that has no
   *     wording gets English
   */
  public static MailWording builtIn(String language) {
    String code = supported(language);
    return MailWording.of(code, builtInEntries(code));
  }

  /**
   * The wording of a language with the farrier's own entries over it.
   *
   * @param language as for {@link #builtIn}
   * @param besideWorkbook the folder the workbook is in
   */
  public static Reading read(String language, Path besideWorkbook) {
    MailWording builtIn = builtIn(language);
    Path file = besideWorkbook.resolve(FOLDER).resolve(fileName(builtIn.language()));
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return new Reading(builtIn, List.of());
    }
    return overlaid(builtIn, file);
  }

  private static String supported(String language) {
    String code = language.strip().toLowerCase(Locale.ROOT).split("[-_]", 2)[0];
    return LANGUAGES.contains(code) ? code : DEFAULT;
  }

  private static String fileName(String code) {
    return "mail." + code + ".properties";
  }

  private static Map<WordingPart, String> builtInEntries(String code) {
    String resource = "/" + FOLDER + "/wording/" + fileName(code);
    try (InputStream stream = WordingReader.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks " + resource);
      }
      Properties entries = parse(stream.readAllBytes());
      Map<WordingPart, String> texts = new EnumMap<>(WordingPart.class);
      for (WordingPart part : WordingPart.values()) {
        Optional.ofNullable(entries.getProperty(part.key())).ifPresent(t -> texts.put(part, t));
      }
      return texts;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Reading overlaid(MailWording builtIn, Path file) {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.size(file) > LARGEST_FILE) {
        return spoilt(
            builtIn,
            name,
            Message.of("delivery.wording.tooLarge"),
            Message.of("delivery.wording.largest"));
      }
      return overlaid(builtIn, name, parse(Files.readAllBytes(file)));
    } catch (CharacterCodingException notUtf8) {
      return spoilt(
          builtIn,
          name,
          Message.of("delivery.wording.notUtf8"),
          Message.of("delivery.wording.utf8"));
    } catch (IllegalArgumentException badEscape) {
      return spoilt(
          builtIn,
          name,
          Message.of("delivery.wording.escape"),
          Message.of("delivery.wording.backslash"));
    } catch (IOException unreadable) {
      return spoilt(
          builtIn,
          name,
          Message.of("delivery.wording.unread"),
          Message.of("delivery.wording.readable"));
    }
  }

  private static Reading spoilt(MailWording builtIn, String file, Message what, Message expected) {
    return new Reading(builtIn, List.of(new WordingFault(file, "", what, expected)));
  }

  private static Reading overlaid(MailWording builtIn, String file, Properties entries) {
    Map<WordingPart, WordingLine> own = new EnumMap<>(WordingPart.class);
    List<WordingFault> faults = new ArrayList<>();
    for (String key : new TreeSet<>(entries.stringPropertyNames())) {
      String text = entries.getProperty(key, "");
      Optional<WordingPart> part = WordingPart.find(key.strip());
      List<WordingFault> found = faultsOf(file, key, part, text);
      faults.addAll(found);
      if (found.isEmpty()) {
        part.ifPresent(known -> own.put(known, WordingLine.of(text)));
      }
    }
    return new Reading(builtIn.with(own), faults);
  }

  private static List<WordingFault> faultsOf(
      String file, String key, Optional<WordingPart> part, String text) {
    if (part.isEmpty()) {
      return List.of(
          new WordingFault(
              file,
              key,
              Message.of("delivery.wording.noEntry"),
              Message.of("delivery.wording.oneOf", keys())));
    }
    return WordingLine.strangersIn(text).stream()
        .map(
            name ->
                new WordingFault(
                    file,
                    key,
                    Message.of("delivery.wording.noPlaceholder", "{" + name + "}"),
                    Message.of("delivery.wording.oneOf", placeholders())))
        .toList();
  }

  private static Properties parse(byte[] bytes) throws IOException {
    Properties entries = new Properties();
    entries.load(new StringReader(utf8(bytes)));
    return entries;
  }

  private static String utf8(byte[] bytes) throws CharacterCodingException {
    String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static String keys() {
    return Arrays.stream(WordingPart.values())
        .map(WordingPart::key)
        .collect(Collectors.joining(", "));
  }

  private static String placeholders() {
    return Arrays.stream(MailWord.values())
        .map(word -> '{' + word.placeholder() + '}')
        .collect(Collectors.joining(" "));
  }
}
