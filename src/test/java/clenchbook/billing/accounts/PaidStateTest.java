package clenchbook.billing.accounts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.accounts.Account.Ages;
import clenchbook.billing.documents.WrittenDocument;
import clenchbook.texts.InEnglish;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The word beside a document, by what is still open of it (common practice, no source). */
class PaidStateTest {
  private static final BigDecimal NOTHING = BigDecimal.ZERO;

  @ParameterizedTest(name = "{0}, open {1}")
  @CsvSource({
    "'Gross: 50, State: issued', 50, issued",
    "'Gross: 50, State: delivered', 50.00, delivered",
    "'Gross: 50, State: issued', 49.99, part paid",
    "'Gross: 50, State: delivered', 0.01, part paid",
    "'Gross: 50, State: issued', 0, paid",
    "'Gross: 50, State: draft', 0, draft",
    "'Gross: 0, State: void', 0, void",
    "'Gross: 0, State: issued', 0, issued",
    "'Gross: -50, State: issued, Corrects: 2026-0001', 0, issued"
  })
  void a_document_that_is_out_is_paid_when_nothing_is_open(
      String document, BigDecimal open, String word) {
    assertEquals(word, word(document, Map.of("2026-0002", open), Map.of()));
  }

  @ParameterizedTest(name = "open {0}")
  @CsvSource({"0, written off", "20, part paid"})
  void what_was_given_up_is_written_off_once_nothing_is_open(BigDecimal open, String word) {
    assertEquals(
        word,
        word("Gross: 50", Map.of("2026-0002", open), Map.of("2026-0002", new BigDecimal("30"))));
  }

  @Test
  void what_the_account_does_not_know_is_all_open() {
    assertEquals("issued", word("Gross: 50", Map.of(), Map.of()));
  }

  private static String word(
      String document, Map<String, BigDecimal> open, Map<String, BigDecimal> writtenOff) {
    Account account =
        new Account(
            "Ruth",
            NOTHING,
            NOTHING,
            NOTHING,
            NOTHING,
            new Ages(NOTHING, NOTHING, NOTHING, NOTHING),
            new Ages(NOTHING, NOTHING, NOTHING, NOTHING),
            List.of(),
            open,
            writtenOff,
            false);
    PaidState state = PaidState.of(WrittenDocument.of("Number: 2026-0002, " + document), account);
    assertEquals(state.word(), InEnglish.said(state.message()), "files and page say the same");
    return state.word();
  }
}
