package clenchbook.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Creditor references against published ones: ISO 11649:2009 with the example that the standard's
 * descriptions print, RF18 5390 0754 7034.
 */
class CreditorReferenceTest {
  @ParameterizedTest
  @CsvSource({
    "539007547034, RF18 5390 0754 7034",
    "2026-0001, RF31 2026 0001",
    "H/26.0007, RF19 H260 007"
  })
  void a_number_gets_its_reference(String number, String printed) {
    CreditorReference reference = CreditorReference.of(number).orElseThrow();
    assertEquals(printed, reference.inFours());
    assertEquals(Optional.of(reference), CreditorReference.read(printed));
  }

  @Test
  void letters_and_digits_of_the_number_are_all_that_counts() {
    assertEquals(CreditorReference.of("ab-12"), CreditorReference.of("AB 12"));
    assertEquals("AB12", CreditorReference.body("ab-12"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "--", "王", "1234567890123456789012"})
  void a_number_without_letters_or_with_too_many_gets_none(String number) {
    assertEquals(Optional.empty(), CreditorReference.of(number));
  }

  @Test
  void twenty_one_letters_and_digits_are_the_most() {
    String most = "123456789012345678901";
    assertEquals(most, CreditorReference.of(most).orElseThrow().body());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "RF19539007547034",
        "RF18539007547043",
        "18539007547034",
        "RF18",
        "RF18 5390-0754"
      })
  void a_mistyped_reference_is_refused(String text) {
    assertEquals(Optional.empty(), CreditorReference.read(text));
    assertThrows(IllegalArgumentException.class, () -> new CreditorReference(text));
  }

  @Test
  void no_single_slip_goes_unseen() {
    String sound = CreditorReference.of("2026-0001").orElseThrow().compact();
    for (int place = 2; place < sound.length(); place++) {
      for (char digit = '0'; digit <= '9'; digit++) {
        String slip = sound.substring(0, place) + digit + sound.substring(place + 1);
        assertEquals(slip.equals(sound), CreditorReference.read(slip).isPresent(), slip);
      }
    }
  }

  /** Check digits below ten keep their nought. */
  @Test
  void check_digits_are_always_two() {
    for (int number = 1; number <= 500; number++) {
      String compact = CreditorReference.of(Integer.toString(number)).orElseThrow().compact();
      assertTrue(compact.matches("RF[0-9]{2}" + number), compact);
    }
  }
}
