package clenchbook.einvoice;

import clenchbook.book.TaxCategory;

/** Writes a line of a Cross Industry Invoice. */
final class CrossIndustryLine {
  private CrossIndustryLine() {}

  static void write(XmlText xml, int number, EInvoiceLine line) {
    xml.open("ram:IncludedSupplyChainTradeLineItem")
        .open("ram:AssociatedDocumentLineDocument")
        .text("ram:LineID", Integer.toString(number))
        .close();
    xml.open("ram:SpecifiedTradeProduct")
        .text("ram:Name", line.name())
        .text("ram:Description", String.join("; ", line.details()))
        .close();
    xml.open("ram:SpecifiedLineTradeAgreement")
        .open("ram:NetPriceProductTradePrice")
        .text("ram:ChargeAmount", CrossIndustryText.plain(line.unitPrice()))
        .close()
        .close();
    xml.open("ram:SpecifiedLineTradeDelivery")
        .text(
            "ram:BilledQuantity",
            XmlText.attribute("unitCode", line.unit()),
            CrossIndustryText.plain(line.quantity()))
        .close();
    settlement(xml, line);
    xml.close();
  }

  private static void settlement(XmlText xml, EInvoiceLine line) {
    xml.open("ram:SpecifiedLineTradeSettlement")
        .open("ram:ApplicableTradeTax")
        .text("ram:TypeCode", "VAT")
        .text("ram:CategoryCode", line.category().name());
    if (line.category() != TaxCategory.O) {
      xml.text("ram:RateApplicablePercent", CrossIndustryText.plain(line.ratePercent()));
    }
    xml.close().open("ram:BillingSpecifiedPeriod");
    CrossIndustryText.day(xml, "ram:StartDateTime", line.day());
    CrossIndustryText.day(xml, "ram:EndDateTime", line.day());
    xml.close()
        .open("ram:SpecifiedTradeSettlementLineMonetarySummation")
        .text("ram:LineTotalAmount", CrossIndustryText.plain(line.net()))
        .close()
        .close();
  }
}
