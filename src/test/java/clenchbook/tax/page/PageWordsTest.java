package clenchbook.tax.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.texts.TextFiles;
import clenchbook.reports.blocks.FigureText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences in another language, their gaps filled, with numbers as that language writes them. */
class PageWordsTest {
  private static final Translations GERMAN =
      new Translations(
          Map.of(
              "de",
              Map.of(
                  "{0} of {1} months.",
                  "{1} Monate, davon {0}.", "March", "März", "ten", "10000")));
  private static final PageWords PLAIN = PageWords.of("de", GERMAN);
  private static final PageWords PEOPLE =
      PLAIN.with(new FigureText(TextFiles.in("de", "DE"), "EUR"));

  @Test
  void a_sentence_is_said_in_the_language_with_its_gaps_where_that_language_has_them() {
    Sentence sentence = Sentence.of("{0} of {1} months.", "7", "12");
    assertEquals("12 Monate, davon 7.", PLAIN.say(sentence));
    assertEquals("7 of 12 months.", sentence.inEnglish());
    assertEquals("7 of 12 months.", PageWords.of("fr", GERMAN).say(sentence));
    assertEquals(
        List.of("12 Monate, davon 7.", "März"), PLAIN.say(List.of(sentence, Sentence.of("March"))));
  }

  @Test
  void what_fills_a_gap_is_translated_and_written_like_a_number_too() {
    assertEquals(
        "12.345,60 Monate, davon März.",
        PEOPLE.say(Sentence.of("{0} of {1} months.", "March", "12345.60")));
    assertEquals(
        "12345.60 Monate, davon März.",
        PLAIN.say(Sentence.of("{0} of {1} months.", "March", "12345.60")));
  }

  @Test
  void a_word_without_a_translation_stays_and_a_language_keeps_its_code() {
    assertEquals("April", PLAIN.say("April"));
    assertEquals("de", PLAIN.language());
    assertEquals("de", PEOPLE.language());
    assertEquals("10.000", PEOPLE.say("ten"), "a translation that is a number");
  }

  /** A whole number of up to four digits may be a year and stays; in a column it is grouped. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026|2026|2.026",
        "9999|9999|9.999",
        "10000|10.000|10.000",
        "2026.50|2.026,50|2.026,50",
        "0.5|0,5|0,5",
        "-1234.50|\u22121.234,50|\u22121.234,50",
        "1.2.3|1.2.3|1.2.3",
        "12 months|12 months|12 months",
        "March|März|März"
      })
  void numbers_are_written_as_the_language_writes_them(String text, String said, String column) {
    assertEquals(said, PEOPLE.say(text));
    assertEquals(column, PEOPLE.inColumn(text));
  }

  @Test
  void files_have_numbers_as_they_are() {
    assertEquals("12345.60", PLAIN.amount(new BigDecimal("12345.60")));
    assertEquals("12.345,60", PEOPLE.amount(new BigDecimal("12345.60")));
    assertEquals("12345.60", PLAIN.inColumn("12345.60"));
  }
}
