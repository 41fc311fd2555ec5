package clenchbook.billing.numbering;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.reading.texts.TextFiles;
import clenchbook.texts.InEnglish;
import clenchbook.values.CreditorReference;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What an owner's transfer shall say. A creditor reference holds at most 21 letters and digits (ISO
 * 11649:2009); that of 2026-0001 is RF31 2026 0001, check digits by ISO 7064 MOD 97-10.
 */
class PaymentReferencesTest {
  private static PaymentReferences references(String asked, String... numbers) {
    Settings settings =
        new Settings(Map.of(Setting.PAYMENT_REFERENCE, asked), Map.of(), Map.of(), TextFiles.OWN);
    return PaymentReferences.of(settings, List.of(numbers));
  }

  @Test
  void the_number_itself_is_said_where_no_reference_is_asked_for() {
    PaymentReferences references = references("number", "2026-0001", "---");
    assertEquals(Optional.empty(), references.of("2026-0001"));
    assertEquals(Optional.empty(), references.refusal());
  }

  @Test
  void a_number_gets_its_reference_where_the_setting_asks_for_it() {
    PaymentReferences references = references("rf", "2026-0001", "2026-0002", "2026-0001");
    assertEquals(
        Optional.of("RF31 2026 0001"), references.of("2026-0001").map(CreditorReference::inFours));
    assertEquals(Optional.empty(), references.refusal());
  }

  @Test
  void a_number_without_a_reference_leaves_all_without() {
    PaymentReferences references = references("rf", "2026-0001", "---");
    assertEquals(Optional.empty(), references.of("2026-0001"));
    assertEquals(
        Optional.of(
            "the number itself is the reference: "
                + "--- has no letters or digits for a reference, or more than 21 of them"),
        references.refusal().map(InEnglish::said));
  }

  @Test
  void two_numbers_of_one_reference_leave_all_without() {
    PaymentReferences references = references("rf", "2026-0001", "20260-001");
    assertEquals(Optional.empty(), references.of("2026-0001"));
    assertEquals(
        Optional.of(
            "the number itself is the reference: 2026-0001 and 20260-001 would have the same"
                + " reference"),
        references.refusal().map(InEnglish::said));
  }
}
