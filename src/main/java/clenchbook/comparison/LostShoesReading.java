package clenchbook.comparison;

import clenchbook.comparison.lostshoes.LostShoes;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.reports.blocks.FigureText;
import clenchbook.statistics.Proportion;
import clenchbook.texts.Message;
import java.math.RoundingMode;

/** The shoes found lost, in plain words. */
final class LostShoesReading {
  private final Amounts amounts;
  private final FigureText text;

  LostShoesReading(CompareRates rates) {
    this.amounts = new Amounts(rates);
    this.text = rates.text();
  }

  /** What the shoes found lost show. */
  String sentence(LostShoes lost) {
    if (lost.hot().share().isEmpty()) {
      return text.say("comparison.lost.noneHot");
    }
    if (lost.cold().share().isEmpty()) {
      return text.say("comparison.lost.noneCold");
    }
    return text.say(
        Message.of(
            verdictKey(lost),
            worn("comparison.lost.hot", lost.hot(), lost.horsesHot()),
            worn("comparison.lost.cold", lost.cold(), lost.horsesCold())));
  }

  private Message worn(String key, LostShoes.Tally tally, int horses) {
    Proportion share = tally.share().orElseThrow();
    return Message.of(
        key,
        Numbers.filed(tally.on()).setScale(0, RoundingMode.HALF_UP).longValueExact(),
        horses,
        amounts.percent(share.share()),
        amounts.percent(share.wilson().low()),
        amounts.percent(share.wilson().high()));
  }

  private static String verdictKey(LostShoes lost) {
    return switch (lost.verdict()) {
      case A_LOWER -> "comparison.lost.less";
      case A_HIGHER -> "comparison.lost.more";
      case NO_DIFFERENCE_SHOWN -> "comparison.lost.untold";
      case NOT_ENOUGH_JOBS -> "comparison.lost.few";
    };
  }
}
