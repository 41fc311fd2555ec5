package clenchbook.einvoice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.TaxCategory;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Structured invoices before the official rules, which {@link OfficialRules} names. */
class CrossIndustryTextTest {
  private static final BigDecimal ZERO = new BigDecimal("0.00");

  @ParameterizedTest
  @EnumSource
  void each_profile_s_rules_accept_a_taxed_invoice(EInvoiceProfile profile) {
    accepted(SampleEInvoice.of(profile).invoice());
  }

  @ParameterizedTest
  @EnumSource
  void each_profile_s_rules_accept_a_credit_note(EInvoiceProfile profile) {
    accepted(SampleEInvoice.of(profile).creditNote());
  }

  @ParameterizedTest
  @EnumSource(
      value = TaxCategory.class,
      names = {"Z", "E", "AE", "O"})
  void each_category_without_tax_is_accepted(TaxCategory category) {
    for (EInvoiceProfile profile : EInvoiceProfile.values()) {
      accepted(SampleEInvoice.of(profile).untaxed(category));
    }
  }

  /** EN 16931 lets tax differ from net times rate by less than one: BR-CO-17 and its kin. */
  @Test
  void tax_taken_out_of_prices_that_include_it_may_differ_by_a_cent() {
    for (String gross : List.of("0.03", "0.09", "12.34")) {
      for (EInvoiceProfile profile : EInvoiceProfile.values()) {
        accepted(SampleEInvoice.of(profile).includingTax(new BigDecimal(gross)));
      }
    }
  }

  @Test
  void amounts_are_written_as_they_are_given() {
    String xml =
        CrossIndustryText.of(
            SampleEInvoice.of(EInvoiceProfile.FACTUR_X).includingTax(new BigDecimal("0.09")));
    assertTrue(xml.contains("<ram:GrandTotalAmount>0.09</ram:GrandTotalAmount>"), xml);
    assertTrue(xml.contains("<ram:CalculatedAmount>0.01</ram:CalculatedAmount>"), xml);
    assertTrue(xml.contains("<ram:BasisAmount>0.08</ram:BasisAmount>"), xml);
  }

  @Test
  void the_rules_see_a_total_that_does_not_add() {
    String xml =
        CrossIndustryText.of(SampleEInvoice.of(EInvoiceProfile.FACTUR_X).invoice())
            .replaceFirst("<ram:GrandTotalAmount>[0-9.]+<", "<ram:GrandTotalAmount>1.00<");
    List<String> broken = OfficialRules.broken(EInvoiceProfile.FACTUR_X, xml);
    assertTrue(broken.stream().anyMatch(rule -> rule.startsWith("BR-CO-15")), broken::toString);
  }

  @Test
  void the_rules_see_an_xrechnung_without_buyer_reference() {
    String xml =
        CrossIndustryText.of(SampleEInvoice.of(EInvoiceProfile.XRECHNUNG).invoice())
            .replaceFirst("(?s)<ram:BuyerReference>.*</ram:BuyerReference>", "");
    List<String> broken = OfficialRules.broken(EInvoiceProfile.XRECHNUNG, xml);
    assertTrue(broken.stream().anyMatch(rule -> rule.startsWith("BR-DE-15")), broken::toString);
  }

  @Test
  void the_schema_sees_elements_out_of_order() {
    String xml =
        CrossIndustryText.of(SampleEInvoice.of(EInvoiceProfile.FACTUR_X).invoice())
            .replaceFirst(
                "(?s)(<ram:CityName>.*?</ram:CityName>)(\\s*)(<ram:CountryID>.*?</ram:CountryID>)",
                "$3$2$1");
    List<String> broken = OfficialRules.broken(EInvoiceProfile.FACTUR_X, xml);
    assertTrue(broken.stream().anyMatch(rule -> rule.startsWith("schema")), broken::toString);
  }

  @Test
  void what_xml_cannot_hold_is_left_out_and_marks_are_told_apart_from_text() {
    EInvoice invoice =
        SampleEInvoice.of(EInvoiceProfile.FACTUR_X).named("Ström & <Söner>\u0000\u0007 \"王\" 🐎");
    String xml = CrossIndustryText.of(invoice);
    assertTrue(xml.contains("<ram:Name>Ström &amp; &lt;Söner&gt; \"王\" 🐎</ram:Name>"), xml);
    assertFalse(xml.contains("\u0007"));
    accepted(invoice);
  }

  @Test
  void what_is_prepaid_lowers_what_is_due() {
    EInvoice invoice = SampleEInvoice.of(EInvoiceProfile.XRECHNUNG).prepaid("50.00");
    assertTrue(CrossIndustryText.of(invoice).contains("<ram:TotalPrepaidAmount>50.00<"));
    accepted(invoice);
    accepted(SampleEInvoice.of(EInvoiceProfile.XRECHNUNG).prepaid("500.00"));
  }

  @Test
  void without_an_account_the_means_of_payment_is_said_in_words() {
    EInvoice invoice =
        SampleEInvoice.of(EInvoiceProfile.FACTUR_X)
            .paid(
                new EInvoice.Payment(
                    "1", "Cash or card", "2026-0001", Optional.empty(), "", Optional.empty()));
    accepted(invoice);
    assertEquals(ZERO, invoice.totals().prepaid());
  }

  private static void accepted(EInvoice invoice) {
    assertEquals(List.of(), OfficialRules.broken(invoice.profile(), CrossIndustryText.of(invoice)));
  }
}
