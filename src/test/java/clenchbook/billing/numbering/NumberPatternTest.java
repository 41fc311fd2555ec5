package clenchbook.billing.numbering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The forms that an invoice number may have; the rules are the program's own. */
class NumberPatternTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 31);
  private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 31);

  @ParameterizedTest
  @CsvSource({
    "{yyyy}-{seq:4}, 2026-0007, 2026",
    "{yy}{mm}-{seq}, 2603-7, 2026",
    "INV {seq:3}, INV 007, ''",
    "{mm}.{seq:1}, 03.7, ''",
    "{seq:9}, 000000007, ''"
  })
  void a_pattern_writes_date_and_sequence(String pattern, String number, String series) {
    NumberPattern read = NumberPattern.parse(pattern).orElseThrow();
    assertEquals(number, read.number(DAY, 7));
    assertEquals(series, read.series(DAY));
  }

  @Test
  void a_sequence_that_outgrows_its_digits_is_written_whole() {
    assertEquals("2026-12345", NumberPattern.DEFAULT.number(DAY, 12345));
  }

  /** No sequence, two of them, a stray brace, a letter no file name may bear, nought digits. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{yyyy}",
        "{seq}{seq:2}",
        "{seq}{day}",
        "{seq:0}",
        "A/{seq}",
        "A:{seq}",
        "A\t{seq}",
        "{{seq}"
      })
  void what_makes_no_number_is_no_pattern(String text) {
    assertEquals(Optional.empty(), NumberPattern.parse(text));
  }

  @ParameterizedTest
  @CsvSource({"35, true", "36, false"})
  void forty_characters_are_the_most(int before, boolean taken) {
    String pattern = "A".repeat(before) + "{seq}";
    assertEquals(taken, NumberPattern.parse(pattern).isPresent());
  }

  /** A blank is the lowest character that a file name bears. */
  @Test
  void a_blank_may_stand_in_a_number() {
    assertEquals(
        "No 7", NumberPattern.parse("No {seq}").map(pattern -> pattern.number(DAY, 7)).orElse(""));
  }

  @Test
  void every_number_that_a_pattern_gives_it_knows_again() {
    for (String text :
        List.of(
            "{yyyy}-{seq:4}", "{yy}{mm}-{seq:3}", "R.{seq}", "{seq:5}/{yyyy}".replace('/', '_'))) {
      NumberPattern pattern = NumberPattern.parse(text).orElseThrow();
      for (int sequence : new int[] {1, 9, 42, 12_345}) {
        String number = pattern.number(OCTOBER, sequence);
        assertEquals(OptionalInt.of(sequence), pattern.sequence(number, 2026), number);
        assertEquals(OptionalInt.of(sequence), pattern.sequence(number + " Ruth", 2026), number);
      }
    }
  }

  @Test
  void other_texts_are_no_numbers_of_it() {
    for (String text :
        List.of("", "2025-0007", "2026-", "2026-7x", "A2026-0007", "2026-99999999999")) {
      assertEquals(OptionalInt.empty(), NumberPattern.DEFAULT.sequence(text, 2026), text);
    }
  }
}
