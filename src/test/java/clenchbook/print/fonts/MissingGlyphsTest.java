package clenchbook.print.fonts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.print.pdf.InvoicePdfTest;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.print.pdf.SampleDocuments;
import clenchbook.reports.letters.Addressee;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.InvoiceDocument;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MissingGlyphsTest {
  @Test
  void latin_with_any_accent_greek_and_cyrillic_can_be_printed() {
    assertEquals(
        List.of(),
        MissingGlyphs.in("Łódź Őrség Ğüş ẞ Ǫ́ Việt Ṩ Ήρα ᾧ Жеребец Ђорђе Їжак € № – “x”"));
  }

  @Test
  void so_can_hebrew_arabic_devanagari_thai_chinese_japanese_and_korean() {
    assertEquals(
        List.of(),
        MissingGlyphs.in("נגה בן־דוד شهرزاد ١٢، लक्ष्मी । สมหญิง ฿ 王小明 龍门 さくら ー 髙﨑 김철수 𠮟 （株）、。"));
  }

  @Test
  void a_character_that_no_font_has_is_named_once() {
    assertEquals(List.of("ጣ", "🐎"), MissingGlyphs.in("ጣ and ጣ ride 🐎"));
  }

  @Test
  void what_cannot_be_printed_leaves_a_mark_on_the_page() throws IOException {
    InvoiceDocument usual = SampleDocuments.invoice("en", "GB", "GBP");
    DocumentHead head =
        SampleDocuments.addressed(
            usual.head(),
            new Addressee("Ms ጣ Ash", List.of(), Optional.empty()),
            usual.head().locale());
    InvoiceDocument invoice = SampleDocuments.under(head, usual);
    byte[] pdf = new PdfDocuments(SampleDocuments.settings("en", "GB")).invoice(invoice);
    assertTrue(InvoicePdfTest.textOf(pdf).contains("Ms \uFFFD Ash"));
  }

  @Test
  void an_accent_set_apart_is_joined_to_its_letter() {
    assertEquals("é\nx y", MissingGlyphs.replacedIn("e\u0301\nx\ty"));
  }
}
