package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.einvoice.EInvoiceProfile;
import clenchbook.einvoice.OfficialRules;
import clenchbook.print.pdf.ArchiveJudge;
import clenchbook.register.Register;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * Every invoice and credit note of a book with all tax categories, shared horses, discounts,
 * extras, goods and labour, money at the truck and corrections, before the official rules that
 * {@link OfficialRules} names. The enclosed file is read back by Apache PDFBox.
 */
class EInvoiceMonthTest {
  private static final String VISITS =
      "Date,Owner,Horse,Work,Charge,Paid,Extras\n"
          + "2026-09-07,School,Bess,Trim,12.34,,\n2026-09-08,School,Jet,Full set,,50,pads 3; km 7\n"
          + "2026-09-09,School,Dot,Zero,0.09,,\n2026-09-10,Police,Max,Exempt,33.33,,\n"
          + "2026-09-11,Police,Max,Reverse,70,10,\n2026-09-12,Zoo,Okapi,Outside,45,,\n"
          + "2026-09-13,Zoo,Okapi,Trim,40,,\n2026-09-14,Charity,Old Tom,Full set,,,\n"
          + "2026-09-15,Stud,Ace,Mixed,100,,\n2026-09-16,,Shared,Full set,0.03,,\n"
          + "2026-09-17,School,Bess,Uncoded,15,,\n2026-09-18,Stud,Ace,Trim,0,,\n"
          + "2026-09-19,School,Bess,Reduced,19.99,,\n";

  @TempDir java.nio.file.Path folder;

  private SmallFolderBook book(boolean included, String rounding) throws IOException {
    return SmallFolderBook.in(folder)
        .sheet(
            "Settings",
            "Setting,Value\n"
                + "Business name,Anvil & Rasp <Forge>\n"
                + "Address,Forge Lane 1\n"
                + "Postcode,10115\n"
                + "City,Berlin\n"
                + "Contact,A. Rasp\n"
                + "Phone,+49 30 5550100\n"
                + "Email,office@rasp.example\n"
                + "Country,DE\n"
                + "Currency,EUR\n"
                + "Language,de\n"
                + "Tax number,DE123456789\n"
                + "Registration,HRA 4711\n"
                + "IBAN,DE89 3704 0044 0532 0130 00\n"
                + "Payment text,Danke\n"
                + "E-invoices,factur-x\n"
                + "Payment reference,RF\n"
                + "Tax on,"
                + rounding
                + "\nPrices include tax,"
                + (included ? "yes" : "no")
                + "\n")
        .sheet(
            "Work",
            "Work,Price,Tax,Taxed part\nTrim,40,S,\nFull set,119.95,S,\nZero,10,Z,\nExempt,10,E,\n"
                + "Reverse,10,RC,\nOutside,10,O,\nMixed,100,S,30\nUncoded,15,,\nReduced,10,R,\n")
        .sheet(
            "Tax",
            "Code,Name,Rate %,Kind,Reason\nS,USt,20,standard,\nR,USt,7,reduced,\nZ,Null,0,zero,\n"
                + "E,Frei,0,exempt,§ 4 UStG\nRC,USt,0,reverse charge,\nO,Aus,0,outside scope,\n")
        .sheet("Materials", "Item,Kind,Unit cost,Price\npads,pad,2,7.35\nkm,sundry,0,0.45\n")
        .sheet(
            "Owners",
            "Owner,Address,Postcode,City,Email,Tax exempt,Exempt reason,Tax number,Discount %,"
                + "E-invoice,Buyer reference\n"
                + "School,Elm 1,20095,Hamburg,s@school.example,,,DE987654321,7.5,,\n"
                + "Police,Amt 2,01067,Dresden,p@police.example,,,DE111111125,,xrechnung,"
                + "04011000-12345-03\n"
                + "Zoo,Zoo 3,04105,Leipzig,z@zoo.example,,,,,xrechnung,Z-77\n"
                + "Charity,Hof 4,99084,Erfurt,c@charity.example,yes,VATEX-EU-132-1I,,,factur-x,\n"
                + "Stud,Gut 5,29221,Celle,g@stud.example,,,DE222222222,,,\n"
                + "Private,Weg 6,,,,,,,,,\n")
        .sheet("Horses", "Horse,Owner,Share %\nShared,School,50\nShared,Stud,50\n")
        .sheet("Visits", VISITS);
  }

  @ParameterizedTest
  @CsvSource({"true,invoice", "true,line", "false,invoice", "false,line"})
  void every_document_of_the_book_is_accepted(boolean included, String rounding)
      throws IOException {
    SmallFolderBook book = book(included, rounding);
    assertEquals(0, book.monthEnd("2026-09"));
    assertEquals(6, accepted(book.files(), "2026-09/"));
    issue(book);
    book.sheet(
        "Visits", VISITS.replace("12.34", "20.00").replace("33.33", "40").replace("45,,", "50,,"));
    assertEquals(0, book.monthEnd("2026-10"));
    int later = accepted(book.files(), "2026-10/");
    assertTrue(later >= 3, () -> "credit notes and what is billed anew: " + later);
    assertTrue(
        xmls(book.files(), "2026-10/").values().stream()
            .anyMatch(xml -> xml.contains("<ram:TypeCode>381</ram:TypeCode>")));
  }

  /** Payments that name them: the owners have their documents. */
  private static void issue(SmallFolderBook book) throws IOException {
    StringBuilder rows = new StringBuilder();
    for (var document : Register.read(book.register())) {
      rows.append("2026-10-02,")
          .append(document.owner())
          .append(",0.01,")
          .append(document.number())
          .append(",payment\n");
    }
    book.payments(rows.toString());
  }

  private static int accepted(SortedMap<String, String> files, String month) throws IOException {
    Map<String, String> xmls = xmls(files, month);
    List<String> broken = new ArrayList<>();
    xmls.forEach(
        (name, xml) -> {
          boolean xrechnung = name.endsWith(".xml");
          EInvoiceProfile profile =
              xrechnung ? EInvoiceProfile.XRECHNUNG : EInvoiceProfile.FACTUR_X;
          OfficialRules.broken(profile, xml).forEach(rule -> broken.add(name + " " + rule));
        });
    assertEquals(List.of(), broken);
    return xmls.size();
  }

  private static Map<String, String> xmls(SortedMap<String, String> files, String month)
      throws IOException {
    Map<String, String> xmls = new java.util.TreeMap<>();
    for (Map.Entry<String, String> file : files.entrySet()) {
      byte[] bytes = file.getValue().getBytes(StandardCharsets.ISO_8859_1);
      if (file.getKey().startsWith(month + "e-invoices/")) {
        xmls.put(file.getKey(), new String(bytes, StandardCharsets.UTF_8));
      } else if (file.getKey().startsWith(month + "invoices/")) {
        enclosed(bytes).ifPresent(xml -> xmls.put(file.getKey(), xml));
      }
    }
    return xmls;
  }

  private static java.util.Optional<String> enclosed(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
      if (names == null || names.getEmbeddedFiles() == null) {
        return java.util.Optional.empty();
      }
      PDComplexFileSpecification file =
          names.getEmbeddedFiles().getNames().values().iterator().next();
      assertEquals("factur-x.xml", file.getFileUnicode());
      return java.util.Optional.of(
          new String(file.getEmbeddedFile().toByteArray(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void the_amounts_are_the_registers_and_money_at_the_truck_is_prepaid() throws IOException {
    SmallFolderBook book = book(true, "invoice");
    book.monthEnd("2026-09");
    for (var document : Register.read(book.register())) {
      String name = document.number() + " " + document.owner();
      String xml =
          xmls(book.files(), "2026-09/").entrySet().stream()
              .filter(file -> file.getKey().contains(name))
              .map(Map.Entry::getValue)
              .findFirst()
              .orElseThrow();
      assertTrue(xml.contains("<ram:GrandTotalAmount>" + document.gross() + "<"), name);
      assertTrue(xml.contains("<ram:LineTotalAmount>" + document.net() + "<"), name);
      String paid =
          document.owner().equals("School")
              ? "50.00"
              : document.owner().equals("Police") ? "10.00" : "0.00";
      assertTrue(xml.contains("<ram:TotalPrepaidAmount>" + paid + "<"), name);
    }
  }

  @Test
  void lines_outside_the_scope_stand_on_an_invoice_of_their_own() throws IOException {
    SmallFolderBook book = book(false, "invoice");
    book.monthEnd("2026-09");
    String tax = book.files().get("2026-09/figures/tax.csv");
    List<String> categories =
        tax.lines().filter(row -> row.contains(",O,")).map(row -> row.split(",")[0]).toList();
    assertEquals(1, categories.size(), tax);
    assertEquals(
        1, tax.lines().filter(row -> row.startsWith(categories.get(0) + ",")).count(), tax);
    assertTrue(tax.contains(",E,VATEX-EU-132-1I"), tax);
    assertTrue(tax.contains(",AE,reverse charge"), tax);
  }

  /** ISO 19005-3 (PDF/A-3), level B, and ISO 14289-1 (PDF/UA-1), by veraPDF. */
  @Test
  void an_invoice_that_encloses_its_text_keeps_to_the_archive_standard() throws IOException {
    SmallFolderBook book = book(false, "invoice");
    book.monthEnd("2026-09");
    int judged = 0;
    for (Map.Entry<String, String> file : book.files().entrySet()) {
      byte[] bytes = file.getValue().getBytes(StandardCharsets.ISO_8859_1);
      if (file.getKey().startsWith("2026-09/invoices/") && enclosed(bytes).isPresent()) {
        assertEquals(
            List.of(),
            ArchiveJudge.brokenRules(bytes, PDFAFlavour.PDFA_3_B, PDFAFlavour.PDFUA_1),
            file.getKey());
        judged++;
      }
    }
    assertTrue(judged > 0, "no invoice encloses its text");
  }

  @Test
  void the_same_book_gives_the_same_bytes() throws IOException {
    SmallFolderBook book = book(true, "line");
    book.monthEnd("2026-09");
    SortedMap<String, String> first = book.files();
    book.monthEnd("2026-09");
    assertEquals(first.keySet(), book.files().keySet());
    first.forEach(
        (name, bytes) -> {
          try {
            assertEquals(bytes.hashCode(), book.files().get(name).hashCode(), name);
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
  }

  @Test
  void what_is_missing_leaves_the_plain_invoice() throws IOException {
    SmallFolderBook book = book(false, "invoice");
    book.sheet(
        "Owners", "Owner,Address,Email,E-invoice\nPolice,Amt 2,p@police.example,xrechnung\n");
    book.monthEnd("2026-09");
    SortedMap<String, String> files = book.files();
    assertTrue(files.keySet().stream().anyMatch(name -> name.endsWith("Police.pdf")));
    assertFalse(files.keySet().stream().anyMatch(name -> name.endsWith(".xml")));
    String said = files.get("2026-09/problems.csv");
    assertTrue(said.lines().anyMatch(line -> line.matches(".*Buyer reference.*fehlt.*")), said);
  }
}
