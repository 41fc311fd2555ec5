package clenchbook.tax.jurisdiction.us;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.texts.InEnglish;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ConventionTest {
  @Test
  void a_quarter_has_the_table_of_its_number() {
    assertEquals(
        List.of("quarter 1", "quarter 2", "quarter 3", "quarter 4"),
        Stream.of(1, 2, 3, 4).map(Convention::midQuarter).map(Convention::code).toList());
  }

  @Test
  void only_quarters_are_mid_quarter() {
    assertEquals(
        List.of(Convention.HALF_YEAR, Convention.STRAIGHT_LINE),
        Stream.of(Convention.values()).filter(one -> !one.isMidQuarter()).toList());
  }

  @Test
  void pages_say_in_english_what_files_have() {
    Stream.of(Convention.values())
        .forEach(one -> assertEquals(one.code(), InEnglish.said(one.said())));
  }
}
