package clenchbook.comparison;

import clenchbook.comparison.lostshoes.LostShoes;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.statistics.Proportion;
import java.util.Optional;

/** The shoes found lost, in plain words. */
final class LostShoesReading {
  private final Amounts amounts;

  LostShoesReading(CompareRates rates) {
    this.amounts = new Amounts(rates);
  }

  /** What the shoes found lost show. */
  String sentence(LostShoes lost) {
    String start = "Lost shoes, hot with cold: ";
    Optional<Proportion> hot = lost.hot().share();
    Optional<Proportion> cold = lost.cold().share();
    if (hot.isEmpty() || cold.isEmpty()) {
      String none = hot.isEmpty() ? "hot" : "cold";
      return start
          + "no shoe put on "
          + none
          + " was seen again in this period, so there is nothing to compare.";
    }
    return start
        + worn(lost.hot(), "hot", lost.horsesHot())
        + "; "
        + worn(lost.cold(), "cold", lost.horsesCold())
        + "; "
        + lostVerdict(lost);
  }

  private String worn(LostShoes.Tally tally, String method, int horses) {
    Proportion share = tally.share().orElseThrow();
    return "of "
        + amounts.number(tally.on(), 0)
        + " shoes put on "
        + method
        + " (on "
        + Numbers.count(horses, "horse", "horses")
        + ") "
        + amounts.percent(share.share())
        + " were lost before the next visit, most likely between "
        + amounts.percent(share.wilson().low())
        + " and "
        + amounts.percent(share.wilson().high());
  }

  private static String lostVerdict(LostShoes lost) {
    return switch (lost.verdict()) {
      case A_LOWER -> "hot-fitted shoes were lost less often.";
      case A_HIGHER -> "hot-fitted shoes were lost more often.";
      case NO_DIFFERENCE_SHOWN -> "which is lost less often, the book can't tell yet.";
      case NOT_ENOUGH_JOBS -> "that is too few to say anything.";
    };
  }
}
