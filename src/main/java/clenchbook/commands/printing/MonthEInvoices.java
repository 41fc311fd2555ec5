package clenchbook.commands.printing;

import clenchbook.billing.Prepaid;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.einvoice.CrossIndustryText;
import clenchbook.einvoice.EInvoice.Corrected;
import clenchbook.einvoice.EInvoiceChoice;
import clenchbook.einvoice.EInvoiceMaker;
import clenchbook.einvoice.EInvoiceProfile;
import clenchbook.einvoice.EInvoiceWords;
import clenchbook.reports.month.BilledMonth;
import clenchbook.values.CreditorReference;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The structured invoices of a month. */
final class MonthEInvoices {
  private final BilledMonth month;
  private final EInvoiceChoice choice;
  private final EInvoiceMaker maker;
  private final Map<String, EInvoiceProfile> profiles = new LinkedHashMap<>();
  private final Map<String, BilledDocument> byNumber = new HashMap<>();
  private final Optional<Prepaid> prepaid;

  MonthEInvoices(BilledMonth month) {
    this.month = month;
    choice = new EInvoiceChoice(month.jobs().index());
    maker = new EInvoiceMaker(month.jobs().index());
    for (BilledDocument document : month.billing().month()) {
      if (document.counts()) {
        choice.of(document).ifPresent(rules -> profiles.put(document.number(), rules));
      }
    }
    month.billing().documents().forEach(each -> byNumber.put(each.number(), each));
    // Most books ask for none, and then nothing is gathered.
    prepaid =
        profiles.isEmpty()
            ? Optional.empty()
            : Optional.of(new Prepaid(month.jobs(), month.billing().documents()));
  }

  /** The numbers of documents whose structured invoice is a file of its own. */
  Set<String> apart() {
    Map<String, EInvoiceProfile> apart = new LinkedHashMap<>(profiles);
    apart.values().removeIf(profile -> profile != EInvoiceProfile.XRECHNUNG);
    return apart.keySet();
  }

  /** Whether a document's PDF holds its structured invoice. */
  boolean inside(BilledDocument document) {
    return profiles.get(document.number()) == EInvoiceProfile.FACTUR_X;
  }

  /** A document's structured invoice, as XML in UTF-8; only for one that has a profile. */
  byte[] xml(BilledDocument document, EInvoiceWords words) {
    EInvoiceProfile profile = Optional.ofNullable(profiles.get(document.number())).orElseThrow();
    String reference =
        month
            .references()
            .of(document.number())
            .map(CreditorReference::compact)
            .orElse(document.number());
    return CrossIndustryText.of(
            maker.of(
                profile,
                document,
                prepaid.orElseThrow().of(document),
                corrected(document),
                reference,
                words))
        .getBytes(StandardCharsets.UTF_8);
  }

  private Optional<Corrected> corrected(BilledDocument document) {
    return Optional.ofNullable(byNumber.get(document.corrects()))
        .map(invoice -> new Corrected(invoice.number(), invoice.date()));
  }
}
