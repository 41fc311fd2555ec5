package clenchbook.einvoice;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where structured invoices reach a party: BT-34, BT-49.
 *
 * <p>Source: EN 16931-1, BT-34 and BT-49; the scheme codes from the Electronic Address Scheme code
 * list (European Commission, EAS); the form of a Leitweg-ID from KoSIT, Formatspezifikation
 * Leitweg-ID, version 2.0.2.
 *
 * @param scheme the scheme's code: {@code EM} for mail, else four digits
 * @param value the address within the scheme, not blank
 */
public record ElectronicAddress(String scheme, String value) {
  private static final String MAIL = "EM";
  private static final Pattern WITH_SCHEME = Pattern.compile("([0-9]{4}):\\s*(\\S.*)");
  private static final Pattern MAILBOX = Pattern.compile("[^@\\s]+@[^@\\s]+\\.[^@\\s.]+");
  private static final Pattern ROUTING =
      Pattern.compile("[0-9]{2,12}(-[A-Za-z0-9]{1,30})?-[0-9]{2}");
  private static final Pattern LOCATION = Pattern.compile("[0-9]{13}");

  /**
   * Reads an address.
   *
   * @param text a mail address, a routing number of German public bodies, a location number of 13
   *     digits, or any other with its scheme's four digits and a colon before it
   * @return the address; empty for blank and for what is none of these
   */
  public static Optional<ElectronicAddress> of(String text) {
    String address = text.strip();
    Matcher named = WITH_SCHEME.matcher(address);
    if (named.matches()) {
      return Optional.of(new ElectronicAddress(named.group(1), named.group(2)));
    }
    if (MAILBOX.matcher(address).matches()) {
      return Optional.of(new ElectronicAddress(MAIL, address));
    }
    if (ROUTING.matcher(address).matches()) {
      return Optional.of(new ElectronicAddress("0204", address));
    }
    return LOCATION.matcher(address).matches()
        ? Optional.of(new ElectronicAddress("0088", address))
        : Optional.empty();
  }
}
