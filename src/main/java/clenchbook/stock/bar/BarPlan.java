package clenchbook.stock.bar;

import clenchbook.book.Material;
import clenchbook.book.Unit;
import clenchbook.jobs.PieceCost;
import clenchbook.jobs.StockKey;
import clenchbook.stock.cutting.CuttingOrder;
import clenchbook.stock.cutting.CuttingOrder.Piece;
import clenchbook.stock.cutting.CuttingPlan;
import clenchbook.stock.cutting.CuttingSolver;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What one kind of bar is needed for, and how to cut it.
 *
 * @param bar the bar's row of Materials
 * @param needs the lengths, longest first
 * @param tooLong those that no bar is long enough for
 * @param plan the cutting plan; empty for fewer than ten lengths or a bar whose length is not given
 * @param unitsPerMm how many of the plan's length units make a millimetre
 */
public record BarPlan(
    Material bar,
    List<BarNeed> needs,
    List<BarNeed> tooLong,
    Optional<CuttingPlan> plan,
    int unitsPerMm) {

  /** Below so many lengths a plan is not worth following. */
  static final int FEWEST_LENGTHS = 10;

  private static final int FINE = 100;
  private static final int COARSE = 10;
  private static final long MOST_FINE_STEPS = 60_000;

  /** Copies the lists. */
  public BarPlan {
    needs = List.copyOf(needs);
    tooLong = List.copyOf(tooLong);
  }

  /** Plans every bar that something is to be cut from, in order of item. */
  public static List<BarPlan> all(List<BarNeed> needs) {
    Map<StockKey, List<BarNeed>> byBar = new TreeMap<>();
    needs.forEach(
        need -> byBar.computeIfAbsent(need.barShelf(), key -> new ArrayList<>()).add(need));
    return byBar.values().stream().map(BarPlan::of).toList();
  }

  private static BarPlan of(Collection<BarNeed> all) {
    Material bar = all.iterator().next().bar();
    Optional<BigDecimal> barLength = bar.barLengthMm().filter(mm -> mm.signum() > 0);
    List<BarNeed> fitting = new ArrayList<>();
    List<BarNeed> tooLong = new ArrayList<>();
    for (BarNeed need : all) {
      boolean fits = barLength.map(mm -> mm.compareTo(need.lengthMm()) >= 0).orElse(true);
      (fits ? fitting : tooLong).add(need);
    }
    boolean worthIt = fitting.stream().mapToInt(BarNeed::count).sum() >= FEWEST_LENGTHS;
    if (barLength.isEmpty() || !worthIt) {
      return new BarPlan(bar, fitting, tooLong, Optional.empty(), FINE);
    }
    CuttingOrder fine = order(barLength.get(), fitting, FINE);
    boolean coarse = fine.steps() > MOST_FINE_STEPS;
    CuttingOrder order = coarse ? order(barLength.get(), fitting, COARSE) : fine;
    return new BarPlan(
        bar, fitting, tooLong, Optional.of(CuttingSolver.solve(order)), coarse ? COARSE : FINE);
  }

  /** Pieces and kerf are rounded up to the unit and the bar down, so that the plan can be cut. */
  private static CuttingOrder order(BigDecimal barMm, List<BarNeed> needs, int unitsPerMm) {
    Map<Long, Integer> tally = new TreeMap<>(Comparator.reverseOrder());
    long bar = units(barMm, unitsPerMm, RoundingMode.FLOOR);
    BigDecimal kerf = BigDecimal.ZERO;
    for (BarNeed need : needs) {
      long length = units(need.lengthMm(), unitsPerMm, RoundingMode.CEILING);
      tally.merge(Math.min(length, bar), need.count(), Integer::sum);
      kerf = kerf.max(need.cutMm());
    }
    List<Piece> pieces =
        tally.entrySet().stream().map(e -> new Piece(e.getKey(), e.getValue())).toList();
    return new CuttingOrder(bar, units(kerf, unitsPerMm, RoundingMode.CEILING), pieces);
  }

  private static long units(BigDecimal mm, int unitsPerMm, RoundingMode rounding) {
    return mm.multiply(BigDecimal.valueOf(unitsPerMm)).setScale(0, rounding).longValueExact();
  }

  /** Gives a length of the plan in millimetres, exact. */
  public BigDecimal mm(long units) {
    return BigDecimal.valueOf(units).divide(BigDecimal.valueOf(unitsPerMm));
  }

  /** Gives the number of shoes planned. */
  public int shoes() {
    return needs.stream().mapToInt(BarNeed::count).sum();
  }

  /** Gives how many millimetres of bar become no shoe, for each shoe, to 16 figures. */
  public BigDecimal wasteMmPerShoe() {
    return plan.map(cut -> mm(cut.waste()))
        .map(waste -> waste.divide(BigDecimal.valueOf(shoes()), MathContext.DECIMAL64))
        .orElse(BigDecimal.ZERO);
  }

  /**
   * Gives what the waste costs a shoe at the bar's list cost, if no offcut is used again.
   *
   * @return unrounded; empty without a plan or a list cost
   */
  public Optional<BigDecimal> wasteCostPerShoe() {
    Optional<BigDecimal> perBar =
        PieceCost.list(bar)
            .flatMap(
                cost ->
                    bar.unit() == Unit.KG
                        ? PieceCost.massOfBar(bar).map(cost::multiply)
                        : Optional.of(cost));
    return plan.flatMap(
        cut ->
            perBar.map(
                cost ->
                    cost.multiply(wasteMmPerShoe())
                        .divide(mm(cut.order().barLength()), MathContext.DECIMAL64)));
  }
}
