package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.TaxKind;
import clenchbook.book.TaxRate;
import clenchbook.book.einvoice.EInvoiceForm;
import clenchbook.book.einvoice.EInvoiceWish;
import clenchbook.problem.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The columns and settings that structured invoices rest on. */
class OwnerColumnsTest {
  @TempDir Path folder;

  private static SmallBook book() {
    return SmallBook.visits("Date|Horse|Work|Owner|Charge")
        .visit("2026-10-01", "Bramble", "Trim", "Ann", 40);
  }

  @Test
  void an_owner_s_post_tax_and_e_invoice_cells_are_read() {
    ReadResult result =
        book()
            .sheet(
                "Owners",
                "Owner|Address|Postcode|City|Tax exempt|Exempt reason|Tax number|Country|E-invoice"
                    + "|Buyer reference|E-invoice address|Formerly")
            .row(
                "Owners",
                "Ann",
                "1 Elm Road",
                "01067",
                "Dresden",
                "yes",
                "VATEX-EU-132-1I",
                "DE 123456789",
                "Deutschland",
                "X-Rechnung",
                "04011000-12345-03",
                "0204:04011000-12345-03",
                "Ann Old; A. Older\nAnnie")
            .read(folder);
    Owner owner = result.book().owners().get(0);
    assertEquals(List.of(), result.problems());
    assertEquals("01067", owner.postcode());
    assertEquals("Dresden", owner.city());
    assertEquals("VATEX-EU-132-1I", owner.exemptReason());
    assertEquals("DE", owner.country());
    assertEquals(
        new EInvoiceWish(
            Optional.of(EInvoiceForm.XRECHNUNG), "04011000-12345-03", "0204:04011000-12345-03"),
        owner.eInvoice());
    assertEquals(List.of("Ann Old", "A. Older", "Annie"), owner.formerly());
  }

  @Test
  void a_form_or_country_nobody_knows_is_told_and_counts_as_blank() {
    ReadResult result =
        book()
            .sheet("Owners", "Owner|Address|Country|E-invoice")
            .row("Owners", "Ann", "1 Elm Road", "Atlantis", "by pigeon")
            .read(folder);
    Owner owner = result.book().owners().get(0);
    assertEquals(
        List.of("C2", "D2"),
        result.problems().stream().map(Problem::at).map(at -> at.cell()).sorted().toList());
    assertEquals("", owner.country());
    assertEquals(EInvoiceWish.NONE, owner.eInvoice());
  }

  @Test
  void a_code_under_reverse_charge_needs_no_rate_and_keeps_its_reason() {
    ReadResult result =
        book()
            .sheet("Tax", "Code|Name|Rate %|Kind|Reason")
            .row("Tax", "RC", "VAT", "", "Reverse charge", "Art. 194")
            .read(folder);
    TaxRate rate = result.book().taxRates().get(0);
    assertEquals(List.of(), result.problems());
    assertEquals(TaxKind.REVERSE_CHARGE, rate.kind());
    assertEquals("Art. 194", rate.reason());
  }

  @Test
  void the_settings_are_read() {
    Settings settings =
        book()
            .sheet("Settings", "Setting|Value")
            .row("Settings", "Postcode", "10115")
            .row("Settings", "City", "Berlin")
            .row("Settings", "Contact", "A. Thorn")
            .row("Settings", "E-invoices", "ZUGFeRD")
            .row("Settings", "Payment reference", "RF")
            .read(folder)
            .book()
            .settings();
    assertEquals("10115", settings.text(Setting.POSTCODE));
    assertEquals("Berlin", settings.text(Setting.CITY));
    assertEquals("A. Thorn", settings.text(Setting.CONTACT));
    assertEquals("factur-x", settings.text(Setting.E_INVOICES));
    assertEquals("rf", settings.text(Setting.PAYMENT_REFERENCE));
  }
}
