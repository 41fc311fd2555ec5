package clenchbook.jobs;

import clenchbook.book.Book;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Owners by the names that they had earlier. A name with a row of its own in Owners is nobody's
 * earlier one, and of two owners who both list it the upper row has it.
 *
 * @param owners the owner by the key of each earlier name
 */
record FormerNames(Map<String, Owner> owners) {

  static FormerNames of(Book book) {
    Set<String> own = new TreeSet<>();
    book.owners().forEach(owner -> own.add(Names.key(owner.name())));
    Map<String, Owner> owners = new LinkedHashMap<>();
    for (Owner owner : book.owners()) {
      for (String name : owner.formerly()) {
        if (!own.contains(Names.key(name))) {
          owners.putIfAbsent(Names.key(name), owner);
        }
      }
    }
    return new FormerNames(owners);
  }

  /** The book with every row naming owners as they are called now. */
  Book current(Book book) {
    if (owners.isEmpty()) {
      return book;
    }
    return book.with(
        book.visits().stream().map(visit -> visit.ownedBy(current(visit.owner()))).toList(),
        book.horses().stream()
            .map(row -> row.ownedBy(current(row.owner()), current(row.billTo())))
            .toList(),
        book.payments().stream().map(payment -> payment.by(current(payment.owner()))).toList());
  }

  private String current(String name) {
    Owner owner = owners.get(Names.key(name));
    return owner == null ? name : owner.name();
  }
}
