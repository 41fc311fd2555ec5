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
import clenchbook.reports.blocks.FiguresOf;
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
    return FiguresOf.rows(lines())
        .column("group", Line::by)
        .column("name", line -> line.group().name())
        .count("jobs", line -> line.group().jobs().size())
        .amount("income", line -> line.group().income())
        .amount("materials", line -> line.group().sum(JobCost::materials))
        .amount("gas", line -> line.group().sum(JobCost::gas))
        .amount("sundries", line -> line.group().sum(JobCost::sundries))
        .amount("travel", line -> line.group().sum(JobCost::travel))
        .amount("overhead", line -> line.group().sum(JobCost::overhead))
        .amount("margin_before_labour", line -> line.group().marginBefore())
        .amount("labour", line -> line.group().sum(JobCost::labour))
        .amount("margin_after_labour", line -> line.group().marginAfter())
        .amount("hours", line -> hours(line.group()))
        .amountIfAny("earned_per_hour", line -> line.group().earnedPerHour())
        .amount("average_net", line -> line.group().averageNet())
        .amountIfAny("price_to_reach_wage", Line::neededPrice)
        .column("materials_basis", line -> basis(line, JobCost::materialsBasis))
        .column("time_basis", line -> basis(line, JobCost::timeBasis))
        .column("travel_basis", line -> basis(line, JobCost::travelBasis))
        .amount("costs", line -> line.group().income().subtract(line.group().marginBefore()))
        .named("margins");
  }

  /** A group by what it was made, with the price that its labour needs where it is a Work's. */
  private record Line(String by, MarginGroup group, Optional<BigDecimal> neededPrice) {}

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    whole.ifPresent(group -> lines.add(new Line("all", group, Optional.empty())));
    byWork.forEach(
        group ->
            lines.add(new Line("work", group, Optional.ofNullable(neededPrice.get(group.name())))));
    byOwner.forEach(group -> lines.add(new Line("owner", group, Optional.empty())));
    byPlace.forEach(group -> lines.add(new Line("place", group, Optional.empty())));
    byShoe.forEach(group -> lines.add(new Line("shoe", group, Optional.empty())));
    return lines;
  }

  private static String basis(Line line, Function<JobCost, Basis> part) {
    return BasisText.basis(line.group().basis(part));
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
