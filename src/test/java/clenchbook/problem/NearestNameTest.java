package clenchbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
  private static final List<String> HORSES =
      List.of("Bramble", "Bracken", "Rosie", "Jack", "Émile");

  @ParameterizedTest
  @CsvSource({
    "Brambel, Bramble",
    "bramble, Bramble",
    "Roise, Rosie",
    "Jak, Jack",
    "Emile, Émile",
  })
  void a_misspelt_name_gets_the_nearest_known_one(String found, String offered) {
    assertEquals(Optional.of(offered), NearestName.find(found, HORSES));
  }

  @Test
  void a_name_unlike_any_known_one_gets_no_offer() {
    assertEquals(Optional.empty(), NearestName.find("Thunder", HORSES));
    assertEquals(Optional.empty(), NearestName.find("  ", HORSES));
    assertEquals(Optional.empty(), NearestName.find("Bramble", List.of()));
  }

  @Test
  void of_two_equally_near_the_first_in_order_is_offered_however_the_list_is_sorted() {
    assertEquals(Optional.of("Tam"), NearestName.find("Tan", List.of("Tas", "Tam")));
    assertEquals(Optional.of("Tam"), NearestName.find("Tan", List.of("Tam", "Tas")));
  }

  /** From memory: the textbook pair of Levenshtein's distance is kitten, sitting: 3. */
  @Test
  void the_distance_is_that_of_the_textbook() {
    assertEquals(3, NearestName.distance("kitten", "sitting", 5));
    assertEquals(1, NearestName.distance("ab", "ba", 5));
    assertEquals(3, NearestName.distance("ca", "abc", 5));
  }
}
