package clenchbook.reports.letters;

import java.util.List;
import java.util.Optional;

/**
 * Who writes the letter: the farrier's business as it stands on every document.
 *
 * @param name the business name; may be empty where the book gives none
 * @param address the address, line by line
 * @param phone telephone
 * @param email mail address
 * @param registration the farrier's registration or qualification
 * @param taxNumber tax number, only where the document may show it
 */
public record Letterhead(
    String name,
    List<String> address,
    Optional<String> phone,
    Optional<String> email,
    Optional<String> registration,
    Optional<String> taxNumber) {
  /** Copies its list. */
  public Letterhead {
    address = List.copyOf(address);
  }
}
