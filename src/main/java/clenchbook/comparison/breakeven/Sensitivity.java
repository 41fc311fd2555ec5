package clenchbook.comparison.breakeven;

import clenchbook.comparison.questions.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * How a break-even figure moves when one input moves by a fifth.
 *
 * @param input steel, gas, wage, minutes or price
 * @param percent −20 or 20
 * @param question which question
 * @param quantity which figure
 * @param unit its unit
 * @param value the figure then; infinite for never, empty where the book can't tell
 * @param today the figure as it is
 */
public record Sensitivity(
    String input,
    int percent,
    Question question,
    String quantity,
    String unit,
    OptionalDouble value,
    OptionalDouble today) {

  /** Name of what the forge brings at the book's average hot stop. */
  public static final String GAIN = "gain of the forge per stop";

  /** The change, empty where either figure is unknown or never. */
  public OptionalDouble change() {
    boolean known =
        value.isPresent()
            && today.isPresent()
            && Double.isFinite(value.getAsDouble())
            && Double.isFinite(today.getAsDouble());
    return known
        ? OptionalDouble.of(value.getAsDouble() - today.getAsDouble())
        : OptionalDouble.empty();
  }

  /** All figures under all shifts. */
  public static List<Sensitivity> of(
      ForgeBreakEven forge, HandmadeBreakEven handmade, int stopShoes) {
    List<Sensitivity> all = new ArrayList<>();
    for (Shift shift : Shift.A_FIFTH) {
      if (forge.enough()) {
        int[] once = forge.asItIs();
        Question hot = Question.HOT_WITH_COLD;
        all.add(
            one(shift, hot, BreakEven.SHOES_PER_STOP, "shoes", at -> forge.shoesPerStop(once, at)));
        all.add(one(shift, hot, GAIN, "money", at -> forge.gain(stopShoes, once, at)));
      }
      if (handmade.enough()) {
        int[] once = handmade.asItIs();
        Question made = Question.HANDMADE_WITH_KEG;
        all.add(
            one(shift, made, BreakEven.EXTRA_PRICE, "money", at -> handmade.extraPrice(once, at)));
        all.add(
            one(
                shift,
                made,
                BreakEven.MAKING_MINUTES,
                "minutes",
                at -> handmade.makingMinutes(once, at)));
      }
    }
    return List.copyOf(all);
  }

  /** A figure under a shift, beside the same figure as things are. */
  private static Sensitivity one(
      Shift shift, Question question, String quantity, String unit, ToDoubleFunction<Shift> value) {
    return new Sensitivity(
        shift.name(),
        shift.percent(),
        question,
        quantity,
        unit,
        known(value.applyAsDouble(shift)),
        known(value.applyAsDouble(Shift.NONE)));
  }

  private static OptionalDouble known(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
