package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reports.letters.InvoiceDocument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Read back by PDFBox and looked over by qpdf, neither of which made the documents. */
public class InvoicePdfTest {
  private static byte[] print(String language, String country, String currency) {
    return new PdfDocuments(SampleDocuments.settings(language, country))
        .invoice(SampleDocuments.invoice(language, country, currency));
  }

  public static String textOf(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper reader = new PDFTextStripper();
      reader.setSortByPosition(true);
      return reader.getText(document);
    }
  }

  static int pagesOf(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    }
  }

  @Test
  void the_same_invoice_gives_the_same_bytes_in_another_zone_and_locale() {
    byte[] once = print("en", "GB", "GBP");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertArrayEquals(once, print("en", "GB", "GBP"));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void two_different_invoices_have_two_identities() throws IOException {
    assertFalse(identity(print("en", "GB", "GBP")).equals(identity(print("en", "GB", "EUR"))));
  }

  private static String identity(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getDocument().getDocumentID().toString();
    }
  }

  @Test
  void title_author_language_and_date_are_set() throws IOException {
    try (PDDocument document = Loader.loadPDF(print("de", "DE", "EUR"))) {
      assertEquals("Rechnung 2026-0041", document.getDocumentInformation().getTitle());
      assertEquals("Larkhill Forge", document.getDocumentInformation().getAuthor());
      assertEquals("de", document.getDocumentCatalog().getLanguage());
      assertEquals(
          "2026-10-31T12:00:00Z",
          document.getDocumentInformation().getCreationDate().toInstant().toString());
    }
  }

  @Test
  void every_font_is_embedded_as_a_subset_and_every_name_is_read_back() throws IOException {
    byte[] pdf = print("en", "GB", "GBP");
    String text = textOf(pdf);
    for (String name : new String[] {"Señor Żubr", "Θαλής", "Снежок", "£292.50"}) {
      assertTrue(text.contains(name), name + " in " + text);
    }
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          var font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          assertTrue(font.getName().matches("AAAAAA\\+Noto.*"), font.getName());
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"en,GB,GBP", "en,US,USD", "de,DE,EUR", "fr,FR,EUR", "es,ES,EUR", "nl,NL,EUR"})
  void a_usual_month_fits_on_one_page(String language, String country, String currency)
      throws IOException {
    assertEquals(1, pagesOf(print(language, country, currency)));
  }

  @Test
  void sixty_lines_keep_their_numbers_their_sums_and_their_page_numbers() throws IOException {
    byte[] pdf =
        new PdfDocuments(SampleDocuments.settings("en", "GB"))
            .invoice(SampleDocuments.longInvoice(60));
    String text = textOf(pdf);
    Matcher amounts = Pattern.compile("S 91\\.67").matcher(text);
    assertEquals(60, amounts.results().count());
    assertEquals(3, pagesOf(pdf));
    assertTrue(text.contains("Page 1 of3") || text.contains("Page 1 of 3"), text);
    assertTrue(text.contains("Page 3 of3") || text.contains("Page 3 of 3"), text);
    assertEquals(1, Pattern.compile("£292\\.50\n").matcher(text).results().count());
  }

  @ParameterizedTest
  @ValueSource(ints = {14, 15, 16, 17, 18, 19, 20, 21, 22})
  void sums_are_never_torn_apart(int lines) throws IOException {
    InvoiceDocument invoice = SampleDocuments.longInvoice(lines);
    byte[] pdf = new PdfDocuments(SampleDocuments.settings("en", "GB")).invoice(invoice);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper reader = new PDFTextStripper();
        reader.setStartPage(page);
        reader.setEndPage(page);
        String text = reader.getText(document);
        assertEquals(text.contains("\nNet "), text.contains("Amount due by"), text);
        assertTrue(text.contains("Invoice 2026-0041   Page " + page + " of"), text);
      }
    }
  }

  @Test
  void an_exempt_owner_reads_that_no_tax_is_charged_rather_than_a_rate_that_comes_to_nothing()
      throws IOException {
    byte[] pdf =
        new PdfDocuments(SampleDocuments.settings("en", "GB"))
            .invoice(SampleDocuments.exemptInvoice());
    assertTrue(textOf(pdf).contains("Standard rate (S): exempt, on 347.92"), textOf(pdf));
    assertFalse(textOf(pdf).contains("20% on"), textOf(pdf));
  }

  @Test
  void a_free_visit_a_discount_and_a_share_are_said() throws IOException {
    String text = textOf(print("en", "GB", "GBP"));
    assertTrue(text.contains("no charge"), text);
    assertTrue(text.contains("after 10% discount"), text);
    assertTrue(text.contains("your share: 50%"), text);
  }

  @Test
  void a_credit_note_says_in_words_what_it_takes_back() throws IOException {
    String text =
        textOf(
            new PdfDocuments(SampleDocuments.settings("en", "GB"))
                .creditNote(SampleDocuments.creditNote()));
    assertTrue(
        text.contains(
            "This credit note takes back the lines below, £110.00 in all, from invoice 2026-0032 of"
                + " 30 September 2026."),
        text);
  }

  @Test
  void qpdf_finds_nothing_wrong(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("invoice.pdf");
    Files.write(file, print("de", "DE", "EUR"));
    Process qpdf =
        new ProcessBuilder("qpdf", "--check", file.toString()).redirectErrorStream(true).start();
    String said = new String(qpdf.getInputStream().readAllBytes());
    assertTrue(qpdf.waitFor(60, TimeUnit.SECONDS));
    assertEquals(0, qpdf.exitValue(), said);
  }
}
