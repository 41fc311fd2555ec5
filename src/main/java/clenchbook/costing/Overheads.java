package clenchbook.costing;

import clenchbook.book.Purchase;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.Trip;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The year's overheads and what a minute of the farrier's time bears of them.
 *
 * @param yearly overheads a year, in the currency
 * @param basis measured when they come from the book, standard when the setting gives them
 * @param months the months of the twelve that the book covers; empty when the setting gives them
 * @param perMinute yearly overheads per minute of the year's hours, to 34 figures
 */
public record Overheads(
    BigDecimal yearly, Basis basis, List<YearMonth> months, BigDecimal perMinute) {
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
  private static final List<String> BORNE_ELSEWHERE =
      List.of("gas", "propane", "vehicle", "asset", "private");

  /** Copies its list. */
  public Overheads {
    months = List.copyOf(months);
  }

  /**
   * The overheads in force for a run.
   *
   * @param jobs all jobs of the book
   * @param last the last day of the run's period; the twelve months end with it
   * @return the setting's figure, else the book's expenses of twelve months that no job bears
   *     already, plus business trips on days without visits at the vehicle's cost
   */
  public static Overheads of(Jobs jobs, LocalDate last) {
    Settings settings = jobs.index().book().settings();
    if (settings.isGiven(Setting.YEARLY_OVERHEADS)) {
      return with(settings, settings.number(Setting.YEARLY_OVERHEADS), Basis.STANDARD, List.of());
    }
    LocalDate first = YearMonth.from(last).minusMonths(11).atDay(1);
    List<Purchase> expenses =
        jobs.index().book().purchases().stream()
            .filter(purchase -> within(purchase.date(), first, last) && overhead(purchase))
            .toList();
    BigDecimal bought =
        expenses.stream()
            .map(p -> settings.inputTaxRecovered() ? p.netAmount() : p.grossAmount())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal driven =
        idleTrips(jobs, first, last).multiply(settings.number(Setting.VEHICLE_COST));
    Basis basis = expenses.isEmpty() && driven.signum() == 0 ? Basis.DEFAULT : Basis.MEASURED;
    return with(settings, bought.add(driven), basis, covered(expenses));
  }

  private static Overheads with(
      Settings settings, BigDecimal yearly, Basis basis, List<YearMonth> months) {
    BigDecimal minutes = settings.number(Setting.HOURS_PER_YEAR).multiply(SIXTY);
    BigDecimal perMinute =
        minutes.signum() == 0 ? BigDecimal.ZERO : yearly.divide(minutes, MathContext.DECIMAL128);
    return new Overheads(yearly, basis, months, perMinute);
  }

  /**
   * Whether a purchase is an expense that no job bears already.
   *
   * @param purchase the purchase
   * @return false for stock and for categories that hold gas, propane, vehicle, asset or private
   */
  public static boolean overhead(Purchase purchase) {
    String category = purchase.category().toLowerCase(Locale.ROOT);
    return purchase.item().isEmpty() && BORNE_ELSEWHERE.stream().noneMatch(category::contains);
  }

  private static BigDecimal idleTrips(Jobs jobs, LocalDate first, LocalDate last) {
    Set<LocalDate> visited =
        jobs.all().stream()
            .filter(job -> !job.cancelled())
            .map(Job::date)
            .collect(Collectors.toSet());
    return jobs.index().book().trips().stream()
        .filter(trip -> trip.business() && within(trip.date(), first, last))
        .filter(trip -> !visited.contains(trip.date()))
        .map(Trip::distance)
        .map(distance -> distance.orElse(BigDecimal.ZERO))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static boolean within(LocalDate day, LocalDate first, LocalDate last) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  private static List<YearMonth> covered(List<Purchase> expenses) {
    Set<YearMonth> months = new TreeSet<>();
    expenses.forEach(purchase -> months.add(YearMonth.from(purchase.date())));
    return List.copyOf(months);
  }
}
