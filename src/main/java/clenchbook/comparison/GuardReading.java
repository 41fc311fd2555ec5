package clenchbook.comparison;

import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.statistics.EffectsModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The second way of working it out, each horse set against itself, in plain words. */
final class GuardReading {
  private final Amounts amounts;

  GuardReading(CompareRates rates) {
    this.amounts = new Amounts(rates);
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
    boolean sign = comparison.agreement() == Comparison.Agreement.OTHER_SIGN;
    return Reading.start(comparison)
        + "the two ways of reckoning do not agree: like with like gives "
        + amounts.signed(measure, first)
        + ", each horse set against itself gives "
        + amounts.signed(measure, guard.difference())
        + (sign ? "" : ", and their intervals have nothing in common")
        + (bothHoldZero(comparison) ? "; both are well within what chance can do" : "")
        + ". Trust neither until there are more horses shod both ways ("
        + guard.groupsOnBothSides()
        + " so far).";
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
    String agree = measures(enough, Comparison.Agreement.AGREE);
    String untried = measures(enough, Comparison.Agreement.NOT_TRIED);
    List<String> parts = new ArrayList<>();
    if (!agree.isEmpty()) {
      parts.add("agrees on " + agree);
    }
    if (!untried.isEmpty()) {
      parts.add("could not be tried on " + untried + ", since too few horses were shod both ways");
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The second way, which sets each horse against itself, "
                + String.join("; it ", parts)
                + ".");
  }

  private static String measures(List<Comparison> some, Comparison.Agreement agreement) {
    return some.stream()
        .filter(each -> each.agreement() == agreement)
        .map(each -> each.measure().title())
        .collect(Collectors.joining(", "));
  }
}
