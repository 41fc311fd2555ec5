package clenchbook.einvoice;

import clenchbook.book.einvoice.EInvoiceForm;
import java.util.Optional;

/**
 * The rules that a structured invoice keeps beside EN 16931 itself.
 *
 * <p>Source: EN 16931-1:2017+A1:2019, business term BT-24; Factur-X 1.08 / ZUGFeRD 2.4, profile EN
 * 16931; KoSIT, XRechnung 3.0, section 10.
 */
public enum EInvoiceProfile {
  /** The invoice's PDF with the structured invoice inside. */
  FACTUR_X("urn:cen.eu:en16931:2017", Optional.empty()),
  /** The structured invoice alone, as German public bodies take it. */
  XRECHNUNG(
      "urn:cen.eu:en16931:2017#compliant#urn:xeinkauf.de:kosit:xrechnung_3.0",
      Optional.of("urn:fdc:peppol.eu:2017:poacc:billing:01:1.0"));

  private final String guideline;
  private final Optional<String> process;

  EInvoiceProfile(String guideline, Optional<String> process) {
    this.guideline = guideline;
    this.process = process;
  }

  /**
   * The specification that the invoice names.
   *
   * @return BT-24
   */
  String guideline() {
    return guideline;
  }

  /**
   * The business process that the invoice names.
   *
   * @return BT-23; empty where the profile asks for none
   */
  Optional<String> process() {
    return process;
  }

  /**
   * The profile of a form.
   *
   * @param form what the owner gets
   * @return the profile; empty for none
   */
  public static Optional<EInvoiceProfile> of(EInvoiceForm form) {
    return switch (form) {
      case NO -> Optional.empty();
      case FACTUR_X -> Optional.of(FACTUR_X);
      case XRECHNUNG -> Optional.of(XRECHNUNG);
    };
  }
}
