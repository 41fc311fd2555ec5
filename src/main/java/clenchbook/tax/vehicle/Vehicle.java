package clenchbook.tax.vehicle;

import clenchbook.book.Asset;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Wording;
import clenchbook.tax.year.Regime;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The vehicle both ways: at the regime's money for a mile, and at what it cost. The mileage way
 * counts where the regime has one and the log has business miles; the other is shown beside it.
 *
 * @param mileage the year's mileage allowance, one item a trip
 * @param actual the business part of what was paid for the vehicle, one item a row
 * @param share the business share that the actual cost is taken at
 * @param shareBasis where the share comes from
 * @param byMileage whether the mileage way counts
 */
public record Vehicle(
    MileageAllowance mileage,
    List<LineItem> actual,
    BigDecimal share,
    Wording shareBasis,
    boolean byMileage) {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private static final Wording ALL_OF_IT =
      Wording.of("all of it; a preparer sets the share", "tax.share.all");
  private static final Wording BY_LOG =
      Wording.of("business distance over all distance of the log", "tax.share.log");
  private static final Wording BY_ASSETS =
      Wording.of("Business use % of the vehicle in Assets", "tax.share.assets");
  private static final Wording BY_DEFAULT =
      Wording.of("default: all of it, for want of odometer readings", "tax.share.default");

  /** The vehicle both ways, and which one counts. */
  public static Vehicle of(
      MileageAllowance mileage,
      MileageLog log,
      List<LineItem> rows,
      List<Asset> vehicles,
      Regime regime,
      MinorUnit unit) {
    Share share =
        regime.codes().vehicleShared()
            ? Share.of(log, vehicles)
            : new Share(BigDecimal.ONE, ALL_OF_IT);
    List<LineItem> actual = counted(rows, share.factor(), regime, unit);
    return new Vehicle(mileage, actual, share.factor(), share.basis(), !mileage.items().isEmpty());
  }

  /** A business share and where it comes from. */
  private record Share(BigDecimal factor, Wording basis) {
    public static Share of(MileageLog log, List<Asset> vehicles) {
      if (log.tellsShare()) {
        BigDecimal factor =
            log.business().divide(log.total(), MathContext.DECIMAL64).min(BigDecimal.ONE);
        return new Share(factor, BY_LOG);
      }
      Optional<BigDecimal> given =
          vehicles.stream().flatMap(asset -> asset.businessUsePercent().stream()).findFirst();
      return given
          .map(percent -> new Share(percent.divide(HUNDRED), BY_ASSETS))
          .orElseGet(() -> new Share(BigDecimal.ONE, BY_DEFAULT));
    }
  }

  private static List<LineItem> counted(
      List<LineItem> rows, BigDecimal factor, Regime regime, MinorUnit unit) {
    BigDecimal whole = unit.round(LineItem.sum(rows).multiply(factor));
    boolean weighable = rows.stream().allMatch(row -> row.net().signum() >= 0);
    List<BigDecimal> weights = rows.stream().map(LineItem::net).toList();
    List<BigDecimal> parts =
        weighable
            ? LargestRemainder.split(whole, weights, unit)
            : weights.stream().map(weight -> unit.round(weight.multiply(factor))).toList();
    List<LineItem> items = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      LineItem row = rows.get(i);
      items.add(
          new LineItem(
              regime.codes().vehicle(),
              row.sheet(),
              row.row(),
              row.date(),
              row.who(),
              parts.get(i),
              row.tax(),
              row.gross()));
    }
    return List.copyOf(items);
  }

  /** What counts on the vehicle's line, parking and tolls apart. */
  public List<LineItem> counted() {
    return byMileage ? mileage.items() : actual;
  }

  /**
   * The journal's view of the vehicle rows: the counted part where the actual cost counts, the rest
   * as private.
   */
  public List<LineItem> forJournal(List<LineItem> rows) {
    if (byMileage) {
      return rows;
    }
    List<LineItem> parts = new ArrayList<>(actual);
    for (int i = 0; i < rows.size(); i++) {
      LineItem row = rows.get(i);
      BigDecimal rest = row.net().subtract(actual.get(i).net());
      parts.add(
          new LineItem(
              "private",
              row.sheet(),
              row.row(),
              row.date(),
              row.who(),
              rest,
              row.tax(),
              row.gross()));
    }
    return parts;
  }
}
