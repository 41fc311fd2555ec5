package clenchbook.printed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.print.pdf.PrintSettings;
import clenchbook.reports.letters.PrintLocale;
import clenchbook.reports.month.BilledMonth;
import clenchbook.reports.month.Letters;
import clenchbook.reports.month.NextVisits;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of owner under every tax setting, and the credit notes of each: what a page prints
 * adds up on that page, cent by cent. The works of the book bear every kind of tax, goods apart
 * from labour, and none. Addition is the source.
 */
class LettersAddUpTest {
  private static final BigDecimal ZERO = new BigDecimal("0.00");

  private static final List<String> CODES = List.of("S", "R", "Z", "E", "O", "A");

  private static final List<String> OWNERS =
      List.of("Plain", "Exempt", "Grounded", "Discount", "Sharer One", "Payer", "Opening", "Early");

  /** A way of charging tax. */
  record Taxing(String regime, String number, String included, String on) {
    boolean charges() {
      return !regime.equals("uk") || !number.isEmpty();
    }
  }

  /** The two regimes that differ in when a letter shows tax. */
  static List<Taxing> taxing() {
    return taxing("plain", "uk");
  }

  static List<Taxing> otherTaxing() {
    return taxing("us", "de", "au", "ca");
  }

  private static List<Taxing> taxing(String... regimes) {
    List<Taxing> all = new ArrayList<>();
    for (String regime : regimes) {
      for (String number : List.of("", "GB 123 4567 82")) {
        for (String included : List.of("no", "yes")) {
          for (String on : List.of("invoice", "line")) {
            all.add(new Taxing(regime, number, included, on));
          }
        }
      }
    }
    return all;
  }

  private static WrittenBook book(Taxing taxing, String septemberCharge) {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.BUSINESS_NAME, "Larkhill Forge")
            .setting(Setting.COUNTRY, "GB")
            .setting(Setting.CURRENCY, "GBP")
            .setting(Setting.LANGUAGE, "en")
            .setting(Setting.TAX_REGIME, taxing.regime())
            .setting(Setting.TAX_NUMBER, taxing.number())
            .setting(Setting.PRICES_INCLUDE_TAX, taxing.included())
            .setting(Setting.TAX_ON, taxing.on())
            .tax("Code: S, Name: Standard, Rate %: 20, Kind: standard")
            .tax("Code: R, Name: Reduced, Rate %: 5.5, Kind: reduced")
            .tax("Code: Z, Name: Zero, Rate %: 0, Kind: zero")
            .tax("Code: E, Name: Free, Rate %: 0, Kind: exempt, Reason: Schedule 9")
            .tax("Code: O, Name: Outside, Rate %: 0, Kind: outside scope")
            .tax("Code: A, Name: Reverse, Rate %: 0, Kind: reverse charge")
            .work("Work: Plain trim, Price: 33.33")
            .work("Work: Half goods, Tax: S, Price: 99.97, Taxed part: 0.3")
            .work("Work: All labour, Tax: S, Price: 47.11, Taxed part: 0")
            .material("Item: Pad, Kind: pad, Unit cost: 2, Price: 7.77")
            .owner("Owner: Exempt, Tax exempt: yes")
            .owner("Owner: Grounded, Tax exempt: yes, Exempt reason: Charity 12")
            .owner("Owner: Discount, Discount %: 12.5")
            .owner("Owner: Opening, Opening balance: 35.51")
            .horse("Horse: Shared, Owner: Sharer One, Share %: 33.3")
            .horse("Horse: Shared, Owner: Sharer Two, Share %: 66.7")
            .horse("Horse: Ridden, Owner: Rider, Bill to: Payer")
            .payment("Date: 2026-10-02, Owner: Early, Amount: 25, Kind: deposit")
            .payment("Date: 2026-10-20, Owner: Early, Amount: 13.37");
    CODES.forEach(code -> book.work("Work: Work " + code + ", Tax: " + code + ", Price: 110.03"));
    for (String owner : OWNERS) {
      visits(book, owner, septemberCharge);
    }
    return book;
  }

  private static void visits(WrittenBook book, String owner, String septemberCharge) {
    String horse =
        switch (owner) {
          case "Sharer One" -> "Horse: Shared";
          case "Payer" -> "Horse: Ridden";
          default -> "Horse: " + owner + "'s, Owner: " + owner;
        };
    int day = 1;
    book.visit("Date: 2026-09-05, Work: Work S, Charge: " + septemberCharge + ", " + horse);
    book.visit("Date: 2026-09-06, Work: Half goods, Charge: list, " + horse);
    for (String work : List.of("Plain trim", "Half goods", "All labour")) {
      book.visit(on(day++) + "Charge: list, Work: " + work + ", " + horse);
    }
    for (String code : CODES) {
      String work = "Work: Work " + code + ", ";
      book.visit(on(day) + work + "Charge: list, Extras: Pad: 2, " + horse);
      book.visit(on(day++) + work + "Charge: 41.19, " + horse);
    }
    book.visit(on(day++) + "Work: Work S, Charge: 0, " + horse);
    book.visit(on(day++) + "Work: Work S, Charge: list, Paid: 20, " + horse);
  }

  private static String on(int day) {
    return String.format(Locale.ROOT, "Date: 2026-10-%02d, ", day);
  }

  @Tag("demand")
  @ParameterizedTest
  @MethodSource("otherTaxing")
  void so_it_does_under_the_other_regimes(Taxing taxing) {
    what_is_printed_adds_up(taxing);
  }

  @ParameterizedTest
  @MethodSource("taxing")
  void what_is_printed_adds_up(Taxing taxing) {
    BilledMonth september =
        BilledMonth.of(book(taxing, "88.05").jobs(), List.of(), options("2026-09"));
    List<BilledDocument> issued =
        september.billing().documents().stream().map(d -> d.in(DocumentState.ISSUED)).toList();
    Jobs jobs = book(taxing, "79.83").jobs();
    BilledMonth october = BilledMonth.of(jobs, issued, options("2026-10"));
    List<BilledDocument> documents = october.billing().month();
    List<BilledDocument> credits = documents.stream().filter(d -> !d.invoice()).toList();
    assertEquals(OWNERS.size() + 1, credits.size(), "a credit note for each owner who was billed");
    documents.parallelStream().forEach(document -> judge(taxing, october, document));
  }

  private static BillingOptions options(String month) {
    return new BillingOptions(YearMonth.parse(month), false, Optional.empty(), false);
  }

  private static void judge(Taxing taxing, BilledMonth month, BilledDocument document) {
    PrintedLetter letter = PrintedLetter.of(pdf(month, document));
    String about = taxing + " " + document.owner() + " " + document.number() + "\n" + letter.text();
    assertEquals(document.lines().size(), letter.lines().size(), about);
    if (document.invoice()) {
      addsUp(document, letter, "Total ", document.gross(), about);
      assertEquals(letter.sum("Total ").add(letter.settled()), due(letter), about);
    } else {
      addsUp(document, letter, "Total credit ", document.gross().negate(), about);
      isCredit(month, document, letter, about);
    }
    saysWhatItsAmountsAre(taxing, document, letter, about);
    if (document.owner().startsWith("Sharer")) {
      assertTrue(letter.text().contains("your share: "), about);
    }
  }

  private static void addsUp(
      BilledDocument document,
      PrintedLetter letter,
      String total,
      BigDecimal charged,
      String about) {
    assertEquals(charged, letter.sum(total), about);
    boolean net = letter.has("Net ");
    boolean included = letter.heading().contains("ncl. tax");
    BigDecimal below = net && !included ? letter.sum("Net ") : letter.sum(total);
    assertEquals(below, letter.ofLines().add(ZERO), about);
    if (net) {
      assertEquals(letter.sum(total), letter.sum("Net ").add(letter.taxes()), about);
    } else {
      assertEquals(0, document.tax().signum(), about);
    }
  }

  private static BigDecimal due(PrintedLetter letter) {
    String label = letter.last().label();
    return label.startsWith("In your favour")
        ? letter.last().amount().negate()
        : letter.last().amount();
  }

  private static void isCredit(
      BilledMonth month, BilledDocument note, PrintedLetter letter, String about) {
    assertTrue(letter.heading().contains("Credit"), about);
    assertTrue(letter.lines().stream().allMatch(line -> line.signum() > 0), about);
    assertTrue(letter.sums().stream().allMatch(sum -> sum.amount().signum() >= 0), about);
    assertTrue(letter.last().label().startsWith("Credited to your account"), about);
    assertTrue(letter.text().contains("from invoice " + note.corrects() + " of"), about);
    List<BilledDocument> replacing =
        month.billing().month().stream()
            .filter(document -> document.invoice() && document.counts())
            .filter(document -> Names.same(document.owner(), note.owner()))
            .filter(document -> !document.outsideScope())
            .toList();
    assertEquals(1, replacing.size(), about);
    String number = replacing.get(0).number();
    assertTrue(letter.text().contains("What was done stands anew on invoice " + number), about);
    String invoice = PrintedLetter.of(pdf(month, replacing.get(0))).text().replace('\n', ' ');
    assertTrue(
        invoice.contains("lines of invoice " + note.corrects() + ", which credit note "), invoice);
    assertTrue(invoice.contains(note.number()), invoice);
  }

  private static void saysWhatItsAmountsAre(
      Taxing taxing, BilledDocument document, PrintedLetter letter, String about) {
    boolean coded = document.lines().stream().anyMatch(line -> !line.tax().code().isEmpty());
    boolean exempt = taxing.charges() && coded && isExempt(document.owner());
    assertEquals(exempt, letter.heading().toLowerCase(Locale.ROOT).contains("exempt"));
    assertEquals(
        exempt, letter.text().contains("Exempt from tax. The amounts are without tax."), about);
    if (exempt) {
      assertEquals(0, letter.taxes().signum(), about);
      boolean bearsGround =
          document.taxes().stream().anyMatch(t -> t.reason().equals("Charity 12"));
      assertEquals(bearsGround, letter.text().contains("Exempt from tax: Charity 12"), about);
      assertFalse(letter.text().contains("20%"), about);
    }
    if (!taxing.charges()) {
      assertFalse(letter.has("Net "), about);
      assertFalse(letter.heading().contains("Tax"), about);
    }
  }

  private static boolean isExempt(String owner) {
    return owner.equals("Exempt") || owner.equals("Grounded");
  }

  private static byte[] pdf(BilledMonth month, BilledDocument document) {
    Letters letters = new Letters(month.jobs().index(), new NextVisits(month), month.references());
    PdfDocuments print =
        new PdfDocuments(
            new PrintSettings(
                LocalDate.of(2026, 10, 31),
                new PrintLocale("en", "GB"),
                "Larkhill Forge",
                Optional.empty(),
                Optional.empty()));
    return document.invoice()
        ? print.invoice(
            letters.invoice(
                document,
                month.accounts().stream()
                    .filter(account -> Names.same(account.owner(), document.owner()))
                    .findFirst()
                    .orElseThrow(),
                month.billing()))
        : print.creditNote(
            letters.creditNote(document, LocalDate.of(2026, 9, 30), month.billing()));
  }
}
