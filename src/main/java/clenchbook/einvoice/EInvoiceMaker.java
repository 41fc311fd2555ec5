package clenchbook.einvoice;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.TaxCategory;
import clenchbook.einvoice.EInvoice.Corrected;
import clenchbook.einvoice.EInvoice.Payment;
import clenchbook.einvoice.EInvoice.Totals;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.charge.ChargeLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fills structured invoices from billed documents. Every amount is the document's own; a credit
 * note's are negated, because such a note is positive.
 */
public final class EInvoiceMaker {
  /** A SEPA credit transfer: UNTDID 4461. */
  private static final String SEPA_TRANSFER = "58";

  /** A credit transfer: UNTDID 4461. */
  private static final String TRANSFER = "30";

  /** No instrument defined: UNTDID 4461. */
  private static final String NOT_DEFINED = "1";

  private static final int MOST_DECIMALS = 8;

  private final Settings settings;
  private final BookIndex index;

  /**
   * Makes the filler of one book.
   *
   * @param index the book by name
   */
  public EInvoiceMaker(BookIndex index) {
    this.index = index;
    settings = index.book().settings();
  }

  /**
   * Fills one in.
   *
   * @param profile what {@link EInvoiceChoice} gave for the document
   * @param document an invoice or credit note
   * @param prepaid money taken at the truck for it, positive; zero on a credit note
   * @param corrected the invoice that a credit note takes back from
   * @param reference what a transfer shall say
   * @param words the smaller print
   * @return the structured invoice
   */
  public EInvoice of(
      EInvoiceProfile profile,
      BilledDocument document,
      BigDecimal prepaid,
      Optional<Corrected> corrected,
      String reference,
      EInvoiceWords words) {
    boolean invoice = document.invoice();
    boolean outside =
        document.lines().stream().allMatch(line -> line.tax().category() == TaxCategory.O);
    Owner owner = index.owner(document.owner()).orElseThrow();
    BigDecimal gross = signed(document.gross(), invoice);
    return new EInvoice(
        profile,
        invoice ? EInvoice.Kind.INVOICE : EInvoice.Kind.CREDIT_NOTE,
        document.number(),
        document.date(),
        document.due(),
        settings.currency(),
        words.notes(),
        Optional.of(owner.eInvoice().buyerReference()).filter(text -> !text.isBlank()),
        corrected,
        EInvoiceParties.seller(settings, outside),
        EInvoiceParties.buyer(owner, settings, outside),
        lines(document, words),
        TaxBreakdown.of(document.taxes(), invoice, words),
        new Totals(
            signed(document.net(), invoice),
            signed(document.tax(), invoice),
            gross,
            prepaid,
            gross.subtract(prepaid)),
        payment(reference));
  }

  static BigDecimal signed(BigDecimal amount, boolean invoice) {
    return invoice ? amount : amount.negate();
  }

  private static List<EInvoiceLine> lines(BilledDocument document, EInvoiceWords words) {
    List<EInvoiceLine> lines = new ArrayList<>();
    for (DocumentLine line : document.lines()) {
      lines.add(line(line, document.invoice(), words.details(lines.size())));
    }
    return lines;
  }

  private static EInvoiceLine line(DocumentLine line, boolean invoice, List<String> details) {
    BigDecimal net = signed(line.net(), invoice);
    boolean extra = line.kind() == ChargeLine.Kind.EXTRA;
    String what = extra ? line.item() : line.work();
    BigDecimal count = BigDecimal.valueOf(extra ? line.count() : 1);
    Optional<BigDecimal> each = each(net.abs(), count);
    BigDecimal sign = BigDecimal.valueOf(net.signum() < 0 ? -1 : 1);
    String counted = extra && each.isEmpty() ? line.count() + " × " + what : what;
    return new EInvoiceLine(
        line.horse().isBlank() ? counted : counted + ", " + line.horse(),
        details,
        each.isPresent() ? count.multiply(sign) : sign,
        extra && each.isPresent() ? UnitCode.of(line.item()) : UnitCode.PIECE,
        each.orElse(net.abs()),
        net,
        line.tax().category(),
        line.tax().chargedPercent(),
        line.visit().date());
  }

  /** The price of one, where it can be written to the last decimal. */
  private static Optional<BigDecimal> each(BigDecimal net, BigDecimal count) {
    if (count.compareTo(BigDecimal.ONE) == 0) {
      return Optional.of(net);
    }
    try {
      BigDecimal price = net.divide(count);
      return price.scale() <= MOST_DECIMALS
          ? Optional.of(price.setScale(Math.max(price.scale(), net.scale())))
          : Optional.empty();
    } catch (ArithmeticException endless) {
      return Optional.empty();
    }
  }

  private Payment payment(String reference) {
    Optional<String> account = given(Setting.IBAN);
    String transfer = settings.currency().equals("EUR") ? SEPA_TRANSFER : TRANSFER;
    return new Payment(
        account.isPresent() ? transfer : NOT_DEFINED,
        settings.text(Setting.PAYMENT_TEXT).replaceAll("\\s+", " "),
        reference,
        account,
        settings.text(Setting.BUSINESS_NAME),
        given(Setting.BIC));
  }

  private Optional<String> given(Setting setting) {
    return Optional.of(settings.text(setting)).filter(text -> !text.isBlank());
  }
}
