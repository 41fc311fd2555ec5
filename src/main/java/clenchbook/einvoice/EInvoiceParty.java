package clenchbook.einvoice;

import java.util.List;
import java.util.Optional;

/**
 * Who sells or buys.
 *
 * @param name BT-27, BT-44
 * @param legalRegistration BT-30: the number under which the seller is registered
 * @param contact BG-6: whom to ask; empty for a buyer
 * @param address BT-35, BT-50 and what follows: street and the like, line by line
 * @param postcode BT-38, BT-53; may be empty where the profile does not ask for it
 * @param city BT-37, BT-52; may be empty where the profile does not ask for it
 * @param country BT-40, BT-55: ISO 3166 alpha-2
 * @param electronic BT-34, BT-49
 * @param vatNumber BT-31, BT-48: the number for value-added tax, with its country's two letters
 * @param taxNumber BT-32: the number at the local tax office, for a seller without the former
 */
public record EInvoiceParty(
    String name,
    Optional<String> legalRegistration,
    Optional<Contact> contact,
    List<String> address,
    String postcode,
    String city,
    String country,
    Optional<ElectronicAddress> electronic,
    Optional<String> vatNumber,
    Optional<String> taxNumber) {
  /** Copies its list. */
  public EInvoiceParty {
    address = List.copyOf(address);
  }

  /**
   * Whom to ask about the invoice.
   *
   * @param name BT-41
   * @param phone BT-42; may be empty
   * @param email BT-43; may be empty
   */
  public record Contact(String name, String phone, String email) {}
}
