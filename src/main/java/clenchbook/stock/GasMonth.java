package clenchbook.stock;

import clenchbook.book.Material;
import clenchbook.book.MaterialKind;
import clenchbook.book.Purchase;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.Unit;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.PieceCost;
import clenchbook.jobs.StockKey;
import clenchbook.stock.ledger.GasBurn;
import clenchbook.texts.Message;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Gas bought in a period against what the burn rate explains.
 *
 * <p>Gas bought by the kilogram counts as weighed. Any other purchase of a gas item, and any
 * expense whose Category holds gas or propane (but not gasoline), is turned into kilograms by the
 * settings' gas cost; without one it can't be counted.
 *
 * @param period the period's name, such as {@code 2026-10} or {@code twelve months}
 * @param name the period's name on the pages
 * @param boughtKg kilograms bought, to 34 figures
 * @param basis measured where all of it was weighed, default where money was turned into kilograms
 * @param uncounted how many purchases could not be turned into kilograms
 * @param burn how long the forge burned
 * @param burnBasis measured where Settings gives the burn rate, else default
 */
public record GasMonth(
    String period,
    Message name,
    BigDecimal boughtKg,
    Basis basis,
    int uncounted,
    GasBurn burn,
    Basis burnBasis) {

  /** Adds up a period that bears the same name everywhere, both days inclusive. */
  static GasMonth of(Jobs jobs, String period, LocalDate first, LocalDate last) {
    return of(jobs, period, Message.literal(period), first, last);
  }

  /** Adds up the twelve months that end with a month. */
  static GasMonth ofTwelve(Jobs jobs, YearMonth last) {
    return of(
        jobs,
        "twelve months",
        Message.of("stock.gas.twelveMonths"),
        last.minusMonths(11).atDay(1),
        last.atEndOfMonth());
  }

  private static GasMonth of(
      Jobs jobs, String period, Message name, LocalDate first, LocalDate last) {
    BigDecimal kg = BigDecimal.ZERO;
    Basis basis = Basis.MEASURED;
    int uncounted = 0;
    for (Purchase purchase : gasPurchases(jobs, first, last)) {
      Optional<BigDecimal> weighed = weighed(jobs, purchase);
      Optional<BigDecimal> counted = weighed.or(() -> byCost(jobs, purchase));
      basis = weighed.isPresent() ? basis : Basis.DEFAULT;
      kg = kg.add(counted.orElse(BigDecimal.ZERO));
      uncounted += counted.isPresent() ? 0 : 1;
    }
    Settings settings = jobs.index().book().settings();
    boolean given = settings.isGiven(Setting.GAS_BURN_KG) || settings.isGiven(Setting.GAS_BURN_LB);
    return new GasMonth(
        period,
        name,
        kg,
        basis,
        uncounted,
        GasBurn.of(jobs, first, last),
        given ? Basis.MEASURED : Basis.DEFAULT);
  }

  /** Gives bought less explained, in kilograms; above zero where more was bought than explained. */
  public BigDecimal differenceKg() {
    return boughtKg.subtract(burn.explainedKg());
  }

  /** Says whether there is anything to say: gas bought or a forge lit. */
  public boolean told() {
    return boughtKg.signum() != 0 || uncounted > 0 || burn.totalMinutes().signum() != 0;
  }

  private static List<Purchase> gasPurchases(Jobs jobs, LocalDate first, LocalDate last) {
    return jobs.index().book().purchases().stream()
        .filter(row -> !row.date().isBefore(first) && !row.date().isAfter(last))
        .filter(row -> row.item().isEmpty() ? gasCategory(row.category()) : gasItem(jobs, row))
        .toList();
  }

  private static boolean gasCategory(String category) {
    String words = category.toLowerCase(Locale.ROOT);
    return words.contains("propane") || words.replace("gasoline", "").contains("gas");
  }

  private static boolean gasItem(Jobs jobs, Purchase purchase) {
    return material(jobs, purchase).filter(row -> row.kind() == MaterialKind.GAS).isPresent();
  }

  private static Optional<Material> material(Jobs jobs, Purchase purchase) {
    return jobs.index()
        .materials()
        .findKey(purchase.item(), purchase.size())
        .map(key -> jobs.index().materials().shelf(key))
        .flatMap(shelf -> row(jobs, shelf, purchase.date()));
  }

  private static Optional<Material> row(Jobs jobs, StockKey shelf, LocalDate day) {
    return jobs.index().materials().find(shelf, day).or(() -> jobs.index().materials().any(shelf));
  }

  private static Optional<BigDecimal> weighed(Jobs jobs, Purchase purchase) {
    if (purchase.unit() == Unit.KG) {
      return Optional.of(purchase.quantity().orElse(BigDecimal.ONE));
    }
    return material(jobs, purchase)
        .filter(row -> row.unit() == Unit.KG)
        .flatMap(row -> PieceCost.pieces(purchase, row));
  }

  private static Optional<BigDecimal> byCost(Jobs jobs, Purchase purchase) {
    Settings settings = jobs.index().book().settings();
    BigDecimal perKg = settings.gasCostPerKg();
    BigDecimal paid = settings.inputTaxRecovered() ? purchase.netAmount() : purchase.grossAmount();
    return perKg.signum() == 0
        ? Optional.empty()
        : Optional.of(paid.divide(perKg, MathContext.DECIMAL128));
  }
}
