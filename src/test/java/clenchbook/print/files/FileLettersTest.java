package clenchbook.print.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names for a machine whose files hold the letters of ASCII alone, spelled by hand. */
class FileLettersTest {
  @ParameterizedTest
  @CsvSource({
    "Søren Ødegård, Soren Odegard",
    "Łucja Żurawińska, Lucja Zurawinska",
    "Großmann & Müller, Grossmann & Muller",
    "Ægir Þórðarson, Aegir Thordarson",
    "Ελένη Παπαδοπούλου, Eleni Papadopoyloy",
    "Щукина Юлия, Shchukina Iuliia",
    "ﬁve № 5, five No 5",
    "王 Ash, _ Ash",
    "O’Neil – Ash, O'Neil - Ash"
  })
  void a_letter_that_cannot_stand_in_a_name_is_written_in_plain_ones(String name, String plain) {
    assertEquals(
        plain,
        FileLetters.written(
            name, letter -> StandardCharsets.US_ASCII.newEncoder().canEncode(letter)));
  }
}
