package clenchbook.delivery;

/** Hears how a delivery goes on, to show it. */
@FunctionalInterface
public interface DeliveryListener {
  /**
   * One mail came to an end, or is tried again later.
   *
   * @param outcome what became of it so far
   * @param done how many mails have come to an end
   * @param all how many there are
   */
  void heard(DeliveryOutcome outcome, int done, int all);
}
