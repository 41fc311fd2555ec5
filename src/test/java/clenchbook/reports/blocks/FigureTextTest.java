package clenchbook.reports.blocks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.texts.TextFiles;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Days and figures as each language writes them. */
class FigureTextTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 6);

  private static FigureText in(String language, String country) {
    return new FigureText(TextFiles.in(language, country), "EUR");
  }

  @Test
  void a_german_day_has_a_point_and_stays_with_its_month() {
    FigureText german = in("de", "DE");

    assertEquals("6.\u00A0Okt.", german.shortDay(DAY));
    assertEquals("Di. 6.\u00A0Okt.", german.weekday(DAY));
    assertEquals("6.\u00A0Oktober", german.day(DAY));
    assertEquals("5.\u00A0Oktober", german.weekOf(DAY));
    assertEquals("6.\u00A0Oktober 2026", german.date(DAY));
  }

  @Test
  void an_english_day_has_none() {
    assertEquals("6 Oct", in("en", "GB").shortDay(DAY));
    assertEquals("Oct 6", in("en", "US").shortDay(DAY));
  }

  /** The first of a month is the only ordinal: common practice of French, no source. */
  @Test
  void a_french_month_begins_with_an_ordinal() {
    FigureText french = in("fr", "FR");
    LocalDate first = LocalDate.of(2026, 10, 1);

    assertEquals("1er\u00A0octobre", french.day(first));
    assertEquals("jeu. 1er\u00A0oct.", french.weekday(first));
    assertEquals("1er\u00A0octobre 2026", french.date(first));
    assertEquals("11\u00A0octobre", french.day(first.plusDays(10)));
  }

  @Test
  void figures_of_files_get_the_decimal_mark_and_nothing_else() {
    assertEquals("9 × 330,5; 1485", in("de", "DE").asTyped("9 × 330.5; 1485"));
    assertEquals("9 × 330.5; 1485", in("en", "GB").asTyped("9 × 330.5; 1485"));
  }
}
