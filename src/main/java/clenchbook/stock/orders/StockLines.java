package clenchbook.stock.orders;

import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.Unit;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.PieceCost;
import clenchbook.jobs.StockKey;
import clenchbook.stock.ledger.Quantity;
import clenchbook.stock.ledger.ShelfMonth;
import clenchbook.stock.ledger.StockLedger;
import clenchbook.stock.ledger.StockMovement;
import clenchbook.stock.ledger.StockMovement.Bought;
import clenchbook.stock.ledger.StockReplay;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Puts the lines of a month together: movement, use, reorder point, order. */
public final class StockLines {

  private static final BigDecimal WEEK = BigDecimal.valueOf(7);
  private static final BigDecimal WEEKS_A_YEAR = BigDecimal.valueOf(52);

  /** An order takes a quarter of an hour to place: common practice, no source. */
  private static final BigDecimal ORDER_HOURS = new BigDecimal("0.25");

  /** Keeping stock costs a quarter of its price a year: common practice, no source. */
  private static final BigDecimal HOLDING_SHARE = new BigDecimal("0.25");

  private final Jobs jobs;
  private final Settings settings;
  private final LocalDate end;
  private final int intervalDays;
  private final Map<StockKey, WeeklyUse> uses;
  private final Map<StockKey, String> sellers = new TreeMap<>();

  private StockLines(Jobs jobs, List<StockMovement> movements, LocalDate end, int intervalDays) {
    this.jobs = jobs;
    this.settings = jobs.index().book().settings();
    this.end = end;
    this.intervalDays = intervalDays;
    this.uses = WeeklyUse.of(movements, firstVisit(jobs, end), end);
    for (StockMovement movement : movements) {
      if (movement instanceof Bought bought && !bought.supplier().isEmpty()) {
        sellers.put(bought.shelf(), bought.supplier()); // the last one stays
      }
    }
  }

  /**
   * Makes the lines, in order of item and size.
   *
   * @param intervalDays the usual days from shoeing to shoeing
   */
  public static List<StockLine> of(
      Jobs jobs, List<StockMovement> movements, YearMonth month, int intervalDays) {
    StockLines lines = new StockLines(jobs, movements, month.atEndOfMonth(), intervalDays);
    List<StockKey> shelves =
        jobs.index().book().materials().stream()
            .map(row -> jobs.index().materials().shelf(new StockKey(row.item(), row.size())))
            .toList();
    return StockReplay.month(movements, shelves, month, lines.settings.minorUnit()).stream()
        .map(lines::line)
        .toList();
  }

  private static LocalDate firstVisit(Jobs jobs, LocalDate end) {
    return jobs.all().stream().map(Job::date).min(LocalDate::compareTo).orElse(end.plusDays(1));
  }

  private StockLine line(ShelfMonth month) {
    StockKey shelf = month.shelf();
    Optional<Material> row =
        jobs.index().materials().find(shelf, end).or(() -> jobs.index().materials().any(shelf));
    String unit = unit(row);
    WeeklyUse use = uses.getOrDefault(shelf, WeeklyUse.UNKNOWN);
    BigDecimal intervalUse =
        use.mean().multiply(BigDecimal.valueOf(intervalDays)).divide(WEEK, MathContext.DECIMAL64);
    boolean made = row.map(StockLines::madeByHand).orElse(false);
    Optional<BigDecimal> given = row.flatMap(Material::reorderAt);
    Optional<BigDecimal> reorder =
        made ? Optional.empty() : given.or(() -> Optional.of(reorder(use, unit)));
    BigDecimal pack = pack(row);
    BigDecimal order =
        reorder
            .filter(point -> month.priced())
            .map(point -> OrderRule.order(month.closing(), point, intervalUse, pack))
            .orElse(BigDecimal.ZERO);
    BigDecimal unitCost = unitCost(month, row);
    return new StockLine(
        month,
        row,
        unit,
        use,
        intervalUse,
        reorder,
        given.isPresent() ? Basis.STANDARD : Basis.MEASURED,
        order,
        pack,
        made ? Optional.empty() : economic(use, unitCost),
        unitCost,
        orderCost(row, order, pack, unitCost),
        row.map(Material::supplier)
            .filter(name -> !name.isEmpty())
            .orElse(sellers.getOrDefault(shelf, "")));
  }

  private BigDecimal reorder(WeeklyUse use, String unit) {
    BigDecimal leadWeeks = settings.number(Setting.LEAD_DAYS).divide(WEEK, MathContext.DECIMAL64);
    return Quantity.up(OrderRule.reorderPoint(use, leadWeeks), unit.equals("piece"));
  }

  static boolean madeByHand(Material row) {
    return row.kind() == MaterialKind.HANDMADE || !row.bar().isEmpty();
  }

  private static String unit(Optional<Material> row) {
    boolean weighed =
        row.filter(m -> m.unit() == Unit.KG)
            .filter(m -> m.kind() == MaterialKind.BAR || m.kind() == MaterialKind.GAS)
            .isPresent();
    boolean bar = row.map(Material::kind).filter(MaterialKind.BAR::equals).isPresent();
    return weighed ? "kg" : bar ? "bar" : "piece";
  }

  /**
   * What one pack holds, or the least that is sold: a whole bar, a pair of what comes in pairs and
   * of shoes (common practice, no source), one of anything else.
   */
  private static BigDecimal pack(Optional<Material> row) {
    Optional<BigDecimal> perPack = row.flatMap(Material::perPack).filter(n -> n.signum() > 0);
    if (perPack.isPresent()) {
      return perPack.get();
    }
    Optional<BigDecimal> bar =
        row.filter(m -> m.kind() == MaterialKind.BAR && m.unit() == Unit.KG)
            .flatMap(PieceCost::massOfBar);
    boolean pair = row.filter(m -> m.unit() == Unit.PAIR || m.kind().shoe()).isPresent();
    return bar.orElse(pair ? BigDecimal.valueOf(2) : BigDecimal.ONE);
  }

  private static BigDecimal unitCost(ShelfMonth month, Optional<Material> row) {
    return row.flatMap(PieceCost::list)
        .orElseGet(
            () ->
                month.closing().signum() == 0
                    ? BigDecimal.ZERO
                    : month.average().closing().divide(month.closing(), MathContext.DECIMAL64));
  }

  private BigDecimal orderCost(
      Optional<Material> row, BigDecimal order, BigDecimal pack, BigDecimal unitCost) {
    BigDecimal packs = order.divide(pack, MathContext.DECIMAL64);
    boolean inPacks = row.flatMap(Material::perPack).isPresent();
    BigDecimal cost =
        row.flatMap(Material::packCost)
            .filter(price -> inPacks)
            .map(packs::multiply)
            .orElse(order.multiply(unitCost));
    return settings.minorUnit().round(StockLedger.settled(cost));
  }

  private Optional<BigDecimal> economic(WeeklyUse use, BigDecimal unitCost) {
    return OrderRule.economicQuantity(
        use.mean().multiply(WEEKS_A_YEAR),
        settings.number(Setting.HOURLY_WAGE).multiply(ORDER_HOURS),
        unitCost.multiply(HOLDING_SHARE));
  }
}
