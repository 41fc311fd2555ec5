package clenchbook.matching;

import java.util.List;

/**
 * Where every entry went: each is in exactly one of the lists.
 *
 * @param toAdd proposals, sure and unsure ones, in the order of the entries
 * @param unmatched left alone
 * @param alreadyThere held by Payments, or the second copy of an entry
 */
public record MatchResult(
    List<Proposal> toAdd, List<LeftEntry> unmatched, List<LeftEntry> alreadyThere) {
  /** Copies its lists. */
  public MatchResult {
    toAdd = List.copyOf(toAdd);
    unmatched = List.copyOf(unmatched);
    alreadyThere = List.copyOf(alreadyThere);
  }
}
