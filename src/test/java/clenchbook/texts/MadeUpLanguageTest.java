package clenchbook.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.SheetKind;
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
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A German book run under a language that nobody speaks: each word that the program says of itself
 * stands in brackets then, and what stands outside them was never moved into the texts.
 *
 * <p>{@code -Dmadeup.show=true} prints the words left over by place.
 */
@Tag("samples")
class MadeUpLanguageTest {
  private static final Path SAMPLE = Path.of("sample-workbooks/lindenau-small.xlsx");

  /** Places whose words are not all moved yet. It only ever shrinks: what is clean must go. */
  private static final Set<String> NOT_YET =
      Set.of("annex/tax-summary.pdf", "tax-summary.pdf", "tax-summary.en.pdf");

  @TempDir private static Path folder;

  private static Map<String, String> said = Map.of();
  private static WordsOutside judge = new WordsOutside(List.of());

  /** The judge of places that name sheets and headings as the contract does. */
  private static WordsOutside naming = judge;

  @BeforeAll
  static void run() throws IOException {
    Path book = Files.copy(SAMPLE, folder.resolve("buch.xlsx"));
    said = MadeUpRun.of(book, folder);
    List<String> own = new ArrayList<>(MadeUpRun.texts(book));
    own.add("buch");
    own.add("Clenchbook");
    // What the contract names, and days as the JDK writes them in German.
    Stream.of(Setting.values()).map(Setting::title).forEach(own::add);
    Stream.of(Setting.values()).map(Setting::choices).forEach(own::addAll);
    Stream.of(TextStyle.FULL, TextStyle.SHORT, TextStyle.FULL_STANDALONE)
        .forEach(
            style -> {
              Stream.of(Month.values())
                  .forEach(month -> own.add(month.getDisplayName(style, Locale.GERMANY)));
              Stream.of(DayOfWeek.values())
                  .forEach(day -> own.add(day.getDisplayName(style, Locale.GERMANY)));
            });
    judge = new WordsOutside(own);
    Stream.of(SheetKind.values()).map(SheetKind::title).forEach(own::add);
    own.addAll(MadeUpRun.meanings(folder));
    naming = new WordsOutside(own);
  }

  private static Map<String, Set<String>> left() {
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

  @Test
  void what_was_moved_holds_no_word_of_the_program_outside_brackets() {
    Map<String, Set<String>> left = left();
    if (Boolean.getBoolean("madeup.show")) {
      left.forEach((place, words) -> System.out.println(place + ": " + words));
    }
    left.keySet().removeAll(NOT_YET);
    assertEquals(Map.of(), left);
  }

  @Test
  void what_is_clean_is_on_the_list_no_more() {
    Set<String> clean = new TreeSet<>(NOT_YET);
    clean.removeAll(left().keySet());
    assertEquals(Set.of(), clean, "take these off NOT_YET");
  }

  @Test
  void nothing_that_is_half_as_long_again_is_cut() {
    assertFalse(said.isEmpty());
    said.forEach((place, text) -> assertTrue(WordsOutside.isWhole(text), place));
  }

  @Test
  void a_word_outside_brackets_is_seen() {
    WordsOutside judge = new WordsOutside(List.of("Fell Bay", "Hufbeschlag"));
    String text = "‹Rows··›: 3 of Fell, 20 min, --month 2026-10, figures/a.csv, ‹Hufbe··›schlag h";
    assertEquals(Set.of("of", "schlag"), judge.in(text));
    assertFalse(WordsOutside.isWhole("‹Hufbe"));
    assertEquals(
        "‹Due··› {0}: {1,choice,0#‹none··›|1#1 ‹row··›|1<{1} ‹rows··›}, ‹it's··› ‹so·›",
        MadeUpTexts.madeUp("Due {0}: {1,choice,0#none|1#1 row|1<{1} rows}, it's so"));
  }
}
