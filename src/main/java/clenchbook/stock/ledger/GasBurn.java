package clenchbook.stock.ledger;

import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.Unit;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.PieceCost;
import clenchbook.jobs.StockKey;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How long the forge burned on each day, and the gas that explains.
 *
 * <p>Minutes are those of the jobs, those of making their shoes, and the setting-up of each stop
 * that had a hot job; kilograms are minutes times the burn rate of the settings.
 *
 * @param minutes forge minutes by day, days without any left out
 * @param kgPerHour the burn rate, kilograms an hour
 * @param shelf the one gas item that is counted in kilograms; empty when there is none or several
 * @param listCost its list cost per kilogram, zero when not given
 */
public record GasBurn(
    Map<LocalDate, BigDecimal> minutes,
    BigDecimal kgPerHour,
    Optional<StockKey> shelf,
    BigDecimal listCost) {

  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  /** Keeps the days in order. */
  public GasBurn {
    minutes = Collections.unmodifiableMap(new TreeMap<>(minutes));
  }

  /** Adds up the forge's minutes from one day to another, both inclusive. */
  public static GasBurn of(Jobs jobs, LocalDate first, LocalDate last) {
    Settings settings = jobs.index().book().settings();
    Map<LocalDate, BigDecimal> minutes = new TreeMap<>();
    TreeSet<String> lit = new TreeSet<>();
    for (Job job : jobs.between(first, last)) {
      if (!job.cancelled()) {
        BigDecimal burning = job.minutes().forge().minutes().add(job.minutes().makingForge());
        boolean newStop = job.hot() && lit.add(job.date() + "\n" + Names.key(job.place()));
        BigDecimal setUp = newStop ? settings.number(Setting.FORGE_SETUP_GAS_MIN) : BigDecimal.ZERO;
        minutes.merge(job.date(), burning.add(setUp), BigDecimal::add);
      }
    }
    minutes.values().removeIf(burned -> burned.signum() == 0);
    List<Material> gas =
        jobs.index().book().materials().stream()
            .filter(row -> row.kind() == MaterialKind.GAS && row.unit() == Unit.KG)
            .toList();
    Optional<StockKey> shelf = onlyShelf(gas);
    BigDecimal list =
        shelf
            .flatMap(key -> jobs.index().materials().find(key, last))
            .flatMap(PieceCost::list)
            .orElse(BigDecimal.ZERO);
    return new GasBurn(minutes, settings.gasBurnKgPerHour(), shelf, list);
  }

  private static Optional<StockKey> onlyShelf(List<Material> gas) {
    List<StockKey> shelves =
        gas.stream().map(row -> new StockKey(row.item(), row.size())).distinct().toList();
    return shelves.size() == 1 ? Optional.of(shelves.get(0)) : Optional.empty();
  }

  /** Gives all minutes added. */
  public BigDecimal totalMinutes() {
    return minutes.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Gives the kilograms that the burn rate explains, to 34 figures. */
  public BigDecimal explainedKg() {
    return kg(totalMinutes());
  }

  /**
   * Gives the burn rate that would explain an amount bought.
   *
   * @return kilograms an hour; empty when the forge did not burn
   */
  public Optional<BigDecimal> rateFor(BigDecimal kgBought) {
    BigDecimal burned = totalMinutes();
    return burned.signum() == 0
        ? Optional.empty()
        : Optional.of(kgBought.multiply(SIXTY).divide(burned, MathContext.DECIMAL128));
  }

  /** Gives the burn as uses of the gas shelf, one a day; none where there is no such shelf. */
  List<StockMovement.Used> uses() {
    return shelf
        .map(
            key ->
                minutes.entrySet().stream()
                    .map(e -> new StockMovement.Used(e.getKey(), key, kg(e.getValue()), listCost))
                    .toList())
        .orElse(List.of());
  }

  private BigDecimal kg(BigDecimal burned) {
    return burned.multiply(kgPerHour).divide(SIXTY, MathContext.DECIMAL128);
  }
}
