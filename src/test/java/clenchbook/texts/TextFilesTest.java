package clenchbook.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.texts.TextFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every text that the code names exists, none lies unused, and each language says the same. */
class TextFilesTest {
  private static final Pattern IN_BRACKETS = Pattern.compile("\\[([^\\]]*)\\]");

  /** Names that are no word of another language. */
  private static final Pattern BARE_NAME =
      Pattern.compile(
          "(?<![\\[/\\w])(Settings|Visits|Horses|Owners|Materials|Purchases|Payments|Strain|Headings|SMTP"
              + " host|From address|Charge|Hourly wage|Formerly|Lead days)(?!\\w)(?! Index)");

  /** Where a country keeps what is its own. */
  private static final Pattern COUNTRYS =
      Pattern.compile("/tax/jurisdiction/[a-z]+/|/resources/rates/[a-z]+/");

  private static final Pattern CHOICE = Pattern.compile("\\{\\d+,choice,");
  private static final Pattern FROM_NONE = Pattern.compile("\\{\\d+,choice,0#");

  /** Each file that there is, in every language. */
  static Stream<Path> files() {
    return Texts.LANGUAGES.stream()
        .flatMap(
            language ->
                TextFilesOfRooms.rooms().stream()
                    .map(room -> TextFilesOfRooms.file(language, room)))
        .filter(Files::exists);
  }

  @Test
  void every_key_that_the_code_names_has_an_english_text() {
    List<String> missing = new ArrayList<>();
    TextFilesOfRooms.named()
        .forEach(
            (key, file) -> {
              if (TextFiles.OWN.find(Texts.ENGLISH, key).isEmpty()) {
                missing.add(key + " in " + file.getFileName());
              }
            });
    assertEquals(List.of(), missing);
  }

  @Test
  void no_text_lies_unused() {
    Set<String> unused = new TreeSet<>();
    for (String room : TextFilesOfRooms.rooms()) {
      unused.addAll(TextFilesOfRooms.texts(TextFilesOfRooms.file(Texts.ENGLISH, room)).keySet());
    }
    unused.removeAll(TextFilesOfRooms.named().keySet());
    assertEquals(Set.of(), unused);
  }

  @ParameterizedTest
  @MethodSource("files")
  void every_text_can_be_filled_and_begins_its_plural_with_none(Path file) {
    String room = file.getFileName().toString().replace("properties", "");
    TextFilesOfRooms.texts(file)
        .forEach(
            (key, text) -> {
              assertTrue(key.startsWith(room), () -> key + " belongs into another file");
              new MessageFormat(text.replace('\'', '’'));
              assertEquals(
                  CHOICE.matcher(text).results().count(),
                  FROM_NONE.matcher(text).results().count(),
                  () -> key + ": without 0# none is said like one");
            });
  }

  @ParameterizedTest
  @MethodSource("files")
  void every_text_has_an_english_one_with_the_same_gaps(Path file) {
    Map<String, String> english =
        TextFilesOfRooms.texts(
            TextFilesOfRooms.TEXTS.resolve(Texts.ENGLISH).resolve(file.getFileName()));
    TextFilesOfRooms.texts(file)
        .forEach(
            (key, text) -> {
              assertTrue(english.containsKey(key), () -> "no English " + key);
              assertEquals(
                  TextFilesOfRooms.gaps(english.getOrDefault(key, "")),
                  TextFilesOfRooms.gaps(text),
                  key);
            });
  }

  /** English keeps the guide's names; the others say what the farrier's own book calls them. */
  @ParameterizedTest
  @MethodSource("files")
  void a_name_of_the_book_in_brackets_is_one_and_stands_nowhere_bare(Path file) {
    Set<String> names = TextFilesOfRooms.bookNames();
    boolean english = file.getParent().getFileName().toString().equals(Texts.ENGLISH);
    TextFilesOfRooms.texts(file)
        .forEach(
            (key, text) -> {
              IN_BRACKETS
                  .matcher(text)
                  .results()
                  .forEach(found -> assertTrue(names.contains(found.group(1)), key));
              assertTrue(english || !BARE_NAME.matcher(text).find(), () -> key + ": " + text);
            });
  }

  /** So that nobody gets a page of which one part is German and the next English. */
  @Test
  void only_a_language_that_has_every_text_is_spoken() {
    for (String language : Texts.LANGUAGES) {
      if (TextFiles.OWN.speaks(language)) {
        assertEquals(Set.of(), missing(language), language);
      }
    }
    assertTrue(TextFiles.OWN.speaks(Texts.ENGLISH));
  }

  /** What a country sets apart is its name, not some room that a language lacks by mistake. */
  @Test
  void only_a_countrys_room_may_be_in_english_alone() {
    for (String room : TextFilesOfRooms.rooms()) {
      if (TextFilesOfRooms.isCountrys(room)) {
        Set<Path> users = new TreeSet<>();
        TextFilesOfRooms.named()
            .forEach(
                (key, file) -> {
                  if (key.startsWith(room + ".")) {
                    users.add(file);
                  }
                });
        users.removeIf(file -> COUNTRYS.matcher(file.toString().replace('\\', '/')).find());
        assertEquals(Set.of(), users, room + " is used outside a country's package and tables");
      }
    }
  }

  /** A farrier's own table may not have the column, so the words beside it are what files say. */
  @Test
  void a_text_that_a_rate_table_names_begins_in_english_with_the_words_beside_it() {
    for (RowsOfRates.Row row : RowsOfRates.all()) {
      row.key()
          .ifPresent(
              key -> {
                String text = InEnglish.TEXTS.say(key);
                assertTrue(
                    text.startsWith(row.name()) || text.startsWith(row.value()),
                    () -> row.file() + ": " + row.name() + " is said as " + text);
              });
    }
  }

  /** The keys that only English has. */
  private static Set<String> missing(String language) {
    Set<String> missing = new TreeSet<>();
    for (String room : TextFilesOfRooms.rooms()) {
      Path own = TextFilesOfRooms.file(language, room);
      if (!Files.exists(own) && TextFilesOfRooms.isCountrys(room)) {
        continue;
      }
      missing.addAll(TextFilesOfRooms.texts(TextFilesOfRooms.file(Texts.ENGLISH, room)).keySet());
      if (Files.exists(own)) {
        missing.removeAll(TextFilesOfRooms.texts(own).keySet());
      }
    }
    return missing;
  }
}
