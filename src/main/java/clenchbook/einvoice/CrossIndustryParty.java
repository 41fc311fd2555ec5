package clenchbook.einvoice;

import java.util.List;

/** Writes a party of a Cross Industry Invoice. */
final class CrossIndustryParty {
  private static final List<String> ADDRESS_LINES =
      List.of("ram:LineOne", "ram:LineTwo", "ram:LineThree");

  private CrossIndustryParty() {}

  static void write(XmlText xml, String element, EInvoiceParty party) {
    xml.open(element).text("ram:Name", party.name());
    party
        .legalRegistration()
        .ifPresent(
            number -> xml.open("ram:SpecifiedLegalOrganization").text("ram:ID", number).close());
    party.contact().ifPresent(contact -> contact(xml, contact));
    address(xml, party);
    party
        .electronic()
        .ifPresent(
            address ->
                xml.open("ram:URIUniversalCommunication")
                    .text(
                        "ram:URIID",
                        XmlText.attribute("schemeID", address.scheme()),
                        address.value())
                    .close());
    party.vatNumber().ifPresent(number -> registration(xml, "VA", number));
    party.taxNumber().ifPresent(number -> registration(xml, "FC", number));
    xml.close();
  }

  private static void contact(XmlText xml, EInvoiceParty.Contact contact) {
    xml.open("ram:DefinedTradeContact").text("ram:PersonName", contact.name());
    if (!contact.phone().isBlank()) {
      xml.open("ram:TelephoneUniversalCommunication")
          .text("ram:CompleteNumber", contact.phone())
          .close();
    }
    if (!contact.email().isBlank()) {
      xml.open("ram:EmailURIUniversalCommunication").text("ram:URIID", contact.email()).close();
    }
    xml.close();
  }

  /** Three lines at most; the third holds all that follow. */
  private static void address(XmlText xml, EInvoiceParty party) {
    List<String> lines = party.address();
    xml.open("ram:PostalTradeAddress").text("ram:PostcodeCode", party.postcode());
    int last = ADDRESS_LINES.size() - 1;
    for (int index = 0; index < Math.min(lines.size(), last); index++) {
      xml.text(ADDRESS_LINES.get(index), lines.get(index));
    }
    if (lines.size() > last) {
      xml.text(ADDRESS_LINES.get(last), String.join(", ", lines.subList(last, lines.size())));
    }
    xml.text("ram:CityName", party.city()).text("ram:CountryID", party.country()).close();
  }

  private static void registration(XmlText xml, String scheme, String number) {
    xml.open("ram:SpecifiedTaxRegistration")
        .text("ram:ID", XmlText.attribute("schemeID", scheme), number)
        .close();
  }
}
