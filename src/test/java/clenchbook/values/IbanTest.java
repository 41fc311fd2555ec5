package clenchbook.values;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import clenchbook.values.Iban.Fault;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Account numbers against the published examples of the registry (SWIFT, IBAN Registry). */
class IbanTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "GB82 WEST 1234 5698 7654 32",
        "DE89 3704 0044 0532 0130 00",
        "FR14 2004 1010 0505 0001 3M02 606",
        "NL91 ABNA 0417 1643 00",
        "ES91 2100 0418 4502 0005 1332",
        "BE68 5390 0754 7034",
        "NO93 8601 1117 947",
        "MT84 MALT 0110 0001 2345 MTLC AST0 01S"
      })
  void the_registry_s_examples_are_sound(String printed) {
    Iban iban = Iban.of(printed).orElseThrow();
    assertEquals(printed, iban.inFours());
  }

  @Test
  void case_and_blanks_do_not_matter() {
    assertEquals(
        Iban.of("GB82WEST12345698765432"), Iban.of(" gb82 west\u00A012345698\u202F765432 "));
  }

  @ParameterizedTest
  @CsvSource({
    "GB82WEST12345698765433, CHECK_DIGITS",
    "DE88370400440532013000, CHECK_DIGITS",
    "DE98370400440532013000, CHECK_DIGITS",
    "DE8937040044053201300, LENGTH",
    "DE893704004405320130000, LENGTH",
    "ZZ89370400440532013000, COUNTRY",
    "89370400440532013000, FORM",
    "DE89-3704-0044-0532-0130-00, FORM",
    "'', FORM"
  })
  void a_wrong_one_is_told_by_what_is_wrong(String text, Fault fault) {
    assertEquals(Optional.of(fault), Iban.fault(text));
    assertEquals(Optional.empty(), Iban.of(text));
    assertThrows(IllegalArgumentException.class, () -> new Iban(text));
  }

  /** Every single slip of a digit and every change of two neighbours is found. */
  @Test
  void no_single_slip_goes_unseen() {
    String sound = "DE89370400440532013000";
    for (int place = 2; place < sound.length(); place++) {
      for (char digit = '0'; digit <= '9'; digit++) {
        String slip = sound.substring(0, place) + digit + sound.substring(place + 1);
        assertEquals(slip.equals(sound), Iban.of(slip).isPresent(), slip);
      }
      if (place + 1 < sound.length()) {
        String changed =
            sound.substring(0, place)
                + sound.charAt(place + 1)
                + sound.charAt(place)
                + sound.substring(place + 2);
        assertEquals(changed.equals(sound), Iban.of(changed).isPresent(), changed);
      }
    }
  }
}
