package clenchbook.statistics;

/**
 * One measured value.
 *
 * @param group what it shares with others of its kind, as a patient seen several times: values of
 *     one group need not be independent
 * @param stratum what makes it like others: only values of one stratum are compared
 * @param side the side it is on
 * @param value finite
 */
public record Observation(String group, String stratum, Side side, double value) {

  /** Refuses a value that is no finite number. */
  public Observation {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite value: " + value);
    }
  }
}
