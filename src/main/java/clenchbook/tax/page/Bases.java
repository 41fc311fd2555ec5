package clenchbook.tax.page;

/** What a line may rest on, in any country. */
public final class Bases {
  /** Money that came or went. */
  public static final Wording CASH = Wording.of("cash", "tax.basis.cash");

  /** Bills, whenever they are paid. */
  public static final Wording INVOICED = Wording.of("invoiced", "tax.basis.invoiced");

  /** Bills, although the money was asked for. */
  public static final Wording INVOICED_WITHOUT_PAYMENTS =
      Wording.of("invoiced, because there is no Payments sheet", "tax.basis.noPayments");

  /** Other lines. */
  public static final Wording COMPUTED = Wording.of("computed", "tax.basis.computed");

  /** Other lines and a rate, for orientation. */
  public static final Wording ESTIMATE = Wording.of("estimate", "tax.basis.estimate");

  /** Sales on the day their money came. */
  public static final Wording WHEN_RECEIVED = Wording.of("when received", "tax.basis.whenReceived");

  /** Assets on the day they were sold. */
  public static final Wording WHEN_SOLD = Wording.of("when sold", "tax.basis.whenSold");

  /** Trips. */
  public static final Wording BY_DAY = Wording.of("by day driven", "tax.basis.byDay");

  /** Trips, and purchases beside them. */
  public static final Wording BY_DAY_AND_PAID =
      Wording.of("by day driven; the rest when paid", "tax.basis.byDayAndPaid");

  /** Goods used, at what they cost on average. */
  public static final Wording MOVING_AVERAGE =
      Wording.of("moving average", "tax.basis.movingAverage");

  private Bases() {}

  /**
   * The business share of what rests on something.
   *
   * @param cost what the whole rests on
   * @return the same, at the business share
   */
  public static Wording shared(Wording cost) {
    return Wording.of(cost.file() + ", at the business share", "tax.basis.shared", cost.said());
  }

  /**
   * A figure beside the lines that is also in one of them, or is not.
   *
   * @param basis what it rests on
   * @param counts whether it counts
   * @return both together
   */
  public static Wording counted(Wording basis, boolean counts) {
    return counts
        ? Wording.of(basis.file() + ", counted", "tax.basis.counted", basis.said())
        : Wording.of(basis.file() + ", not counted", "tax.basis.notCounted", basis.said());
  }
}
