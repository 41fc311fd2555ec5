package clenchbook.tax.year;

/**
 * The tax regime the summary is made for, as far as the figures need to know it: its word, which is
 * also the folder of its rate tables, and the codes of the lines that every regime has.
 *
 * @param word the word of the setting and of the first column of the summary, as {@code us}
 * @param lines the subject of the table of its lines or boxes, as {@code schedule-c}
 * @param codes its codes for what every regime has a line for
 */
public record Regime(String word, String lines, Codes codes) {

  /**
   * The codes of lines that every regime has.
   *
   * @param work income from work done
   * @param tips tips
   * @param refunds money given back
   * @param refundsApart whether refunds stand as a positive amount on a line that is taken away
   * @param goods goods, on the cash basis
   * @param goodsUsed goods, on the invoiced basis
   * @param vehicle the vehicle
   * @param vehicleShared whether the actual cost of the vehicle is cut to its business share
   */
  public record Codes(
      String work,
      String tips,
      String refunds,
      boolean refundsApart,
      String goods,
      String goodsUsed,
      String vehicle,
      boolean vehicleShared) {

    /** The code of the line on which goods count. */
    public String goods(TaxBasis basis) {
      return basis.cashCost() ? goods : goodsUsed;
    }
  }

  /** The table of its lines or boxes. */
  public String lineTable() {
    return table(lines);
  }

  /** One of its other tables, as {@code us/mileage}. */
  public String table(String subject) {
    return word + "/" + subject;
  }
}
