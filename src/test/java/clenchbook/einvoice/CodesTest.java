package clenchbook.einvoice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the codes of structured invoices are made of; the lists' sources stand in the classes. */
class CodesTest {
  @ParameterizedTest
  @CsvSource({
    "DE 123 456 789, DE123456789",
    "gb123456789, GB123456789",
    "FR-XX.999999999, FRXX999999999",
    "EL123456789, EL123456789",
    "XI123456789, XI123456789"
  })
  void a_number_for_value_added_tax_begins_with_its_country(String typed, String number) {
    assertEquals(Optional.of(number), TaxNumber.vat(typed));
    assertEquals(Optional.empty(), TaxNumber.local(typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"12/345/67890", "123 4567 89", "ZZ123456789", "Steuer 7", "DE"})
  void any_other_is_the_tax_office_s(String typed) {
    assertEquals(Optional.empty(), TaxNumber.vat(typed));
    assertEquals(Optional.of(typed), TaxNumber.local(typed));
  }

  @Test
  void no_number_is_none() {
    assertEquals(Optional.empty(), TaxNumber.vat(""));
    assertEquals(Optional.empty(), TaxNumber.local("  "));
  }

  @ParameterizedTest
  @CsvSource({
    "office@yard.example, EM, office@yard.example",
    "0204:04011000-12345-03, 0204, 04011000-12345-03",
    "04011000-1234512345-06, 0204, 04011000-1234512345-06",
    "4012345000009, 0088, 4012345000009",
    "9930:DE123456789, 9930, DE123456789"
  })
  void an_electronic_address_tells_its_scheme(String typed, String scheme, String value) {
    assertEquals(Optional.of(new ElectronicAddress(scheme, value)), ElectronicAddress.of(typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "by post", "office@yard", "12345", "office at yard.example"})
  void what_is_no_electronic_address_is_none(String typed) {
    assertEquals(Optional.empty(), ElectronicAddress.of(typed));
  }

  @ParameterizedTest
  @CsvSource({
    "hours, HUR",
    "Hour of waiting, HUR",
    "Stunden, HUR",
    "km, KMT",
    "Kilomètres, KMT",
    "miles, SMI",
    "studs, C62",
    "half hour, C62",
    "kmart pads, C62",
    "'', C62"
  })
  void an_extra_that_is_measured_bears_its_unit(String item, String code) {
    assertEquals(code, UnitCode.of(item));
  }

  @Test
  void a_reason_is_a_code_or_words() {
    assertEquals(Optional.of("VATEX-EU-132-1I"), ExemptionCode.of(" vatex-eu-132-1i"));
    assertEquals(Optional.empty(), ExemptionCode.of("VATEX-EU-999"));
    assertTrue(ExemptionCode.meant("VATEX-EU-999"));
    assertFalse(ExemptionCode.meant("Charity, article 132"));
  }
}
