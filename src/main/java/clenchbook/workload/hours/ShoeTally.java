package clenchbook.workload.hours;

/**
 * Shoes nailed on, by metal and shaping, and the shoes made for them.
 *
 * @param hotSteel keg and handmade shoes shaped hot; a shoe of unknown kind counts as steel
 * @param coldSteel keg and handmade shoes shaped cold
 * @param hotAluminium aluminium shoes that the book says were shaped hot
 * @param coldAluminium aluminium shoes shaped cold
 * @param unshaped shoes nailed on without shaping
 * @param made new handmade shoes
 * @param hotSteelMinutes minutes shaping the hot steel ones
 * @param coldSteelMinutes minutes shaping the cold steel ones
 */
public record ShoeTally(
    double hotSteel,
    double coldSteel,
    double hotAluminium,
    double coldAluminium,
    double unshaped,
    double made,
    double hotSteelMinutes,
    double coldSteelMinutes) {

  /** No shoes. */
  public static final ShoeTally NONE = new ShoeTally(0, 0, 0, 0, 0, 0, 0, 0);

  /**
   * Both together.
   *
   * @param other more shoes
   * @return the sums
   */
  public ShoeTally plus(ShoeTally other) {
    return new ShoeTally(
        hotSteel + other.hotSteel,
        coldSteel + other.coldSteel,
        hotAluminium + other.hotAluminium,
        coldAluminium + other.coldAluminium,
        unshaped + other.unshaped,
        made + other.made,
        hotSteelMinutes + other.hotSteelMinutes,
        coldSteelMinutes + other.coldSteelMinutes);
  }

  /**
   * Shoes nailed on.
   *
   * @return a whole number
   */
  public double nailed() {
    return hotSteel + coldSteel + hotAluminium + coldAluminium + unshaped;
  }

  /**
   * Shoes shaped hot, of either metal.
   *
   * @return a whole number
   */
  public double hot() {
    return hotSteel + hotAluminium;
  }

  /**
   * Shoes shaped cold, of either metal.
   *
   * @return a whole number
   */
  public double cold() {
    return coldSteel + coldAluminium;
  }
}
