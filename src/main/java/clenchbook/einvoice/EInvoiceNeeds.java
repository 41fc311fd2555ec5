package clenchbook.einvoice;

import clenchbook.book.Book;
import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.SourceRow;
import clenchbook.book.TaxCategory;
import clenchbook.book.TaxRate;
import clenchbook.jobs.charge.LineTax;
import clenchbook.problem.CellRef;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What an owner's structured invoice needs and the book does not give.
 *
 * <p>Source: EN 16931-1:2017+A1:2019, rules BR-2 to BR-11, BR-CO-26 and those of the tax categories
 * (BR-S-2, BR-Z-2, BR-E-2, BR-E-10, BR-AE-2, BR-O-2 and their kin); KoSIT, XRechnung 3.0, rules
 * BR-DE-1 to BR-DE-9, BR-DE-15, BR-DE-27, BR-DE-28 and PEPPOL-EN16931-R010, R020.
 */
final class EInvoiceNeeds {
  private static final int MOST_DECIMALS = 2;

  private final Book book;
  private final Settings settings;
  private final Owner owner;
  private final List<EInvoiceNeed> needs = new ArrayList<>();

  private EInvoiceNeeds(Book book, Owner owner) {
    this.book = book;
    this.settings = book.settings();
    this.owner = owner;
  }

  /**
   * What is missing.
   *
   * @param book the book
   * @param owner the owner
   * @param profile the rules to keep
   * @param taxes how the lines are taxed
   * @return in the order of settings, owner, tax; empty where the invoice can be made
   */
  static List<EInvoiceNeed> of(
      Book book, Owner owner, EInvoiceProfile profile, Collection<LineTax> taxes) {
    EInvoiceNeeds needs = new EInvoiceNeeds(book, owner);
    needs.seller(taxes);
    if (profile == EInvoiceProfile.XRECHNUNG) {
      needs.xrechnung();
    }
    needs.buyer(taxes);
    taxes.stream().filter(EInvoiceNeeds::lacksGround).forEach(needs::ground);
    return List.copyOf(needs.needs);
  }

  private void seller(Collection<LineTax> taxes) {
    setting(Setting.BUSINESS_NAME, Message.of("einvoice.need.aBusiness"));
    setting(Setting.COUNTRY, Message.of("einvoice.need.aCountry"));
    if (settings.minorUnit().digits() > MOST_DECIMALS) {
      need(
          Setting.CURRENCY,
          Message.of("einvoice.need.currency"),
          Message.of("einvoice.need.suchACurrency"));
    }
    if (taxes.stream().anyMatch(tax -> tax.category() != TaxCategory.O)) {
      setting(Setting.TAX_NUMBER, Message.of("einvoice.need.yourTaxNumber"));
    }
    if (taxes.stream().anyMatch(tax -> tax.category() == TaxCategory.O)) {
      setting(Setting.REGISTRATION, Message.of("einvoice.need.yourRegistration"));
    }
  }

  private void xrechnung() {
    setting(Setting.POSTCODE, Message.of("einvoice.need.yourPostcode"));
    setting(Setting.CITY, Message.of("einvoice.need.yourCity"));
    setting(Setting.CONTACT, Message.of("einvoice.need.whomToAsk"));
    if (settings.text(Setting.PHONE).chars().filter(Character::isDigit).count() < 3) {
      need(
          Setting.PHONE,
          Message.literal(Setting.PHONE.title()),
          Message.of("einvoice.need.aPhone"));
    }
    if (!mailbox(settings.text(Setting.EMAIL))) {
      need(
          Setting.EMAIL,
          Message.literal(Setting.EMAIL.title()),
          Message.of("einvoice.need.yourEmail"));
    }
    owner(owner.postcode(), "Postcode", Message.of("einvoice.need.theirPostcode"));
    owner(owner.city(), "City", Message.of("einvoice.need.theirCity"));
    owner(
        owner.eInvoice().buyerReference(),
        "Buyer reference",
        Message.of("einvoice.need.theirReference"));
    if (address(owner).isEmpty()) {
      need(owner.source(), "E-invoice address", Message.of("einvoice.need.anAddress"));
    }
  }

  private static boolean mailbox(String text) {
    return ElectronicAddress.of(text).filter(address -> address.scheme().equals("EM")).isPresent();
  }

  /** Where structured invoices reach an owner: the address given, else the mail address. */
  static Optional<ElectronicAddress> address(Owner owner) {
    String own = owner.eInvoice().address();
    return ElectronicAddress.of(own.isEmpty() ? owner.email() : own);
  }

  private void buyer(Collection<LineTax> taxes) {
    boolean reversed = taxes.stream().anyMatch(tax -> tax.category() == TaxCategory.AE);
    if (reversed && TaxNumber.vat(owner.taxNumber()).isEmpty()) {
      need(owner.source(), "Tax number", Message.of("einvoice.need.aReverseNumber"));
    }
  }

  /** A line without code has words of its own. */
  private static boolean lacksGround(LineTax tax) {
    return tax.category() == TaxCategory.E && !tax.code().isEmpty() && tax.reason().isBlank();
  }

  private void ground(LineTax tax) {
    if (tax.exempt()) {
      need(owner.source(), "Exempt reason", Message.of("einvoice.need.theirGround"));
      return;
    }
    book.taxRates().stream()
        .filter(rate -> rate.code().equals(tax.code()) && rate.reason().isBlank())
        .findFirst()
        .map(TaxRate::source)
        .ifPresent(row -> need(row, "Reason", Message.of("einvoice.need.whyNoTax")));
  }

  private void setting(Setting setting, Message expected) {
    if (settings.text(setting).isBlank()) {
      need(setting, Message.literal(setting.title()), expected);
    }
  }

  private void owner(String value, String heading, Message expected) {
    if (value.isBlank()) {
      need(owner.source(), heading, expected);
    }
  }

  private void need(SourceRow row, String heading, Message expected) {
    add(row.at(heading), Message.literal(heading), expected);
  }

  private void need(Setting setting, Message what, Message expected) {
    add(settings.place(setting), what, expected);
  }

  private void add(CellRef cell, Message what, Message expected) {
    EInvoiceNeed need = new EInvoiceNeed(cell, what, expected);
    if (needs.stream().noneMatch(each -> each.cell().equals(cell) && each.what().equals(what))) {
      needs.add(need);
    }
  }
}
