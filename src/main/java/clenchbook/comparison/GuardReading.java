package clenchbook.comparison;

import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.reports.blocks.FigureText;
import clenchbook.statistics.EffectsModel;
import clenchbook.texts.Message;
import java.util.List;
import java.util.Optional;

/** The second way of working it out, each horse set against itself, in plain words. */
final class GuardReading {
  private final Amounts amounts;
  private final FigureText text;

  GuardReading(CompareRates rates) {
    this.amounts = new Amounts(rates);
    this.text = rates.text();
  }

  /** What the second way says of it; empty where both agree. */
  Optional<String> guard(Comparison comparison) {
    if (!comparison.enough()) {
      return Optional.empty();
    }
    return switch (comparison.agreement()) {
      case AGREE -> Optional.empty();
      case NOT_TRIED -> Optional.empty();
      case OTHER_SIGN, INTERVALS_PART -> Optional.of(disagree(comparison));
    };
  }

  private String disagree(Comparison comparison) {
    EffectsModel.Answer guard = comparison.guard().orElseThrow();
    Measure measure = comparison.measure();
    double first = comparison.estimate().orElseThrow().difference();
    return text.say(
        disagreeKey(comparison),
        Reading.title(comparison),
        amounts.signed(measure, first),
        amounts.signed(measure, guard.difference()),
        guard.groupsOnBothSides());
  }

  private static String disagreeKey(Comparison comparison) {
    boolean chance = bothHoldZero(comparison);
    if (comparison.agreement() == Comparison.Agreement.OTHER_SIGN) {
      return chance ? "comparison.second.oppositeByChance" : "comparison.second.opposite";
    }
    return chance ? "comparison.second.apartByChance" : "comparison.second.apart";
  }

  private static boolean bothHoldZero(Comparison comparison) {
    boolean first = comparison.wider().map(each -> each.holds(0)).orElse(false);
    boolean second =
        comparison
            .guard()
            .flatMap(EffectsModel.Answer::interval)
            .map(each -> each.holds(0))
            .orElse(false);
    return first && second;
  }

  /** Which measures the second way agrees on, and which it can't be tried on; empty for neither. */
  Optional<String> guards(List<Comparison> ofOneQuestion) {
    List<Comparison> enough = ofOneQuestion.stream().filter(Comparison::enough).toList();
    List<Message> agree = measures(enough, Comparison.Agreement.AGREE);
    List<Message> untried = measures(enough, Comparison.Agreement.NOT_TRIED);
    if (agree.isEmpty() && untried.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        untried.isEmpty()
            ? text.say("comparison.second.agrees", agree)
            : agree.isEmpty()
                ? text.say("comparison.second.untried", untried)
                : text.say("comparison.second.agreesAndUntried", agree, untried));
  }

  private static List<Message> measures(List<Comparison> some, Comparison.Agreement agreement) {
    return some.stream()
        .filter(each -> each.agreement() == agreement)
        .map(each -> each.measure().told())
        .toList();
  }
}
