package clenchbook.comparison.breakeven;

import java.util.List;

/**
 * What if an input were other than it is: factors on five inputs, 1 for as it is.
 *
 * @param name the input's name, empty for none
 * @param percent how far it is moved
 * @param steel on all materials of a job: shoes, bar, nails, extras
 * @param gas on the cost of gas
 * @param wage on the farrier's wage
 * @param minutes on minutes of work on horses and of making; not on driving or burning
 * @param price on what is charged
 */
public record Shift(
    String name, int percent, double steel, double gas, double wage, double minutes, double price) {

  /** Everything as it is. */
  static final Shift NONE = new Shift("", 0, 1, 1, 1, 1, 1);

  /** Each input a fifth down and a fifth up. */
  public static final List<Shift> A_FIFTH =
      List.of(
          new Shift("steel", -20, 0.8, 1, 1, 1, 1),
          new Shift("steel", 20, 1.2, 1, 1, 1, 1),
          new Shift("gas", -20, 1, 0.8, 1, 1, 1),
          new Shift("gas", 20, 1, 1.2, 1, 1, 1),
          new Shift("wage", -20, 1, 1, 0.8, 1, 1),
          new Shift("wage", 20, 1, 1, 1.2, 1, 1),
          new Shift("minutes", -20, 1, 1, 1, 0.8, 1),
          new Shift("minutes", 20, 1, 1, 1, 1.2, 1),
          new Shift("price", -20, 1, 1, 1, 1, 0.8),
          new Shift("price", 20, 1, 1, 1, 1, 1.2));
}
