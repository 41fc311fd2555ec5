package clenchbook.matching.known;

import clenchbook.book.Payment;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the book and the register say, as far as bank entries are set against it.
 *
 * @param currency the book's currency
 * @param owners every owner
 * @param documents every document that is not void, in the order of their numbers
 * @param payments the rows of Payments
 * @param openingDate payments before it do not count; empty where the book gives none
 */
public record Ledger(
    String currency,
    List<KnownOwner> owners,
    List<KnownDocument> documents,
    List<Payment> payments,
    Optional<LocalDate> openingDate) {
  /** Copies its lists. */
  public Ledger {
    owners = List.copyOf(owners);
    documents = List.copyOf(documents);
    payments = List.copyOf(payments);
  }
}
