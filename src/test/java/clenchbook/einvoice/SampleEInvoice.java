package clenchbook.einvoice;

import clenchbook.book.TaxCategory;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Invented structured invoices, small and whole. */
record SampleEInvoice(EInvoiceProfile profile) {
  private static final LocalDate DATE = LocalDate.of(2026, 10, 31);
  private static final BigDecimal ZERO = new BigDecimal("0.00");
  private static final BigDecimal RATE = new BigDecimal("20");

  static SampleEInvoice of(EInvoiceProfile profile) {
    return new SampleEInvoice(profile);
  }

  EInvoice invoice() {
    return priced(List.of("85.00", "12.50"), "97.50", "19.50", "117.00");
  }

  EInvoice prepaid(String amount) {
    EInvoice whole = invoice();
    BigDecimal prepaid = new BigDecimal(amount);
    return with(
        whole,
        new EInvoice.Totals(
            whole.totals().net(),
            whole.totals().tax(),
            whole.totals().gross(),
            prepaid,
            whole.totals().gross().subtract(prepaid)),
        whole.payment());
  }

  EInvoice paid(EInvoice.Payment payment) {
    return with(invoice(), invoice().totals(), payment);
  }

  private static EInvoice with(EInvoice old, EInvoice.Totals totals, EInvoice.Payment payment) {
    return new EInvoice(
        old.profile(),
        old.kind(),
        old.number(),
        old.date(),
        old.due(),
        old.currency(),
        old.notes(),
        old.buyerReference(),
        old.corrects(),
        old.seller(),
        old.buyer(),
        old.lines(),
        old.taxes(),
        totals,
        payment);
  }

  EInvoice creditNote() {
    EInvoice invoice = invoice();
    return new EInvoice(
        profile,
        EInvoice.Kind.CREDIT_NOTE,
        "2026-0002",
        DATE,
        DATE,
        "EUR",
        List.of(),
        invoice.buyerReference(),
        Optional.of(new EInvoice.Corrected("2026-0001", DATE.minusMonths(1))),
        invoice.seller(),
        invoice.buyer(),
        invoice.lines(),
        invoice.taxes(),
        invoice.totals(),
        invoice.payment());
  }

  /** One line whose tax was taken out of what was charged, half up. */
  EInvoice includingTax(BigDecimal gross) {
    BigDecimal net = gross.divide(new BigDecimal("1.2"), 2, RoundingMode.HALF_UP);
    return priced(
        List.of(net.toPlainString()),
        net.toPlainString(),
        gross.subtract(net).toPlainString(),
        gross.toPlainString());
  }

  private EInvoice priced(List<String> nets, String net, String tax, String gross) {
    TaxBreakdown breakdown =
        new TaxBreakdown(
            TaxCategory.S,
            RATE,
            new BigDecimal(net),
            new BigDecimal(tax),
            Optional.empty(),
            Optional.empty());
    return whole(
        "Riding School Elmfield",
        nets.stream().map(each -> line(each, TaxCategory.S, RATE)).toList(),
        breakdown,
        gross);
  }

  EInvoice untaxed(TaxCategory category) {
    boolean zero = category == TaxCategory.Z;
    TaxBreakdown breakdown =
        new TaxBreakdown(
            category,
            BigDecimal.ZERO,
            new BigDecimal("85.00"),
            ZERO,
            zero ? Optional.empty() : Optional.of("why it bears no tax"),
            category == TaxCategory.AE ? Optional.of("VATEX-EU-AE") : Optional.empty());
    return whole(
        "Riding School Elmfield",
        List.of(line("85.00", category, BigDecimal.ZERO)),
        breakdown,
        "85.00");
  }

  EInvoice named(String buyer) {
    EInvoice taxed = invoice();
    return whole(buyer, taxed.lines(), taxed.taxes().get(0), "117.00");
  }

  private EInvoice whole(String buyer, List<EInvoiceLine> lines, TaxBreakdown tax, String total) {
    BigDecimal gross = new BigDecimal(total);
    boolean outside = tax.category() == TaxCategory.O;
    return new EInvoice(
        profile,
        EInvoice.Kind.INVOICE,
        "2026-0001",
        DATE,
        DATE.plusDays(14),
        "EUR",
        List.of("Thank you."),
        Optional.of("04011000-12345-03"),
        Optional.empty(),
        seller(outside),
        buyer(buyer, outside),
        lines,
        List.of(tax),
        new EInvoice.Totals(tax.net(), tax.tax(), gross, ZERO, gross),
        new EInvoice.Payment(
            "58",
            "By transfer, please",
            "RF3120260001",
            Optional.of("DE89370400440532013000"),
            "Thornfield Farriery",
            Optional.empty()));
  }

  private static EInvoiceLine line(String net, TaxCategory category, BigDecimal rate) {
    return new EInvoiceLine(
        "Full set, Bramble",
        List.of("4 × keg 0"),
        BigDecimal.ONE,
        "C62",
        new BigDecimal(net),
        new BigDecimal(net),
        category,
        rate,
        LocalDate.of(2026, 10, 7));
  }

  private static EInvoiceParty seller(boolean outside) {
    return new EInvoiceParty(
        "Thornfield Farriery",
        Optional.of("HRA 4711"),
        Optional.of(
            new EInvoiceParty.Contact("A. Thorn", "+49 30 5550100", "office@thorn.example")),
        List.of("Forge Lane 1", "Yard 2", "Gate 3", "Back door"),
        "10115",
        "Berlin",
        "DE",
        ElectronicAddress.of("office@thorn.example"),
        outside ? Optional.empty() : Optional.of("DE123456789"),
        Optional.empty());
  }

  private static EInvoiceParty buyer(String name, boolean outside) {
    return new EInvoiceParty(
        name,
        Optional.empty(),
        Optional.empty(),
        List.of("Elm Field 5"),
        "20095",
        "Hamburg",
        "DE",
        ElectronicAddress.of("0204:04011000-12345-03"),
        outside ? Optional.empty() : Optional.of("DE987654321"),
        Optional.empty());
  }
}
