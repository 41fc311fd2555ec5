package clenchbook.matching;

import clenchbook.matching.evidence.NameLevel;
import clenchbook.matching.evidence.NumberHow;
import clenchbook.texts.Message;
import java.util.List;
import java.util.Optional;

/**
 * One reading of an entry: what it may pay.
 *
 * @param owner whose money it is
 * @param shares what it pays; empty where no invoice in particular
 * @param number how the text names the invoices; empty where it does not
 * @param name how the payer's name speaks for the owner
 * @param fit how the amount fits
 * @param weight how much likelier the evidence is under this reading than under other money
 * @param cap the most it may be sure of, in per cent
 * @param against what speaks against it, as the end of a sentence; {@link Message#NONE} for nothing
 */
record Candidate(
    String owner,
    List<Share> shares,
    Optional<NumberHow> number,
    NameLevel name,
    AmountFit fit,
    double weight,
    int cap,
    Message against) {
  Candidate {
    shares = List.copyOf(shares);
  }

  /** Whether the shares use up what is open, so that no other entry can pay the same. */
  boolean settles() {
    return !shares.isEmpty() && fit != AmountFit.PART;
  }

  /** The same with less weight, because another entry pays the same invoice first. */
  Candidate lessLikely(double factor, Message why) {
    return new Candidate(owner, shares, number, name, fit, weight * factor, cap, why);
  }

  /** Whether only the amount speaks for it. */
  boolean amountAlone() {
    return number.isEmpty() && !name.named() && name != NameLevel.ONE_WORD;
  }
}
