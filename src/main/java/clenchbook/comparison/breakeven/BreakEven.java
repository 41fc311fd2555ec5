package clenchbook.comparison.breakeven;

import clenchbook.comparison.questions.Question;
import clenchbook.statistics.Interval;
import clenchbook.texts.Message;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One break-even figure.
 *
 * @param question which question it belongs to
 * @param quantity its name in files
 * @param unit its unit
 * @param value empty where the book can't tell; positive infinity for never
 * @param interval its interval by drawing horses again; an infinite end is never
 * @param basis what it rests on, as files have it
 * @param restsOn the same for people
 */
public record BreakEven(
    Question question,
    String quantity,
    String unit,
    OptionalDouble value,
    Optional<Interval> interval,
    String basis,
    Message restsOn) {

  /** Name of the shoes a stop from which lighting the forge pays. */
  public static final String SHOES_PER_STOP = "shoes per stop";

  /** Name of the extra price at which a handmade set earns what keg earns. */
  public static final String EXTRA_PRICE = "extra price per set";

  /** Name of the making minutes a shoe at which it does so at today's price. */
  public static final String MAKING_MINUTES = "making minutes per shoe";

  /** Name of the making minutes a shoe takes now. */
  public static final String MAKING_NOW = "making minutes per shoe now";

  /** Its name for people. */
  public Message named() {
    return switch (quantity) {
      case SHOES_PER_STOP -> Message.of("comparison.breakEven.shoes");
      case EXTRA_PRICE -> Message.of("comparison.breakEven.price");
      case MAKING_MINUTES -> Message.of("comparison.breakEven.making");
      case MAKING_NOW -> Message.of("comparison.breakEven.makingNow");
      default -> throw new IllegalStateException("no name for " + quantity);
    };
  }

  /**
   * Its unit for people.
   *
   * @param sign the currency's sign
   */
  public Message unitTold(String sign) {
    return switch (unit) {
      case "shoes" -> Message.of("comparison.unit.shoes");
      case "minutes" -> Message.of("comparison.unit.minutes");
      default -> Message.literal(sign);
    };
  }

  /** Whether it never pays. */
  public boolean never() {
    return value.isPresent() && Double.isInfinite(value.getAsDouble());
  }

  /** Whether there is a number. */
  public boolean known() {
    return value.isPresent() && !never();
  }
}
