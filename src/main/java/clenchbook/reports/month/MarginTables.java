package clenchbook.reports.month;

import clenchbook.book.Setting;
import clenchbook.costing.JobCost;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.reports.blocks.TableOf;
import clenchbook.values.Basis;
import java.util.List;
import java.util.Optional;

/** The tables of the margins: what each sort of work brought, what it cost, what it left. */
final class MarginTables {
  private static final String ALL = "All";

  private final Margins margins;

  MarginTables(Margins margins) {
    this.margins = margins;
  }

  /** What the groups brought and each cost they bore, with the whole below. */
  Table costs(String by, List<MarginGroup> groups) {
    return withWhole(costColumns(by, groups)).captioned("Income and costs");
  }

  private TableOf<MarginGroup> withWhole(TableOf<MarginGroup> table) {
    margins.whole().ifPresent(whole -> table.total(ALL, whole));
    return table;
  }

  private TableOf<MarginGroup> costColumns(String by, List<MarginGroup> groups) {
    return TableOf.rows(groups)
        .words(by, 6, MarginGroup::name)
        .count("Jobs", 2, group -> group.jobs().size())
        .figure("Income", 4, group -> Figures.money(group.income()), group -> Basis.MEASURED)
        .figure(
            "Materials",
            4,
            group -> Figures.money(group.sum(JobCost::materials)),
            group -> group.basis(JobCost::materialsBasis))
        .figure("Gas", 3, group -> Figures.money(group.sum(JobCost::gas)), this::gasBasis)
        .figure(
            "Sundries",
            3,
            group -> Figures.money(group.sum(JobCost::sundries)),
            group -> given(Setting.SUNDRIES, Basis.STANDARD))
        .figure(
            "Travel",
            4,
            group -> Figures.money(group.sum(JobCost::travel)),
            group -> given(Setting.VEHICLE_COST, group.basis(JobCost::travelBasis)))
        .figure(
            "Overhead",
            4,
            group -> Figures.money(group.sum(JobCost::overhead)),
            group -> group.basis(JobCost::timeBasis).weaker(margins.overheads().basis()));
  }

  private Basis gasBasis(MarginGroup group) {
    return margins.settings().gasCostGiven() ? group.basis(JobCost::timeBasis) : Basis.DEFAULT;
  }

  /** What a figure rests on that a setting enters: nothing better than the default without it. */
  private Basis given(Setting setting, Basis basis) {
    return margins.settings().isGiven(setting) ? basis : Basis.DEFAULT;
  }

  /** What the groups left, and the price that would cover their labour. */
  Table left(String caption, String by, List<MarginGroup> groups) {
    return whatWasLeft(by, groups)
        .figure(
            "Average net", 4, group -> Figures.money(group.averageNet()), group -> Basis.MEASURED)
        .figure("Price to reach the wage", 5, this::neededPrice, this::labourBasis)
        .captioned(caption);
  }

  private String neededPrice(MarginGroup group) {
    return Figures.money(Optional.ofNullable(margins.neededPrice().get(group.name())));
  }

  /** What the groups left, with the whole below. */
  Table leftPlain(String by, List<MarginGroup> groups) {
    return withWhole(whatWasLeft(by, groups)).captioned("What was left");
  }

  private TableOf<MarginGroup> whatWasLeft(String by, List<MarginGroup> groups) {
    return TableOf.rows(groups)
        .words(by, 6, MarginGroup::name)
        .figure("Before labour", 4, group -> Figures.money(group.marginBefore()), this::basisBefore)
        .figure("Labour", 4, group -> Figures.money(group.sum(JobCost::labour)), this::labourBasis)
        .figure(
            "After labour",
            4,
            group -> Figures.money(group.marginAfter()),
            group -> basisBefore(group).weaker(labourBasis(group)))
        .figure("Hours", 3, Margins::hours, MarginGroup::timeBasis)
        .figure(
            "Per hour",
            4,
            group -> group.earnedPerHour().map(Figures::money).orElse(""),
            this::basisBefore);
  }

  private Basis basisBefore(MarginGroup group) {
    return group
        .basis(JobCost::materialsBasis)
        .weaker(group.timeBasis())
        .weaker(margins.overheads().basis());
  }

  private Basis labourBasis(MarginGroup group) {
    return given(Setting.HOURLY_WAGE, group.timeBasis());
  }

  /** Jobs that earned less than the wage. */
  static Table belowWage(List<JobCost> jobs) {
    return TableOf.rows(jobs)
        .words("Date", 3, cost -> cost.job().date().toString())
        .words("Horse", 5, cost -> cost.job().horse().name())
        .words("Work", 6, cost -> cost.job().workName())
        .number("Charge", 3, cost -> Figures.money(cost.chargeNet()))
        .number("After labour", 3, cost -> Figures.money(cost.marginAfterLabour()))
        .number("Per hour", 3, cost -> cost.earnedPerHour().map(Figures::money).orElse(""))
        .plain();
  }
}
