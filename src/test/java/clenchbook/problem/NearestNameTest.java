package clenchbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NearestNameTest {
  private static final List<String> HORSES =
      List.of("Bramble", "Bracken", "Rosie", "Jack", "Émile", "Łyna", "Звезда", "Άστρι");

  @ParameterizedTest
  @CsvSource({
    "Brambel, Bramble",
    "Roise, Rosie",
    "Jak, Jack",
    "Emil, Émile",
    "Łuna, Łyna",
    "Звезад, Звезда",
    "Άστρη, Άστρι",
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

  /** "Did you mean Umber?" beside Umber is no help; another name would be a wrong one. */
  @ParameterizedTest
  @ValueSource(strings = {"Umber", "umber", " Ümber", "UM BER"})
  void a_name_that_is_there_but_for_case_accents_and_spaces_gets_no_offer(String found) {
    assertEquals(Optional.empty(), NearestName.find(found, List.of("Umber", "Umbers")));
    assertEquals(Optional.of("Umber"), NearestName.findSpelled(found, List.of("Umber")));
  }

  @Test
  void of_two_equally_near_the_first_in_order_is_offered_however_the_list_is_sorted() {
    assertEquals(Optional.of("Tam"), NearestName.find("Tan", List.of("Tas", "Tam")));
    assertEquals(Optional.of("Tam"), NearestName.find("Tan", List.of("Tam", "Tas")));
  }

  /**
   * Kitten to sitting is 3 (Wikipedia, "Levenshtein distance", example, from memory); a swap of
   * neighbours is one, and "ca" to "abc" 3 as long as no part is edited twice (Wikipedia,
   * "Damerau-Levenshtein distance", optimal string alignment, from memory).
   */
  @Test
  void the_distance_is_that_of_the_known_pairs() {
    assertEquals(3, NearestName.distance("kitten", "sitting", 5));
    assertEquals(1, NearestName.distance("ab", "ba", 5));
    assertEquals(3, NearestName.distance("ca", "abc", 5));
    assertEquals(4, NearestName.distance("", "abcd", 5));
  }

  @ParameterizedTest
  @CsvSource({"Звезда, Звезда, 0", "Звезда, Звезад, 1", "ßøđ, ßđ, 1", "ab, xyzab, 3"})
  void letters_of_every_alphabet_are_compared_up_to_the_limit(String a, String b, int distance) {
    assertEquals(distance, NearestName.distance(a, b, 2));
  }

  /** A third of the letters, at least one and at most three, may be wrong. */
  @ParameterizedTest
  @CsvSource({
    "ab, xb, true",
    "ab, xy, false",
    "abcdef, xycdef, true",
    "abcdef, xyzdef, false",
    "abcdefghijkl, xyzdefghijkl, true",
    "abcdefghijkl, wxyzefghijkl, false"
  })
  void a_third_of_the_letters_may_be_wrong_and_three_at_most(
      String found, String known, boolean offered) {
    assertEquals(offered, NearestName.find(found, List.of(known)).isPresent());
  }
}
