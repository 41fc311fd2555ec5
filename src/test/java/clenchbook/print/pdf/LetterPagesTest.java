package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reports.letters.Addressee;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.PrintLocale;
import clenchbook.reports.letters.StatementDocument;
import clenchbook.reports.letters.StatementEntry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How a letter breaks over pages, whatever its length. Common practice of typesetters, no source:
 * no head without two rows beneath, no sums without two rows above, nothing torn from the sums, no
 * page but the last nearly empty.
 */
class LetterPagesTest {
  private static final int LONGEST = 75;

  /** A page: its texts from the top, and where its last text above the foot ends, in points. */
  private record Sheet(String text, float height, float lowest) {
    long lines() {
      return text.lines().filter(line -> line.contains("Full set, keg")).count();
    }

    long entries() {
      return text.lines().filter(line -> line.contains("Payment received")).count();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"GB", "US"})
  void an_invoice_of_any_length_breaks_well(String country) {
    for (int lines = 1; lines <= LONGEST; lines += lines < 30 ? 1 : 5) {
      InvoiceDocument invoice = invoice(lines, country, 4);
      List<Sheet> sheets = sheets(documents(country, Optional.empty()).invoice(invoice));
      judge(sheets, lines, country);
    }
  }

  private static void judge(List<Sheet> sheets, int lines, String country) {
    String about = lines + " lines, " + country + ": ";
    assertEquals(lines, sheets.stream().mapToLong(Sheet::lines).sum(), about + "all are printed");
    for (int i = 0; i < sheets.size(); i++) {
      Sheet sheet = sheets.get(i);
      boolean last = i + 1 == sheets.size();
      String said = about + "page " + (i + 1) + "\n" + sheet.text();
      assertEquals(last, sheet.text().contains("\nNet "), said);
      assertEquals(last, sheet.text().contains("Amount due by"), said);
      assertEquals(last, sheet.text().contains("How to pay"), said);
      assertTrue(sheet.lines() >= Math.min(2, lines), said);
      assertTrue(last || sheet.lowest() > sheet.height() / 4, said);
      assertEquals(i > 0, sheet.text().startsWith("Mrs Imogen Ashgrove-Thewlis  ·  Invoice"), said);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"GB", "US"})
  void a_statement_of_any_length_breaks_well(String country) {
    for (int entries = 1; entries <= LONGEST; entries += entries < 30 ? 3 : 8) {
      StatementDocument statement = statement(entries, country);
      List<Sheet> sheets = sheets(documents(country, Optional.empty()).statement(statement));
      assertEquals(entries, sheets.stream().mapToLong(Sheet::entries).sum(), "entries");
      for (int i = 0; i < sheets.size(); i++) {
        boolean last = i + 1 == sheets.size();
        String text = sheets.get(i).text();
        assertEquals(last, text.contains("How old the balance is"), text);
        assertEquals(last, text.contains("Balance to pay"), text);
        assertTrue(sheets.get(i).entries() >= Math.min(2, entries), text);
        assertEquals(
            i > 0, text.startsWith("Mrs Imogen Ashgrove-Thewlis  ·  Statement of account"), text);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"GB", "DE", "FR", "US"})
  void an_address_of_any_length_is_printed_whole(String country) {
    InvoiceDocument invoice = invoice(3, country, 14);
    byte[] pdf = documents(country, Optional.empty()).invoice(invoice);
    String text = String.join("\n", sheets(pdf).stream().map(Sheet::text).toList());
    for (String line : invoice.head().to().address()) {
      assertTrue(text.contains(line), line + " in " + text);
    }
    assertTrue(text.indexOf("address line 14") < text.indexOf("Invoice 2026-0041\n"), text);
  }

  /** A copy of the templates of before, as a farrier may have edited it. */
  @ParameterizedTest
  @ValueSource(ints = {1, 7, 20, 60})
  void an_older_template_of_the_farriers_own_goes_on_working(int lines) {
    PdfDocuments own = documents("GB", Optional.of(Path.of("src/test/resources/own-templates")));
    byte[] pdf = own.invoice(invoice(lines, "GB", 4));
    List<Sheet> sheets = sheets(pdf);
    String text = String.join("\n", sheets.stream().map(Sheet::text).toList());
    assertEquals(lines, sheets.stream().mapToLong(Sheet::lines).sum(), text);
    for (String said : List.of("\nNet 347.92", "Amount due by", "How to pay", "Next due")) {
      assertEquals(2, (" " + text + " ").split(Pattern.quote(said)).length, said);
    }
    assertEquals(List.of(), ArchiveJudge.brokenRules(pdf));
    StatementDocument statement = statement(lines, "GB");
    String account =
        String.join("\n", sheets(own.statement(statement)).stream().map(Sheet::text).toList());
    assertTrue(account.contains("How old the balance is"), account);
  }

  private static PdfDocuments documents(String country, Optional<Path> own) {
    PrintSettings usual = SampleDocuments.settings("en", country);
    return new PdfDocuments(
        new PrintSettings(usual.asAt(), usual.locale(), usual.business(), usual.logo(), own));
  }

  private static InvoiceDocument invoice(int lines, String country, int addressLines) {
    InvoiceDocument usual = SampleDocuments.longInvoice(lines);
    return SampleDocuments.under(head(usual.head(), country, addressLines), usual);
  }

  private static DocumentHead head(DocumentHead usual, String country, int addressLines) {
    List<String> address = new ArrayList<>();
    for (int i = 1; i <= addressLines; i++) {
      address.add("address line " + i);
    }
    return SampleDocuments.addressed(
        usual,
        new Addressee(usual.to().name(), address, usual.to().taxNumber()),
        new PrintLocale("en", country));
  }

  private static StatementDocument statement(int entries, String country) {
    StatementDocument usual = SampleDocuments.statement("en", country, "GBP");
    List<StatementEntry> many = new ArrayList<>();
    for (int i = 0; i < entries; i++) {
      many.add(
          new StatementEntry(
              LocalDate.of(2026, 10, 1 + i % 28),
              StatementEntry.Kind.PAYMENT,
              "transfer " + i,
              new BigDecimal("-1.00"),
              new BigDecimal("100.00")));
    }
    return SampleDocuments.listing(many, usual);
  }

  private static List<Sheet> sheets(byte[] pdf) {
    List<Sheet> sheets = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        float height = document.getPage(page - 1).getMediaBox().getHeight();
        Lowest reader = new Lowest(height - 60);
        reader.setSortByPosition(true);
        reader.setStartPage(page);
        reader.setEndPage(page);
        sheets.add(new Sheet(reader.getText(document), height, reader.lowest));
      }
      return sheets;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Notes how far down a page its texts reach, the foot left out. */
  private static final class Lowest extends PDFTextStripper {
    private final float foot;
    private float lowest;

    Lowest(float foot) {
      this.foot = foot;
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
      if (letter.getY() < foot) {
        lowest = Math.max(lowest, letter.getY());
      }
      super.processTextPosition(letter);
    }
  }
}
