package clenchbook.billing.numbering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a pattern gives it knows again, and nothing else. */
class NumberPatternTest {
  private static final LocalDate DATE = LocalDate.of(2026, 10, 31);

  @Test
  void every_number_that_a_pattern_gives_it_knows_again() {
    for (String text :
        List.of(
            "{yyyy}-{seq:4}", "{yy}{mm}-{seq:3}", "R.{seq}", "{seq:5}/{yyyy}".replace('/', '_'))) {
      NumberPattern pattern = NumberPattern.parse(text).orElseThrow();
      for (int sequence : new int[] {1, 9, 42, 12_345}) {
        String number = pattern.number(DATE, sequence);
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
