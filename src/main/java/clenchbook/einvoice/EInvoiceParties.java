package clenchbook.einvoice;

import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.einvoice.EInvoiceParty.Contact;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The business and the owner as a structured invoice names them. */
final class EInvoiceParties {
  private EInvoiceParties() {}

  /**
   * The business.
   *
   * @param outside true where every line is outside the scope of tax: then no tax number may stand
   *     there (BR-O-2)
   */
  static EInvoiceParty seller(Settings settings, boolean outside) {
    String taxNumber = outside ? "" : settings.text(Setting.TAX_NUMBER);
    return new EInvoiceParty(
        oneLine(settings.text(Setting.BUSINESS_NAME)),
        Optional.of(oneLine(settings.text(Setting.REGISTRATION))).filter(text -> !text.isEmpty()),
        contact(settings),
        lines(settings.text(Setting.ADDRESS)),
        settings.text(Setting.POSTCODE),
        settings.text(Setting.CITY),
        settings.text(Setting.COUNTRY),
        ElectronicAddress.of(settings.text(Setting.EMAIL)),
        TaxNumber.vat(taxNumber),
        TaxNumber.local(taxNumber));
  }

  private static Optional<Contact> contact(Settings settings) {
    String name = settings.text(Setting.CONTACT);
    return name.isBlank()
        ? Optional.empty()
        : Optional.of(
            new Contact(name, settings.text(Setting.PHONE), settings.text(Setting.EMAIL)));
  }

  /** The owner. */
  static EInvoiceParty buyer(Owner owner, Settings settings, boolean outside) {
    return new EInvoiceParty(
        oneLine(owner.invoiceName().isEmpty() ? owner.name() : owner.invoiceName()),
        Optional.empty(),
        Optional.empty(),
        lines(owner.address()),
        owner.postcode(),
        owner.city(),
        owner.country().isEmpty() ? settings.text(Setting.COUNTRY) : owner.country(),
        EInvoiceNeeds.address(owner),
        outside ? Optional.empty() : TaxNumber.vat(owner.taxNumber()),
        Optional.empty());
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private static List<String> lines(String address) {
    String separator = address.contains("\n") ? "\n" : ",";
    return Stream.of(address.split(separator))
        .map(EInvoiceParties::oneLine)
        .filter(line -> !line.isEmpty())
        .toList();
  }
}
