package clenchbook.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
import clenchbook.cli.HelpInWords;
import clenchbook.reading.texts.TextFiles;
import clenchbook.reading.words.StarterWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Sample books run under a language that nobody speaks: each word that the program says of itself
 * stands in brackets then, and what stands outside them was never moved into the texts.
 *
 * <p>{@code -Dmadeup.show=true} prints the words left over by place.
 */
@Tag("samples")
class MadeUpLanguageTest {
  /** Places whose words are not all moved yet. It only ever shrinks: what is clean must go. */
  private static final Set<String> NOT_YET =
      Set.of(
          "German, annex/tax-summary.pdf",
          "metric, annex/tax-summary.pdf",
          "metric, tax-summary.pdf");

  @TempDir private static Path folder;

  private static final Map<String, Sample> SAMPLES = new TreeMap<>();

  /**
   * What was said over one sample.
   *
   * @param said by place
   * @param judge of pages and reports
   * @param naming of places that name sheets and headings as the contract does
   */
  private record Sample(Map<String, String> said, WordsOutside judge, WordsOutside naming) {
    static Sample of(MadeUpBook book, Path out) throws IOException {
      Map<String, String> said = new TreeMap<>(MadeUpRun.of(book, out));
      int help = 0;
      for (String text : HelpInWords.all(Texts.of("de", "DE", new MadeUpTexts()))) {
        said.put("help " + help++, withoutNames(text));
      }
      List<String> own = new ArrayList<>(book.words());
      own.addAll(List.of("buch", "bk", "bank", "begun", "Clenchbook"));
      days(own);
      List<String> names = new ArrayList<>(Setting.UNITS.choices());
      Stream.of(Setting.values()).map(Setting::title).forEach(names::add);
      // What a book lacks is called as the starter of its language calls it.
      StarterWords starter = StarterWords.of("de");
      Stream.of(Setting.values()).map(Setting::title).map(starter::setting).forEach(names::add);
      WordsOutside judge = new WordsOutside(own, names);
      names.addAll(book.known());
      // The column behind Z.
      names.add("AA");
      Stream.of(SheetKind.values()).map(SheetKind::title).forEach(names::add);
      names.addAll(MadeUpRun.meanings(book, out));
      return new Sample(said, judge, new WordsOutside(own, names));
    }

    /** Days as the JDK writes them in German. */
    private static void days(List<String> own) {
      for (TextStyle style : List.of(TextStyle.FULL, TextStyle.SHORT, TextStyle.FULL_STANDALONE)) {
        for (Month month : Month.values()) {
          own.add(month.getDisplayName(style, Locale.GERMANY));
        }
        for (DayOfWeek day : DayOfWeek.values()) {
          own.add(day.getDisplayName(style, Locale.GERMANY));
        }
      }
    }

    /** Commands and what stands for a value are typed as they are, in capitals or at the margin. */
    private static String withoutNames(String help) {
      return help.replaceAll("(?m)^  [a-z-]+ ", " ")
          .replace("[-hV]", "")
          .replaceAll("\\bclenchbook( [a-z-]+)?\\b", "")
          .replaceAll("\\b[A-Z]{2,}\\b", "");
    }

    Map<String, Set<String>> left() {
      Map<String, Set<String>> left = new TreeMap<>();
      said.forEach(
          (place, text) -> {
            boolean names = place.startsWith("terminal ") || place.equals("marked copy");
            Set<String> words = (names ? naming : judge).in(text);
            if (!words.isEmpty()) {
              left.put(place, words);
            }
          });
      return left;
    }
  }

  @BeforeAll
  static void run() throws IOException {
    Path german = Files.createDirectory(folder.resolve("german"));
    SAMPLES.put("German", Sample.of(MadeUpBook.german(german), german.resolve("out")));
    Path metric = Files.createDirectory(folder.resolve("metric"));
    SAMPLES.put("metric", Sample.of(MadeUpBook.metric(metric, "de"), metric.resolve("out")));
  }

  static Stream<String> samples() {
    return SAMPLES.keySet().stream();
  }

  private static Sample sample(String name) {
    return Optional.ofNullable(SAMPLES.get(name)).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void what_was_moved_holds_no_word_of_the_program_outside_brackets(String sample) {
    Map<String, Set<String>> left = sample(sample).left();
    if (Boolean.getBoolean("madeup.show")) {
      left.forEach((place, words) -> System.out.println(sample + ", " + place + ": " + words));
    }
    left.keySet().removeIf(place -> NOT_YET.contains(sample + ", " + place));
    assertEquals(Map.of(), left);
  }

  @Test
  void what_is_clean_is_on_the_list_no_more() {
    Set<String> clean = new TreeSet<>(NOT_YET);
    SAMPLES.forEach(
        (name, sample) ->
            sample.left().keySet().forEach(place -> clean.remove(name + ", " + place)));
    assertEquals(Set.of(), clean, "take these off NOT_YET");
  }

  @ParameterizedTest
  @MethodSource("samples")
  void nothing_that_is_half_as_long_again_is_cut(String sample) {
    Map<String, String> said = sample(sample).said();
    assertFalse(said.isEmpty());
    said.forEach((place, text) -> assertTrue(WordsOutside.isWhole(text), place));
  }

  /** Other programs read them, so neither names nor words nor numbers in them may change. */
  @ParameterizedTest
  @MethodSource("languages")
  void every_csv_holds_the_same_bytes_in_every_language(String language, TextSource texts)
      throws IOException {
    Path beside = Files.createDirectory(folder.resolve("metric-" + language));
    Path out = beside.resolve("out");
    EveryCommand.over(MadeUpBook.metric(beside, language), out, texts);
    Map<String, String> made = CsvFiles.below(folder.resolve("metric/out"));
    Map<String, String> other = CsvFiles.below(out);
    assertTrue(made.keySet().containsAll(SOME_CSV), made.keySet().toString());
    assertEquals(made.keySet(), other.keySet());
    made.forEach((file, bytes) -> assertEquals(bytes, other.get(file), file));
  }

  private static final List<String> SOME_CSV =
      List.of(
          "2025/accountant/journal.csv",
          "2026-09/problems.csv",
          "compared/figures/comparisons.csv");

  /** English, and German from the day on which it is spoken, beside the made-up one. */
  static Stream<Arguments> languages() {
    return Stream.of("en", "de")
        .filter(TextFiles.OWN::speaks)
        .map(language -> Arguments.of(language, TextFiles.OWN));
  }

  @Test
  void a_word_outside_brackets_is_seen() {
    WordsOutside judge = new WordsOutside(List.of("Fell Bay", "Hufbeschlag"), List.of("Due list"));
    String text =
        "‹Rows··›: 3 of Fell, 20 min, --month 2026-10, figures/a.csv, ‹Hufbe··›schlag h, Due list,"
            + " Due";
    assertEquals(Set.of("Due", "of", "schlag"), judge.in(text));
    assertFalse(WordsOutside.isWhole("‹Hufbe"));
    assertEquals(
        "‹Due··› {0}: {1,choice,0#‹none··›|1#1 ‹row··›|1<{1} ‹rows··›}, ‹it's··› ‹so·›",
        MadeUpTexts.madeUp("Due {0}: {1,choice,0#none|1#1 row|1<{1} rows}, it's so"));
  }
}
