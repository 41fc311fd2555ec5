package clenchbook.print.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SafeFileNamesTest {
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "Ash / Mill,Ash Mill.pdf",
        "../../etc/passwd,etc passwd.pdf",
        "C:\\x,C x.pdf",
        "CON,CON_.pdf",
        "con.smith,con_.smith.pdf",
        "Lpt9,Lpt9_.pdf",
        "Conrad,Conrad.pdf",
        "`  Ash.  `,Ash.pdf",
        "`...`,unnamed.pdf",
        "O'Neil & Żubr,O'Neil & Żubr.pdf",
        "a<b>|c*?\"d,a b c d.pdf"
      })
  void a_name_from_the_book_becomes_a_name_every_system_takes(String words, String expected) {
    assertEquals(expected, new SafeFileNames().name(words, ".pdf"));
  }

  @Test
  void control_characters_and_direction_marks_are_dropped_and_known() {
    String hostile = "Ash\u202Efdp.\u0000exe\u200F";
    assertEquals("Ashfdp.exe.pdf", new SafeFileNames().name(hostile, ".pdf"));
    assertTrue(SafeFileNames.dropsFrom(hostile));
    assertFalse(SafeFileNames.dropsFrom("Señor Żubr"));
  }

  @Test
  void names_that_coincide_ignoring_case_get_a_number() {
    SafeFileNames names = new SafeFileNames();
    assertEquals("Ash.pdf", names.name("Ash", ".pdf"));
    assertEquals("ASH 2.pdf", names.name("ASH", ".pdf"));
    assertEquals("ash 3.pdf", names.name("ash", ".pdf"));
    assertEquals("Ash 2 2.pdf", names.name("Ash 2", ".pdf"));
  }

  @Test
  void a_long_name_is_cut_to_100_characters_and_stays_apart_from_its_like() {
    SafeFileNames names = new SafeFileNames();
    String first = names.name("x".repeat(300), ".pdf");
    String second = names.name("x".repeat(301), ".pdf");
    assertEquals(100, first.length());
    assertEquals(100, second.length());
    assertFalse(first.equals(second));
  }

  @Test
  void a_long_name_of_wide_letters_fits_into_the_bytes_of_a_file_system() {
    String name = new SafeFileNames().name("王".repeat(200), ".pdf");
    assertTrue(name.getBytes(StandardCharsets.UTF_8).length <= 255, name);
    assertEquals(name, new String(name.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
  }
}
