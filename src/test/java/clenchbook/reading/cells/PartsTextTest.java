package clenchbook.reading.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Counted;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PartsTextTest {
  private static Counted some(String name, int count) {
    return new Counted(name, Optional.of(count));
  }

  private static Counted one(String name) {
    return new Counted(name, Optional.empty());
  }

  @Test
  void sizes_bear_their_count_behind_a_colon() {
    assertEquals(List.of(some("0", 2), some("00", 2)), PartsText.sizes("0: 2; 00: 2"));
    assertEquals(List.of(some("0", 2), some("00", 2)), PartsText.sizes("0:2, 00 x 2"));
    assertEquals(List.of(some("00", 2)), PartsText.sizes("2 x 00"));
    assertEquals(List.of(), PartsText.sizes(" ; "));
  }

  @Test
  void a_size_that_only_looks_like_a_count_stays_a_size() {
    assertEquals(List.of(one("4x0")), PartsText.sizes("4x0"));
    assertEquals(List.of(one("2")), PartsText.sizes("2"));
    assertEquals(List.of(one("5/16")), PartsText.sizes("5/16"));
    assertEquals(List.of(some("4x0", 2)), PartsText.sizes("4x0: 2"));
  }

  @Test
  void a_shoe_may_end_in_a_number() {
    assertEquals(List.of(one("Model 7")), PartsText.shoes("Model 7"));
    assertEquals(
        List.of(some("Model 7", 2), some("Wide", 2)), PartsText.shoes("Model 7: 2; Wide (2)"));
  }

  @Test
  void extras_bear_their_count_before_or_behind() {
    assertEquals(List.of(some("pads", 2), some("studs", 8)), PartsText.extras("pads 2; studs 8"));
    assertEquals(List.of(some("pads", 2), some("studs", 8)), PartsText.extras("2 pads, 8 x studs"));
    assertEquals(List.of(some("M10 studs", 4)), PartsText.extras("M10 studs: 4"));
    assertEquals(List.of(one("pads")), PartsText.extras("pads"));
  }
}
