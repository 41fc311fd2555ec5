package clenchbook.matching;

import clenchbook.matching.evidence.NameLevel;
import clenchbook.matching.evidence.NumberHow;
import java.util.Optional;

/**
 * How much each piece of evidence weighs: how often it is seen where an entry pays the invoice,
 * over how often it is seen by chance where it does not. The figures are judgements, held to
 * account by the generator of statements with known truth; docs/payments.md prints how often they
 * were right.
 */
final class Weights {
  /** One open invoice against all other reasons for money to come in. */
  static final double PRIOR = 0.05;

  /** Below this an entry is nobody's in particular. */
  static final double FAINT = 0.02;

  /** A second entry that pays the same invoice in full. */
  static final double AGAIN = 0.02;

  private static final double RARE = 0.004;
  private static final double NAMES_ANOTHER = 0.01;

  private Weights() {}

  static double number(Optional<NumberHow> how, boolean namesAnother) {
    if (how.isEmpty()) {
      return namesAnother ? NAMES_ANOTHER : 0.45;
    }
    return switch (how.get()) {
      case REFERENCE, EXACT -> 20_000;
      case LOOSE, SHORT -> 40;
      case SLIP -> 30;
    };
  }

  /**
   * Money of the owner for no invoice in particular. Who paid for the owner before may have other
   * reasons to pay the farrier.
   */
  static double accountAmount(NameLevel level, AmountFit fit, double frequency) {
    boolean owner = level != NameLevel.BEFORE && level != NameLevel.ELSEWHERE;
    return amount(fit, frequency, 1) * (owner || fit != AmountFit.NONE ? 1 : 0.1);
  }

  /** A number that names the owner, but an invoice that this money does not settle. */
  static double accountNumbered(boolean settled) {
    return settled ? 2_000 : 20;
  }

  /**
   * The amount's weight.
   *
   * @param fit how it fits
   * @param frequency which share of the money in has this very amount
   * @param ways in how many ways a sum could have come about
   */
  static double amount(AmountFit fit, double frequency, int ways) {
    double chance = Math.max(RARE, frequency);
    return switch (fit) {
      case EXACT -> 0.85 / chance;
      case SUM -> 0.4 / (chance * Math.max(1, ways));
      case BALANCE -> 0.5 / chance;
      case PART -> 0.06;
      case OVER -> 0.03;
      case NONE -> 0.5;
    };
  }

  /** The most that a reading may be sure of, by the kind of its evidence, in per cent. */
  static int cap(Optional<NumberHow> number, NameLevel name, AmountFit fit) {
    boolean fits = fit == AmountFit.EXACT || fit == AmountFit.SUM || fit == AmountFit.BALANCE;
    if (number.isPresent() && number.get().plain()) {
      return fits ? 99 : 95;
    }
    if (number.isPresent()) {
      return fits ? 95 : 80;
    }
    if (name == NameLevel.ONE_WORD || name == NameLevel.ELSEWHERE) {
      return fits ? 85 : 60;
    }
    if (!name.named()) {
      return 60;
    }
    return fits ? 97 : 75;
  }
}
