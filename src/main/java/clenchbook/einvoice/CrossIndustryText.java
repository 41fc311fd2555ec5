package clenchbook.einvoice;

import static java.time.format.DateTimeFormatter.BASIC_ISO_DATE;

import clenchbook.einvoice.EInvoice.Payment;
import clenchbook.einvoice.EInvoice.Totals;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * Writes a structured invoice as a Cross Industry Invoice. Every amount is written as it is given,
 * with its own decimals; nothing is added up or rounded here.
 *
 * <p>Source: UN/CEFACT, Cross Industry Invoice D16B; the place of each business term from CEN/TS
 * 16931-3-3:2020, Syntax binding for UN/CEFACT XML Industry invoice D16B.
 */
public final class CrossIndustryText {
  private static final String DAY_FORMAT = XmlText.attribute("format", "102");

  private final EInvoice invoice;
  private final XmlText xml = new XmlText();

  private CrossIndustryText(EInvoice invoice) {
    this.invoice = invoice;
  }

  /**
   * The document's text.
   *
   * @param invoice the invoice or credit note
   * @return XML that says it is UTF-8; the same for the same invoice
   */
  public static String of(EInvoice invoice) {
    return new CrossIndustryText(invoice).written();
  }

  private String written() {
    xml.open(
        "rsm:CrossIndustryInvoice",
        XmlText.attribute(
                "xmlns:rsm", "urn:un:unece:uncefact:data:standard:CrossIndustryInvoice:100")
            + XmlText.attribute(
                "xmlns:qdt", "urn:un:unece:uncefact:data:standard:QualifiedDataType:100")
            + XmlText.attribute(
                "xmlns:ram",
                "urn:un:unece:uncefact:data:standard:ReusableAggregateBusinessInformationEntity:100")
            + XmlText.attribute(
                "xmlns:udt", "urn:un:unece:uncefact:data:standard:UnqualifiedDataType:100"));
    context();
    head();
    xml.open("rsm:SupplyChainTradeTransaction");
    int number = 1;
    for (EInvoiceLine line : invoice.lines()) {
      CrossIndustryLine.write(xml, number++, line);
    }
    agreement();
    delivery();
    settlement();
    return xml.close().close().toString();
  }

  private void context() {
    xml.open("rsm:ExchangedDocumentContext");
    invoice
        .profile()
        .process()
        .ifPresent(
            process ->
                xml.open("ram:BusinessProcessSpecifiedDocumentContextParameter")
                    .text("ram:ID", process)
                    .close());
    xml.open("ram:GuidelineSpecifiedDocumentContextParameter")
        .text("ram:ID", invoice.profile().guideline())
        .close()
        .close();
  }

  private void head() {
    xml.open("rsm:ExchangedDocument")
        .text("ram:ID", invoice.number())
        .text("ram:TypeCode", invoice.kind().code());
    day(xml, "ram:IssueDateTime", invoice.date());
    for (String note : invoice.notes()) {
      xml.open("ram:IncludedNote").text("ram:Content", note).close();
    }
    xml.close();
  }

  private void agreement() {
    xml.open("ram:ApplicableHeaderTradeAgreement");
    invoice.buyerReference().ifPresent(reference -> xml.text("ram:BuyerReference", reference));
    CrossIndustryParty.write(xml, "ram:SellerTradeParty", invoice.seller());
    CrossIndustryParty.write(xml, "ram:BuyerTradeParty", invoice.buyer());
    xml.close();
  }

  /** The last visit's day stands for the delivery. */
  private void delivery() {
    xml.open("ram:ApplicableHeaderTradeDelivery").open("ram:ActualDeliverySupplyChainEvent");
    day(xml, "ram:OccurrenceDateTime", days().get(days().size() - 1));
    xml.close().close();
  }

  private List<LocalDate> days() {
    return invoice.lines().stream().map(EInvoiceLine::day).sorted().toList();
  }

  private void settlement() {
    xml.open("ram:ApplicableHeaderTradeSettlement");
    xml.text("ram:PaymentReference", invoice.payment().reference());
    xml.text("ram:InvoiceCurrencyCode", invoice.currency());
    payment(invoice.payment());
    invoice.taxes().forEach(this::tax);
    xml.open("ram:BillingSpecifiedPeriod");
    day(xml, "ram:StartDateTime", days().get(0));
    day(xml, "ram:EndDateTime", days().get(days().size() - 1));
    xml.close();
    xml.open("ram:SpecifiedTradePaymentTerms");
    day(xml, "ram:DueDateDateTime", invoice.due());
    xml.close();
    totals(invoice.totals());
    invoice.corrects().ifPresent(this::corrected);
    xml.close();
  }

  private void payment(Payment payment) {
    xml.open("ram:SpecifiedTradeSettlementPaymentMeans")
        .text("ram:TypeCode", payment.means())
        .text("ram:Information", payment.text());
    payment
        .account()
        .ifPresent(
            account ->
                xml.open("ram:PayeePartyCreditorFinancialAccount")
                    .text("ram:IBANID", account)
                    .text("ram:AccountName", payment.holder())
                    .close());
    payment
        .bank()
        .filter(bank -> payment.account().isPresent())
        .ifPresent(
            bank ->
                xml.open("ram:PayeeSpecifiedCreditorFinancialInstitution")
                    .text("ram:BICID", bank)
                    .close());
    xml.close();
  }

  private void tax(TaxBreakdown tax) {
    xml.open("ram:ApplicableTradeTax")
        .text("ram:CalculatedAmount", plain(tax.tax()))
        .text("ram:TypeCode", "VAT");
    tax.reason().ifPresent(reason -> xml.text("ram:ExemptionReason", reason));
    xml.text("ram:BasisAmount", plain(tax.net())).text("ram:CategoryCode", tax.category().name());
    tax.reasonCode().ifPresent(code -> xml.text("ram:ExemptionReasonCode", code));
    xml.text("ram:RateApplicablePercent", plain(tax.ratePercent())).close();
  }

  private void totals(Totals totals) {
    xml.open("ram:SpecifiedTradeSettlementHeaderMonetarySummation")
        .text("ram:LineTotalAmount", plain(totals.net()))
        .text("ram:TaxBasisTotalAmount", plain(totals.net()))
        .text(
            "ram:TaxTotalAmount",
            XmlText.attribute("currencyID", invoice.currency()),
            plain(totals.tax()))
        .text("ram:GrandTotalAmount", plain(totals.gross()))
        .text("ram:TotalPrepaidAmount", plain(totals.prepaid()))
        .text("ram:DuePayableAmount", plain(totals.due()))
        .close();
  }

  private void corrected(EInvoice.Corrected corrected) {
    xml.open("ram:InvoiceReferencedDocument")
        .text("ram:IssuerAssignedID", corrected.number())
        .open("ram:FormattedIssueDateTime")
        .text("qdt:DateTimeString", DAY_FORMAT, corrected.date().format(BASIC_ISO_DATE))
        .close()
        .close();
  }

  static void day(XmlText xml, String name, LocalDate day) {
    xml.open(name).text("udt:DateTimeString", DAY_FORMAT, day.format(BASIC_ISO_DATE)).close();
  }

  static String plain(BigDecimal amount) {
    return amount.toPlainString();
  }
}
