package clenchbook.billing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.documents.WrittenDocument;
import clenchbook.billing.numbering.NumberPattern;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sequential numbers that uniquely identify each invoice (Directive 2006/112/EC, Article 226(2)).
 */
class NumberingTest {
  private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 31);

  private static Numbering numbering(String pattern, int first, String... documents) {
    return new Numbering(
        NumberPattern.parse(pattern).orElseThrow(),
        first,
        List.of(documents).stream().map(WrittenDocument::of).toList());
  }

  @ParameterizedTest(name = "{0} from {1}")
  @CsvSource({
    "{yyyy}-{seq:4}, 1, 2026-0001, 2026-0002",
    "{yyyy}-{seq:4}, 37, 2026-0037, 2026-0038",
    "{seq:4}, 37, 0037, 0038"
  })
  void a_register_without_documents_begins_with_the_first_number(
      String pattern, int first, String one, String next) {
    Numbering numbering = numbering(pattern, first);
    assertEquals(one, numbering.next(OCTOBER).number());
    assertEquals(next, numbering.next(OCTOBER).number());
  }

  @Test
  void the_next_number_follows_the_highest_of_the_series() {
    Numbering numbering = numbering("{yyyy}-{seq:4}", 37, "Number: 2026-0009", "Number: 2026-0003");
    Numbering.Given given = numbering.next(OCTOBER);
    assertEquals(new Numbering.Given("2026-0010", "2026", 10), given);
  }

  @Test
  void a_new_year_begins_with_one_whatever_the_first_number_ever_was() {
    Numbering numbering = numbering("{yyyy}-{seq:4}", 37, "Number: 2026-0040");
    assertEquals("2027-0001", numbering.next(LocalDate.of(2027, 1, 31)).number());
  }

  @Test
  void a_pattern_without_the_year_begins_with_the_first_number_after_years_in_another() {
    Numbering numbering = numbering("A{seq}", 37, "Number: 2026-0040");
    assertEquals("A37", numbering.next(OCTOBER).number());
  }

  @Test
  void a_number_that_another_pattern_gave_is_passed_over() {
    Numbering numbering = numbering("{seq:4}-0002", 2026, "Number: 2026-0002");
    assertEquals("2027-0002", numbering.next(OCTOBER).number());
    assertEquals("2028-0002", numbering.next(OCTOBER).number());
  }
}
