package clenchbook.reports.month;

import clenchbook.billing.numbering.PaymentReferences;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.jobs.BookIndex;
import clenchbook.reports.letters.Addressee;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.HowToPay;
import clenchbook.reports.letters.Letterhead;
import clenchbook.reports.letters.PrintLocale;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Who writes to whom, and how to pay: the same on every letter of a book. */
final class LetterHeads {
  /** Countries whose addresses put the postcode after the city. */
  private static final Set<String> CITY_FIRST = Set.of("GB", "IE", "US", "CA", "AU", "NZ");

  private final BookIndex index;
  private final Settings settings;
  private final PaymentReferences references;

  LetterHeads(BookIndex index, PaymentReferences references) {
    this.index = index;
    this.settings = index.book().settings();
    this.references = references;
  }

  /**
   * The head of a letter.
   *
   * @param owner whom it goes to
   * @param number the document's number; empty for a statement
   * @param date its date
   * @return business, owner, number and date
   */
  DocumentHead of(String owner, String number, LocalDate date) {
    Optional<Owner> known = index.owner(owner);
    return new DocumentHead(
        letterhead(),
        new Addressee(
            known.map(Owner::invoiceName).filter(name -> !name.isEmpty()).orElse(owner),
            known
                .map(each -> address(each.address(), each.postcode(), each.city(), each.country()))
                .orElse(List.of()),
            known.map(Owner::taxNumber).filter(text -> !text.isEmpty())),
        number,
        date,
        locale(known),
        settings.currency());
  }

  /** The owner's language, and the country whose paper and money the business uses. */
  private PrintLocale locale(Optional<Owner> owner) {
    String language =
        owner
            .map(Owner::language)
            .filter(text -> !text.isEmpty())
            .orElseGet(() -> settings.text(Setting.LANGUAGE));
    return new PrintLocale(language.isEmpty() ? "en" : language, settings.text(Setting.COUNTRY));
  }

  private Letterhead letterhead() {
    Optional<String> taxNumber =
        settings.chargesTax() ? given(Setting.TAX_NUMBER) : Optional.empty();
    return new Letterhead(
        settings.text(Setting.BUSINESS_NAME),
        address(
            settings.text(Setting.ADDRESS),
            settings.text(Setting.POSTCODE),
            settings.text(Setting.CITY),
            ""),
        given(Setting.PHONE),
        given(Setting.EMAIL),
        given(Setting.REGISTRATION),
        taxNumber);
  }

  /**
   * How to pay.
   *
   * @param number the document's number; empty for a statement
   * @return the ways, and the reference where it is not the number itself
   */
  HowToPay howToPay(String number) {
    return new HowToPay(
        given(Setting.PAYMENT_TEXT),
        given(Setting.IBAN),
        given(Setting.BIC),
        given(Setting.PAYMENT_LINK).filter(link -> link.startsWith("https://")),
        references.of(number));
  }

  private Optional<String> given(Setting setting) {
    return Optional.of(settings.text(setting)).filter(text -> !text.isEmpty());
  }

  /** The address, with postcode and city beneath where it does not hold them already. */
  private List<String> address(String address, String postcode, String city, String country) {
    List<String> lines = new ArrayList<>(lines(address));
    String text = Names.key(address);
    boolean there = text.contains(Names.key(postcode)) && text.contains(Names.key(city));
    if (!there) {
      String land = country.isEmpty() ? settings.text(Setting.COUNTRY) : country;
      lines.addAll(place(postcode, city, land));
    }
    return lines;
  }

  /** As the country's post wants it; common practice, no source. */
  private static List<String> place(String postcode, String city, String country) {
    boolean after = CITY_FIRST.contains(country);
    Stream<String> parts = after ? Stream.of(city, postcode) : Stream.of(postcode, city);
    List<String> given = parts.filter(part -> !part.isBlank()).toList();
    return country.equals("GB") ? given : List.of(String.join(" ", given));
  }

  /** Lines of an address: by line breaks, or by commas where it stands on one line. */
  static List<String> lines(String address) {
    String separator = address.contains("\n") ? "\n" : ",";
    return Stream.of(address.split(separator))
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .toList();
  }
}
