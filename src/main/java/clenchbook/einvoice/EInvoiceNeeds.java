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
    setting(Setting.BUSINESS_NAME, "the name of your business");
    setting(Setting.COUNTRY, "a country of two letters such as DE");
    if (settings.minorUnit().digits() > MOST_DECIMALS) {
      need(Setting.CURRENCY, "a currency of two decimals", "such a currency");
    }
    if (taxes.stream().anyMatch(tax -> tax.category() != TaxCategory.O)) {
      setting(Setting.TAX_NUMBER, "your tax number");
    }
    if (taxes.stream().anyMatch(tax -> tax.category() == TaxCategory.O)) {
      setting(Setting.REGISTRATION, "your registration, for lines outside the scope of tax");
    }
  }

  private void xrechnung() {
    setting(Setting.POSTCODE, "your postcode");
    setting(Setting.CITY, "your city");
    setting(Setting.CONTACT, "whom to ask");
    if (settings.text(Setting.PHONE).chars().filter(Character::isDigit).count() < 3) {
      need(Setting.PHONE, Setting.PHONE.title(), "a telephone number of three digits or more");
    }
    if (!mailbox(settings.text(Setting.EMAIL))) {
      need(Setting.EMAIL, Setting.EMAIL.title(), "your e-mail address");
    }
    owner(owner.postcode(), "Postcode", "their postcode");
    owner(owner.city(), "City", "their city");
    owner(
        owner.eInvoice().buyerReference(),
        "Buyer reference",
        "their reference, such as a Leitweg-ID");
    if (address(owner).isEmpty()) {
      need(owner.source(), "E-invoice address", "a mail address, or a number with its scheme");
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
      need(
          owner.source(),
          "Tax number",
          "for reverse charge a number that begins with the country's two letters");
    }
  }

  /** A line without code has words of its own. */
  private static boolean lacksGround(LineTax tax) {
    return tax.category() == TaxCategory.E && !tax.code().isEmpty() && tax.reason().isBlank();
  }

  private void ground(LineTax tax) {
    if (tax.exempt()) {
      need(owner.source(), "Exempt reason", "the ground of their exemption");
      return;
    }
    book.taxRates().stream()
        .filter(rate -> rate.code().equals(tax.code()) && rate.reason().isBlank())
        .findFirst()
        .map(TaxRate::source)
        .ifPresent(row -> need(row, "Reason", "why no tax is charged, in words or as a code"));
  }

  private void setting(Setting setting, String expected) {
    if (settings.text(setting).isBlank()) {
      need(setting, setting.title(), expected);
    }
  }

  private void owner(String value, String heading, String expected) {
    if (value.isBlank()) {
      need(owner.source(), heading, expected);
    }
  }

  private void need(SourceRow row, String heading, String expected) {
    add(row.at(heading), heading, expected);
  }

  private void need(Setting setting, String what, String expected) {
    add(settings.place(setting), what, expected);
  }

  private void add(CellRef cell, String what, String expected) {
    EInvoiceNeed need = new EInvoiceNeed(cell, what, expected);
    if (needs.stream().noneMatch(each -> each.cell().equals(cell) && each.what().equals(what))) {
      needs.add(need);
    }
  }
}
