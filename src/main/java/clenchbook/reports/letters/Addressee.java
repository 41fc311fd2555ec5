package clenchbook.reports.letters;

import java.util.List;
import java.util.Optional;

/**
 * Whom a letter goes to.
 *
 * @param name the name an invoice is made out to
 * @param address the address, line by line; empty where the book gives none
 * @param taxNumber the owner's own tax number
 */
public record Addressee(String name, List<String> address, Optional<String> taxNumber) {
  /** Copies its list. */
  public Addressee {
    address = List.copyOf(address);
  }
}
