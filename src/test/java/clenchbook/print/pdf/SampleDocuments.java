package clenchbook.print.pdf;

import clenchbook.book.TaxCategory;
import clenchbook.reports.letters.Addressee;
import clenchbook.reports.letters.Ageing;
import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.HowToPay;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.Letterhead;
import clenchbook.reports.letters.NextVisit;
import clenchbook.reports.letters.PrintLocale;
import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedTax;
import clenchbook.reports.letters.PrintedTotals;
import clenchbook.reports.letters.Settlement;
import clenchbook.reports.letters.StatementDocument;
import clenchbook.reports.letters.StatementEntry;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Invented documents that the tests of this package print. */
public final class SampleDocuments {
  static final LocalDate MONTH_END = LocalDate.of(2026, 10, 31);

  private SampleDocuments() {}

  public static PrintSettings settings(String language, String country) {
    return new PrintSettings(
        MONTH_END,
        new PrintLocale(language, country),
        "Larkhill Forge",
        Optional.empty(),
        Optional.empty());
  }

  static Letterhead letterhead() {
    return new Letterhead(
        "Larkhill Forge",
        List.of("The Old Smithy", "Larkhill Lane", "Nether Wendon", "ZZ4 7QP"),
        Optional.of("01632 960417"),
        Optional.of("forge@larkhill.example"),
        Optional.of("Registered farrier 00417"),
        Optional.of("GB 000 4170 26"));
  }

  static DocumentHead head(String number, PrintLocale locale, String currency) {
    return new DocumentHead(
        letterhead(),
        new Addressee(
            "Mrs Imogen Ashgrove-Thewlis",
            List.of("Fallow Barn", "14 Mill Hatch", "Upper Wendon", "ZZ4 9RT"),
            Optional.empty()),
        number,
        MONTH_END,
        locale,
        currency);
  }

  static PrintedLine line(int day, String horse, String work, String detail, String amount) {
    return new PrintedLine(
        LocalDate.of(2026, 10, day),
        horse,
        work,
        detail.isEmpty() ? List.of() : List.of(detail),
        Optional.empty(),
        Optional.empty(),
        new BigDecimal(amount),
        "S",
        false);
  }

  static List<PrintedLine> usualLines() {
    List<PrintedLine> lines = new ArrayList<>();
    lines.add(line(2, "Bramble", "Full set, keg", "4 shoes, size 1, hot", "91.67"));
    lines.add(line(2, "Bramble", "Studs x 8", "", "26.67"));
    lines.add(line(2, "Señor Żubr", "Trim", "", "33.33"));
    lines.add(
        new PrintedLine(
            LocalDate.of(2026, 10, 2),
            "Θαλής",
            "Fronts, trim behind",
            List.of("2 shoes, size 0, cold"),
            Optional.of(new BigDecimal("10")),
            Optional.of(new BigDecimal("50")),
            new BigDecimal("33.75"),
            "S",
            false));
    lines.add(
        new PrintedLine(
            LocalDate.of(2026, 10, 9),
            "Bramble",
            "Lost shoe",
            List.of("near fore put back"),
            Optional.empty(),
            Optional.empty(),
            new BigDecimal("0.00"),
            "S",
            true));
    lines.add(line(30, "Снежок", "Handmade set", "fronts 0, hinds 00, hot", "133.33"));
    lines.add(line(30, "Снежок", "Leather pads, pair", "", "29.17"));
    return lines;
  }

  public static InvoiceDocument invoice(String language, String country, String currency) {
    PrintLocale locale = new PrintLocale(language, country);
    return new InvoiceDocument(
        head("2026-0041", locale, currency),
        YearMonth.of(2026, 10),
        LocalDate.of(2026, 11, 14),
        usualLines(),
        new PrintedTotals(
            false,
            new BigDecimal("347.92"),
            List.of(
                new PrintedTax(
                    "S",
                    "Standard rate",
                    new BigDecimal("20"),
                    new BigDecimal("347.92"),
                    new BigDecimal("69.58"))),
            new BigDecimal("69.58"),
            new BigDecimal("417.50")),
        List.of(
            new Settlement(Settlement.Kind.PAID_AT_TRUCK, new BigDecimal("-110.00")),
            new Settlement(Settlement.Kind.DEPOSIT, new BigDecimal("-50.00")),
            new Settlement(Settlement.Kind.BROUGHT_FORWARD, new BigDecimal("35.00"))),
        new BigDecimal("292.50"),
        pay(),
        List.of(
            new NextVisit("Bramble", LocalDate.of(2026, 11, 13)),
            new NextVisit("Señor Żubr", LocalDate.of(2026, 11, 27)),
            new NextVisit("Снежок", LocalDate.of(2026, 12, 11))),
        List.of());
  }

  static HowToPay pay() {
    return new HowToPay(
        Optional.of("By bank transfer, or by card at the truck."),
        Optional.of("DE75512108001245126199"),
        Optional.of("ZZBKDEFFXXX"),
        Optional.of("https://pay.larkhill.example"));
  }

  static InvoiceDocument longInvoice(int lines) {
    InvoiceDocument usual = invoice("en", "GB", "GBP");
    List<PrintedLine> many = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      many.add(
          line(1 + i / 3, "Horse " + (1 + i % 7), "Full set, keg", "4 shoes, size 1", "91.67"));
    }
    return new InvoiceDocument(
        usual.head(),
        usual.month(),
        usual.due(),
        many,
        usual.totals(),
        usual.settlements(),
        usual.amountDue(),
        usual.pay(),
        usual.nextVisits(),
        usual.remarks());
  }

  static InvoiceDocument exemptInvoice() {
    InvoiceDocument usual = invoice("en", "GB", "GBP");
    PrintedTax tax = usual.totals().taxes().get(0);
    BigDecimal none = new BigDecimal("0.00");
    return new InvoiceDocument(
        usual.head(),
        usual.month(),
        usual.due(),
        usual.lines(),
        new PrintedTotals(
            false,
            true,
            tax.net(),
            List.of(
                new PrintedTax(
                    tax.code(),
                    tax.name(),
                    BigDecimal.ZERO,
                    tax.net(),
                    none,
                    TaxCategory.E,
                    "Charity no. 12, section 4")),
            none,
            tax.net()),
        usual.settlements(),
        usual.amountDue(),
        usual.pay(),
        usual.nextVisits(),
        usual.remarks());
  }

  static CreditNoteDocument creditNote() {
    InvoiceDocument usual = invoice("en", "GB", "GBP");
    return new CreditNoteDocument(
        head("2026-0047", new PrintLocale("en", "GB"), "GBP"),
        "2026-0032",
        LocalDate.of(2026, 9, 30),
        List.of(line(4, "Bramble", "Full set, keg", "4 shoes, size 1, hot", "-91.67")),
        new PrintedTotals(
            false,
            new BigDecimal("-91.67"),
            List.of(
                new PrintedTax(
                    "S",
                    "Standard rate",
                    new BigDecimal("20"),
                    new BigDecimal("-91.67"),
                    new BigDecimal("-18.33"))),
            new BigDecimal("-18.33"),
            new BigDecimal("-110.00")),
        List.of("2026-0046"),
        List.of());
  }

  static StatementDocument statement(String language, String country, String currency) {
    return new StatementDocument(
        head("", new PrintLocale(language, country), currency),
        LocalDate.of(2026, 10, 1),
        new BigDecimal("185.00"),
        List.of(
            entry(2, StatementEntry.Kind.PAID_AT_TRUCK, "", "-110.00", "75.00"),
            entry(5, StatementEntry.Kind.PAYMENT, "BACS 7731", "-40.00", "35.00"),
            entry(12, StatementEntry.Kind.DEPOSIT, "", "-50.00", "-15.00"),
            entry(20, StatementEntry.Kind.REFUND, "cheque 114", "15.00", "0.00"),
            entry(28, StatementEntry.Kind.WRITTEN_OFF, "2026-0003", "-12.00", "-12.00"),
            entry(31, StatementEntry.Kind.CREDIT_NOTE, "2026-0047", "-110.00", "-122.00"),
            entry(31, StatementEntry.Kind.INVOICE, "2026-0041", "417.50", "295.50")),
        new BigDecimal("295.50"),
        new Ageing(
            new BigDecimal("220.50"),
            new BigDecimal("0.00"),
            new BigDecimal("75.00"),
            new BigDecimal("0.00")),
        new Ageing(
            new BigDecimal("220.50"),
            new BigDecimal("75.00"),
            new BigDecimal("0.00"),
            new BigDecimal("0.00")),
        Optional.of(LocalDate.of(2026, 10, 20)),
        Optional.of(new BigDecimal("1.5")),
        pay());
  }

  private static StatementEntry entry(
      int day, StatementEntry.Kind kind, String reference, String amount, String balance) {
    return new StatementEntry(
        LocalDate.of(2026, 10, day),
        kind,
        reference,
        new BigDecimal(amount),
        new BigDecimal(balance));
  }

  /** The same invoice under another head. */
  public static InvoiceDocument under(DocumentHead head, InvoiceDocument usual) {
    return new InvoiceDocument(
        head,
        usual.month(),
        usual.due(),
        usual.lines(),
        usual.totals(),
        usual.settlements(),
        usual.amountDue(),
        usual.pay(),
        usual.nextVisits(),
        usual.remarks());
  }

  /** The same head with another addressee, in the country of a locale. */
  public static DocumentHead addressed(DocumentHead usual, Addressee to, PrintLocale locale) {
    return new DocumentHead(
        usual.from(), to, usual.number(), usual.date(), locale, usual.currency());
  }

  /** The same statement with other entries. */
  static StatementDocument listing(List<StatementEntry> entries, StatementDocument usual) {
    return new StatementDocument(
        usual.head(),
        usual.from(),
        usual.broughtForward(),
        entries,
        usual.balance(),
        usual.ageing(),
        usual.asked(),
        usual.enteredUpTo(),
        usual.lateFeePercentPerMonth(),
        usual.pay());
  }
}
