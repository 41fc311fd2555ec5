package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.print.archive.ArchiveForm;
import clenchbook.print.invoice.InvoicePage;
import clenchbook.print.invoice.LogoImage;
import clenchbook.print.invoice.PrintedPage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.Deflater;
import net.sf.jasperreports.engine.DefaultJasperReportsContext;
import net.sf.jasperreports.engine.JasperFillManager;
import net.sf.jasperreports.engine.JasperPrint;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * Every kind of page, judged by veraPDF after PDF/A-2b (ISO 19005-2:2011) and PDF/UA-1 (ISO
 * 14289-1:2014), with no rule broken.
 */
class ArchiveTest {
  private static final List<String> NONE = List.of();

  private static PdfDocuments documents(String language, String country) {
    return new PdfDocuments(SampleDocuments.settings(language, country));
  }

  @ParameterizedTest
  @CsvSource({"en,GB,GBP", "en,US,USD", "de,DE,EUR", "fr,FR,EUR", "es,ES,EUR", "nl,NL,EUR"})
  void an_invoice_and_a_statement_last_and_can_be_read_aloud(
      String language, String country, String currency) {
    PdfDocuments documents = documents(language, country);
    byte[] invoice = documents.invoice(SampleDocuments.invoice(language, country, currency));
    byte[] statement = documents.statement(SampleDocuments.statement(language, country, currency));
    assertEquals(NONE, ArchiveJudge.brokenRules(invoice));
    assertEquals(NONE, ArchiveJudge.brokenRules(statement));
  }

  @Test
  void so_do_a_credit_note_an_invoice_of_three_pages_and_a_report_with_every_kind_of_block() {
    PdfDocuments documents = documents("en", "GB");
    assertEquals(
        NONE, ArchiveJudge.brokenRules(documents.creditNote(SampleDocuments.creditNote())));
    assertEquals(
        NONE, ArchiveJudge.brokenRules(documents.invoice(SampleDocuments.longInvoice(60))));
    assertEquals(NONE, ArchiveJudge.brokenRules(documents.report(SampleReports.margins())));
  }

  @Test
  void a_farriers_own_template_that_says_nothing_of_its_parts_gives_a_valid_document_too(
      @TempDir Path folder) throws IOException {
    for (String name : List.of("invoice.jrxml", "statement.jrxml")) {
      String text = Files.readString(Path.of("report-templates", name));
      String bare = text.replaceAll("\\s*<property [^>]*/>", "");
      assertTrue(bare.length() < text.length(), "there were tags to take out");
      Files.writeString(folder.resolve(name), bare);
    }
    PrintSettings usual = SampleDocuments.settings("de", "DE");
    PdfDocuments own =
        new PdfDocuments(
            new PrintSettings(
                usual.asAt(), usual.locale(), usual.business(), usual.logo(), Optional.of(folder)));
    byte[] invoice = own.invoice(SampleDocuments.invoice("de", "DE", "EUR"));
    byte[] statement = own.statement(SampleDocuments.statement("de", "DE", "EUR"));
    assertEquals(NONE, ArchiveJudge.brokenRules(invoice));
    assertEquals(NONE, ArchiveJudge.brokenRules(statement));
    assertTrue(TagsRead.of(invoice).contains("P Rechnung 2026-0041\n"), "a plain paragraph");
  }

  @Test
  void an_embedded_file_makes_it_part_three_and_is_found_in_it() throws IOException {
    byte[] xml = "<?xml version=\"1.0\"?><order/>".getBytes(StandardCharsets.UTF_8);
    ArchiveForm form =
        new ArchiveForm(
            3,
            Optional.of(
                new ArchiveForm.Attachment(
                    "order.xml", "text/xml", "Alternative", "the same as data", xml)),
            "",
            "");
    byte[] pdf = export(form);
    assertEquals(NONE, ArchiveJudge.brokenRules(pdf, PDFAFlavour.PDFA_3_B, PDFAFlavour.PDFUA_1));
    assertArrayEquals(pdf, export(form), "the same file on every run");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var files = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
      var file = files.values().iterator().next();
      assertEquals("order.xml", file.getFilename());
      assertArrayEquals(xml, file.getEmbeddedFile().toByteArray());
    }
    assertThrows(
        IllegalArgumentException.class,
        () -> new ArchiveForm(2, form.attachment(), "", ""),
        "part 2 lets nothing be embedded but PDF/A");
  }

  private static byte[] export(ArchiveForm form) {
    return documents("en", "GB").invoice(SampleDocuments.invoice("en", "GB", "GBP"), form);
  }

  @Test
  void the_judge_is_not_asleep() throws Exception {
    DefaultJasperReportsContext context = DefaultJasperReportsContext.getInstance();
    var invoice = SampleDocuments.invoice("en", "GB", "GBP");
    PrintedPage page = new InvoicePage(invoice.head(), Optional.empty()).of(invoice);
    JasperPrint filled =
        JasperFillManager.getInstance(context)
            .fill(
                new Templates(context, Optional.empty()).of("invoice", PaperSize.A4),
                page.parts(),
                new PrintRows(page.rows()));
    byte[] drawn = new DirectInvoice(filled, new byte[0], Deflater.BEST_SPEED).pdf();
    List<String> broken = ArchiveJudge.brokenRules(drawn);
    for (String rule : List.of("2b 6.2.4.3-2", "2b 6.6.2.1-1", "ua1 6.2-1", "ua1 7.1-3")) {
      assertTrue(broken.stream().anyMatch(found -> found.startsWith(rule)), rule + " in " + broken);
    }
  }

  @Test
  void an_invoice_is_read_in_its_order_with_heads_cells_answers_and_a_link() throws IOException {
    byte[] pdf = documents("en", "GB").invoice(SampleDocuments.invoice("en", "GB", "GBP"));
    String read = TagsRead.of(pdf);
    assertInOrder(
        read,
        "P Larkhill Forge\n",
        "P Mrs Imogen Ashgrove-Thewlis\n",
        "L\n LI\n  Lbl Invoice number\n  LBody 2026-0041\n LI\n  Lbl Date\n",
        "H1 Invoice 2026-0041\n",
        "Table\n TR\n  TH Date\n  TH Horse\n  TH Work\n  TH Tax\n  TH Amount (£)\n",
        " TR\n  TD 2 Oct 2026\n  TD Bramble\n  TD Full set, keg 4 shoes, size 1, hot\n"
            + "  TD S\n  TD 91.67\n",
        " TR\n  TD\n  TD\n  TD Studs x 8\n  TD S\n  TD 26.67\n",
        "£292.50\n",
        "H2 How to pay\n",
        "P\n Link Online: https://pay.larkhill.example -> https://pay.larkhill.example\n",
        "H2 Next due\n");
    assertEquals(-1, read.indexOf("Page 1"), "what stands on every page is not read");
  }

  @Test
  void a_table_that_goes_on_overleaf_is_one_table_and_its_head_is_read_once() throws IOException {
    byte[] pdf = documents("en", "GB").invoice(SampleDocuments.longInvoice(60));
    String read = TagsRead.of(pdf);
    assertEquals(1, read.split("\nTable\n", -1).length - 1, read);
    assertEquals(1, read.split("TH Horse\n", -1).length - 1, read);
  }

  @Test
  void a_report_has_levels_an_outline_and_its_pictures_in_words() throws IOException {
    byte[] pdf = documents("en", "GB").report(SampleReports.margins());
    String read = TagsRead.of(pdf);
    assertInOrder(
        read,
        "H1 ",
        "H2 Where the month's money came from and went\n",
        "Figure (Handmade sets brought in most, trims cost least.)\n",
        "H2 By Work\n",
        "Table\n TR\n  TH ",
        "H3 Jobs that earn less than the wage\n",
        "Figure (Week 41 was the longest, 44 hours.)\n");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var first = document.getDocumentCatalog().getDocumentOutline().getFirstChild();
      assertEquals("Where the month's money came from and went", first.getTitle());
      assertEquals(
          "Jobs that earn less than the wage", first.getNextSibling().getFirstChild().getTitle());
      assertEquals(
          document.getPage(0).getCOSObject(), first.findDestinationPage(document).getCOSObject());
    }
  }

  @Test
  void a_picture_is_named_by_its_words() throws IOException {
    LogoImage logo = LogoImage.read(Path.of("sample-workbooks"), "thornfield-logo.png");
    PrintSettings usual = SampleDocuments.settings("de", "DE");
    byte[] pdf =
        new PdfDocuments(
                new PrintSettings(
                    usual.asAt(),
                    usual.locale(),
                    usual.business(),
                    Optional.of(logo),
                    Optional.empty()))
            .invoice(SampleDocuments.invoice("de", "DE", "EUR"));
    assertInOrder(
        TagsRead.of(pdf), "Figure (Larkhill Forge)\n", "Figure (Mit der Banking-App scannen)\n");
    assertEquals(NONE, ArchiveJudge.brokenRules(pdf));
  }

  static void assertInOrder(String text, String... parts) {
    int at = 0;
    for (String part : parts) {
      int found = text.indexOf(part, at);
      assertTrue(found >= 0, "«" + part + "» after " + at + " in\n" + text);
      at = found + part.length();
    }
  }
}
