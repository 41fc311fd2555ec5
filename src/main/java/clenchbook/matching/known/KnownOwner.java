package clenchbook.matching.known;

import java.math.BigDecimal;
import java.util.List;

/**
 * An owner, as far as payments need.
 *
 * @param name the name in the book
 * @param otherNames the name on the invoice and earlier names; empty ones left out
 * @param balance what the owner owes by the payments entered; negative in the owner's favour
 */
public record KnownOwner(String name, List<String> otherNames, BigDecimal balance) {
  /** Copies its list. */
  public KnownOwner {
    otherNames = otherNames.stream().filter(other -> !other.isBlank()).toList();
  }
}
