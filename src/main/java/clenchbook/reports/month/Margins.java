package clenchbook.reports.month;

import clenchbook.book.MaterialKind;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.WorkItem;
import clenchbook.costing.JobCost;
import clenchbook.costing.JobCosts;
import clenchbook.costing.Overheads;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.Job;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a period's jobs left, added up in several ways.
 *
 * @param whole all jobs of the period; empty when there are none
 * @param byWork by Work
 * @param byOwner by owner
 * @param byPlace by place
 * @param byShoe by kind of shoe
 * @param belowWage jobs that earned less an hour than the wage, worst first
 * @param neededPrice the price, as the list states it, that each Work would need for its labour to
 *     be covered, by name
 * @param billedNet what the period's documents came to without tax
 * @param settings the book's settings
 * @param overheads the overheads that the jobs bear
 */
public record Margins(
    Optional<MarginGroup> whole,
    List<MarginGroup> byWork,
    List<MarginGroup> byOwner,
    List<MarginGroup> byPlace,
    List<MarginGroup> byShoe,
    List<JobCost> belowWage,
    Map<String, BigDecimal> neededPrice,
    BigDecimal billedNet,
    Settings settings,
    Overheads overheads) {

  static final String NO_PLACE = "no place";

  /**
   * Adds up a period.
   *
   * @param index the book by name
   * @param costs all costs of the book
   * @param first first day, inclusive
   * @param last last day, inclusive
   * @param billedNet what the period's documents came to without tax
   * @return the margins
   */
  public static Margins of(
      BookIndex index, JobCosts costs, LocalDate first, LocalDate last, BigDecimal billedNet) {
    List<JobCost> jobs =
        costs.between(first, last).stream().filter(cost -> !cost.job().cancelled()).toList();
    JobFigures figures = new JobFigures(index);
    List<MarginGroup> byWork = groups(jobs, cost -> cost.job().workName());
    Map<String, BigDecimal> prices = new TreeMap<>(Names.ORDER);
    byWork.forEach(group -> prices.put(group.name(), price(index, group)));
    return new Margins(
        jobs.isEmpty() ? Optional.empty() : Optional.of(new MarginGroup("all jobs", jobs)),
        byWork,
        groups(jobs, cost -> figures.owner(cost.job())),
        groups(jobs, cost -> cost.job().place().isEmpty() ? NO_PLACE : cost.job().place()),
        groups(jobs, cost -> shoe(cost.job())),
        belowWage(index.book().settings(), jobs),
        prices,
        billedNet,
        index.book().settings(),
        costs.overheads());
  }

  private static List<MarginGroup> groups(List<JobCost> jobs, Function<JobCost, String> name) {
    Map<String, List<JobCost>> groups = new TreeMap<>(Names.ORDER);
    jobs.forEach(
        job -> groups.computeIfAbsent(name.apply(job), unused -> new ArrayList<>()).add(job));
    return groups.entrySet().stream()
        .map(entry -> new MarginGroup(entry.getKey(), entry.getValue()))
        .toList();
  }

  static String shoe(Job job) {
    if (job.fee()) {
      return "fee";
    }
    if (job.shoes() == 0) {
      return "no shoes";
    }
    Set<MaterialKind> kinds = job.kinds();
    return kinds.isEmpty()
        ? "shoe not known"
        : kinds.stream().map(MaterialKind::word).collect(Collectors.joining(" and "));
  }

  private static List<JobCost> belowWage(Settings settings, List<JobCost> jobs) {
    BigDecimal wage = settings.number(Setting.HOURLY_WAGE);
    return jobs.stream()
        .filter(job -> job.earnedPerHour().filter(earned -> earned.compareTo(wage) < 0).isPresent())
        .sorted(
            Comparator.comparing((JobCost job) -> job.earnedPerHour().orElseThrow())
                .thenComparing(JobCost::job, Job.ORDER))
        .toList();
  }

  /** Turns the needed net into a price as the list states it: with tax where prices include it. */
  private static BigDecimal price(BookIndex index, MarginGroup group) {
    Settings settings = index.book().settings();
    Job last = group.jobs().get(group.jobs().size() - 1).job();
    BigDecimal net = group.neededNet();
    if (!settings.yes(Setting.PRICES_INCLUDE_TAX) || !settings.chargesTax()) {
      return net;
    }
    String code = last.work().map(WorkItem::taxCode).orElse("");
    BigDecimal rate =
        index
            .tax()
            .find(code, last.date())
            .map(found -> found.ratePercent().movePointLeft(2))
            .orElse(BigDecimal.ZERO);
    BigDecimal goods = last.work().flatMap(WorkItem::taxedPart).orElse(BigDecimal.ONE);
    BigDecimal netOfOne =
        goods
            .divide(BigDecimal.ONE.add(rate), MathContext.DECIMAL128)
            .add(BigDecimal.ONE.subtract(goods));
    return net.divide(netOfOne, net.scale(), RoundingMode.HALF_UP);
  }

  /**
   * By how much the documents differ from the jobs, because shares and tax are rounded on them.
   *
   * @return documents less jobs
   */
  public BigDecimal rounding() {
    return billedNet.subtract(whole.map(MarginGroup::income).orElse(BigDecimal.ZERO));
  }

  /**
   * The table {@code margins}.
   *
   * @return one row per group and one for the rounding
   */
  public FigureTable table() {
    List<List<String>> rows = new ArrayList<>();
    whole.ifPresent(group -> rows.add(row("all", group, "")));
    byWork.forEach(
        group ->
            rows.add(
                row(
                    "work",
                    group,
                    Figures.money(Optional.ofNullable(neededPrice.get(group.name()))))));
    byOwner.forEach(group -> rows.add(row("owner", group, "")));
    byPlace.forEach(group -> rows.add(row("place", group, "")));
    byShoe.forEach(group -> rows.add(row("shoe", group, "")));
    return new FigureTable(
        "margins",
        List.of(
            "group",
            "name",
            "jobs",
            "income",
            "materials",
            "gas",
            "sundries",
            "travel",
            "overhead",
            "margin_before_labour",
            "labour",
            "margin_after_labour",
            "hours",
            "earned_per_hour",
            "average_net",
            "price_to_reach_wage",
            "materials_basis",
            "time_basis",
            "travel_basis",
            "costs"),
        rows);
  }

  private static List<String> row(String by, MarginGroup group, String price) {
    return List.of(
        by,
        group.name(),
        Figures.count(group.jobs().size()),
        Figures.money(group.income()),
        Figures.money(group.sum(JobCost::materials)),
        Figures.money(group.sum(JobCost::gas)),
        Figures.money(group.sum(JobCost::sundries)),
        Figures.money(group.sum(JobCost::travel)),
        Figures.money(group.sum(JobCost::overhead)),
        Figures.money(group.marginBefore()),
        Figures.money(group.sum(JobCost::labour)),
        Figures.money(group.marginAfter()),
        hours(group).toPlainString(),
        Figures.money(group.earnedPerHour()),
        Figures.money(group.averageNet()),
        price,
        BasisText.basis(group.basis(JobCost::materialsBasis)),
        BasisText.basis(group.basis(JobCost::timeBasis)),
        BasisText.basis(group.basis(JobCost::travelBasis)),
        Figures.money(group.income().subtract(group.marginBefore())));
  }

  /** Hours to two decimals, as files and pages have them. */
  static BigDecimal hours(MarginGroup group) {
    return group.minutes().divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
  }

  /**
   * The table {@code margins-summary}: the few figures that stand large, and the settings behind
   * them.
   *
   * @return a row per figure
   */
  public FigureTable summary() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("billed without tax", Figures.money(billedNet), "measured"));
    rows.add(List.of("rounding on documents", Figures.money(rounding()), "measured"));
    rows.add(
        List.of(
            "hourly wage",
            Figures.plain(settings.number(Setting.HOURLY_WAGE)),
            given(Setting.HOURLY_WAGE)));
    rows.add(
        List.of(
            "yearly overheads",
            Figures.plain(overheads.yearly()),
            BasisText.basis(overheads.basis())));
    rows.add(
        List.of(
            "months that hold overheads", Figures.count(overheads.months().size()), "measured"));
    rows.add(
        List.of(
            "hours per year",
            Figures.plain(settings.number(Setting.HOURS_PER_YEAR)),
            given(Setting.HOURS_PER_YEAR)));
    rows.add(List.of("jobs below the wage", Figures.count(belowWage.size()), "measured"));
    return new FigureTable("margins-summary", List.of("figure", "value", "basis"), rows);
  }

  private String given(Setting setting) {
    return settings.isGiven(setting)
        ? "measured"
        : BasisText.basis(Basis.DEFAULT).toLowerCase(Locale.ROOT);
  }
}
