package clenchbook.jobs;

import clenchbook.book.Book;
import clenchbook.book.HorseRow;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.book.Payment;
import clenchbook.book.Place;
import clenchbook.book.Visit;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The book's sheets by name, with one spelling for each name: that of its own sheet, else the first
 * one met in Horses, Visits, Payments.
 *
 * @param book the book
 * @param prices Work by name and date
 * @param materials Materials by item, size and date
 * @param tax Tax by code and date
 * @param horses Horses by name
 * @param owners Owners by key
 * @param places Places by key
 * @param former owners by the key of each earlier name
 * @param ownerSpelling owners' one spelling by key, earlier names leading to the one of now
 * @param placeSpelling places' one spelling by key
 */
public record BookIndex(
    Book book,
    PriceList prices,
    MaterialList materials,
    TaxList tax,
    HorseIndex horses,
    Map<String, Owner> owners,
    Map<String, Place> places,
    Map<String, Owner> former,
    Map<String, String> ownerSpelling,
    Map<String, String> placeSpelling) {

  /**
   * Indexes a book.
   *
   * @param written the book; its rows may name owners as they were called earlier
   * @return its index, whose book names them as they are called now
   */
  public static BookIndex of(Book written) {
    FormerNames former = FormerNames.of(written);
    Book book = former.current(written);
    Map<String, Owner> owners = new LinkedHashMap<>();
    book.owners().forEach(owner -> owners.putIfAbsent(Names.key(owner.name()), owner));
    Map<String, Place> places = new LinkedHashMap<>();
    book.places().forEach(place -> places.putIfAbsent(Names.key(place.name()), place));
    return new BookIndex(
        book,
        new PriceList(book.work()),
        new MaterialList(book.materials()),
        new TaxList(book.taxRates()),
        new HorseIndex(book.horses()),
        owners,
        places,
        former.owners(),
        ownerNames(book, former),
        placeNames(book));
  }

  private static Map<String, String> ownerNames(Book book, FormerNames former) {
    Map<String, String> names = new LinkedHashMap<>();
    book.owners().forEach(owner -> spell(names, owner.name()));
    former.owners().forEach((key, owner) -> names.putIfAbsent(key, ownName(names, owner)));
    for (HorseRow row : book.horses()) {
      spell(names, row.owner());
      spell(names, row.billTo());
    }
    for (Visit visit : book.visits()) {
      spell(names, visit.owner());
    }
    for (Payment payment : book.payments()) {
      spell(names, payment.owner());
    }
    return names;
  }

  private static String ownName(Map<String, String> names, Owner owner) {
    return names.getOrDefault(Names.key(owner.name()), owner.name());
  }

  private static Map<String, String> placeNames(Book book) {
    Map<String, String> names = new LinkedHashMap<>();
    book.places().forEach(place -> spell(names, place.name()));
    book.horses().forEach(row -> spell(names, row.place()));
    book.visits().forEach(visit -> spell(names, visit.place()));
    return names;
  }

  private static void spell(Map<String, String> names, String name) {
    if (!name.isEmpty()) {
      names.putIfAbsent(Names.key(name), name);
    }
  }

  /**
   * The one spelling of an owner.
   *
   * @param name as written, or an earlier name of theirs
   * @return as Owners spells it, else as first met
   */
  public String ownerName(String name) {
    return ownerSpelling.getOrDefault(Names.key(name), name);
  }

  /**
   * The one spelling of a place.
   *
   * @param name as written; empty stays empty
   * @return as Places spells it, else as first met
   */
  public String placeName(String name) {
    return placeSpelling.getOrDefault(Names.key(name), name);
  }

  /**
   * An owner's row.
   *
   * @param name the name, or an earlier one
   * @return its first row; empty when Owners does not know it
   */
  public Optional<Owner> owner(String name) {
    return Optional.ofNullable(owners.get(Names.key(ownerName(name))));
  }

  /**
   * A place's row.
   *
   * @param name the name
   * @return its first row; empty when Places does not know it
   */
  public Optional<Place> place(String name) {
    return Optional.ofNullable(places.get(Names.key(name)));
  }

  /**
   * The names of Owners.
   *
   * @return in row order
   */
  public Collection<String> ownerSheetNames() {
    return owners.values().stream().map(Owner::name).toList();
  }

  /**
   * The names of Places.
   *
   * @return in row order
   */
  public List<String> placeSheetNames() {
    return places.values().stream().map(Place::name).toList();
  }
}
