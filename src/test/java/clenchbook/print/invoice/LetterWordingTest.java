package clenchbook.print.invoice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.print.fonts.MissingGlyphs;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LetterWordingTest {
  private static final Pattern GAP = Pattern.compile("\\{\\d}");

  static List<String> languages() {
    return LetterWording.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_language_misses_a_sentence_or_a_gap_in_one(String language) {
    assertEquals(gaps("en"), gaps(language));
  }

  private static Map<String, List<String>> gaps(String language) {
    Map<String, List<String>> gaps = new TreeMap<>();
    LetterWording.of(language)
        .words()
        .forEach(
            (key, words) ->
                gaps.put(
                    key, GAP.matcher(words).results().map(MatchResult::group).sorted().toList()));
    return gaps;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void every_word_can_be_printed_and_none_is_blank(String language) {
    LetterWording.of(language)
        .words()
        .forEach(
            (key, words) -> {
              assertEquals(List.of(), MissingGlyphs.in(words), key);
              assertFalse(words.isBlank(), key);
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"pl", "", "xx", "EN"})
  void a_language_without_wording_is_printed_in_english(String language) {
    assertEquals("Invoice 7", LetterWording.of(language).say("title.invoice", "7"));
  }

  @Test
  void a_gap_may_hold_marks_of_its_own() {
    assertTrue(LetterWording.of("en").say("title.invoice", "{0} $1").endsWith("{0} $1"));
  }
}
