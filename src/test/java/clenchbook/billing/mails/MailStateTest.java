package clenchbook.billing.mails;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a mail has come, and what it is known by. */
class MailStateTest {
  /** Only what the server surely does not have may go off again unasked. */
  @ParameterizedTest
  @CsvSource({
    "INTENDED, intended, true",
    "HANDED_OVER, handed over, false",
    "DELIVERED, delivered, false",
    "REFUSED, refused, true",
    "UNSURE, unsure, false"
  })
  void a_state_has_its_words_and_says_whether_the_mail_may_go(
      MailState state, String words, boolean safe) {
    assertEquals(words, state.words());
    assertEquals(state, MailState.of(words));
    assertEquals(safe, state.isSafeToSend());
  }

  @Test
  void other_words_are_no_state() {
    assertThrows(IllegalArgumentException.class, () -> MailState.of("lost"));
  }

  @Test
  void a_statement_goes_without_numbers() {
    assertEquals("Ruth, 2026-10", new MailId("Ruth", "2026-10", "").line());
    assertEquals(
        "Ruth, 2026-10, 2026-0001 2026-0002",
        new MailId("Ruth", "2026-10", "2026-0001 2026-0002").line());
  }
}
