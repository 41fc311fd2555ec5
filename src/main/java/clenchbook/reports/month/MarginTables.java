package clenchbook.reports.month;

import clenchbook.book.Setting;
import clenchbook.costing.JobCost;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The tables of the margins: what each sort of work brought, what it cost, what it left. */
final class MarginTables {
  private final Margins margins;
  private final FigureText text;

  MarginTables(Margins margins) {
    this.margins = margins;
    this.text = FigureText.of(margins.settings());
  }

  /** What the groups brought and each cost they bore, with the whole below. */
  Table costs(MarginBy by, List<MarginGroup> groups) {
    TableOf<MarginGroup> table =
        TableOf.rows(groups)
            .words(by.header(text), 7, group -> by.name(group, text))
            .count(text.say("month.column.jobs"), 2, group -> group.jobs().size());
    income(table)
        .figure(
            text.say("month.column.materials"),
            4,
            group -> amount(group, JobCost::materials),
            group -> group.basis(JobCost::materialsBasis))
        .figure(
            text.say("month.column.gas"), 3, group -> amount(group, JobCost::gas), this::gasBasis)
        .figure(
            text.say("month.column.sundries"),
            3,
            group -> amount(group, JobCost::sundries),
            group -> given(Setting.SUNDRIES, Basis.STANDARD))
        .figure(
            text.say("month.column.travel"),
            4,
            group -> amount(group, JobCost::travel),
            group -> given(Setting.VEHICLE_COST, group.basis(JobCost::travelBasis)))
        .figure(
            text.say("month.column.overheads"),
            4,
            group -> amount(group, JobCost::overhead),
            group -> group.basis(JobCost::timeBasis).weaker(margins.overheads().basis()));
    return withWhole(table).captioned(by.costs(text));
  }

  private TableOf<MarginGroup> income(TableOf<MarginGroup> table) {
    return table.figure(
        text.say("month.column.income"),
        4,
        group -> text.amount(group.income()),
        group -> Basis.MEASURED);
  }

  private TableOf<MarginGroup> withWhole(TableOf<MarginGroup> table) {
    margins.whole().ifPresent(whole -> table.total(text.say("month.all"), whole));
    return table;
  }

  private String amount(MarginGroup group, Function<JobCost, BigDecimal> what) {
    return text.amount(group.sum(what));
  }

  private Basis gasBasis(MarginGroup group) {
    return margins.settings().gasCostGiven() ? group.basis(JobCost::timeBasis) : Basis.DEFAULT;
  }

  /** What a figure rests on that a setting enters: nothing better than the default without it. */
  private Basis given(Setting setting, Basis basis) {
    return margins.settings().isGiven(setting) ? basis : Basis.DEFAULT;
  }

  /** What the groups left, and the price that would cover their labour; the whole below. */
  Table priced(MarginBy by, List<MarginGroup> groups) {
    TableOf<MarginGroup> table =
        left(by, groups)
            .figure(
                text.say("month.column.averageNet"),
                4,
                group -> text.amount(group.averageNet()),
                group -> Basis.MEASURED)
            .figureOrDash(
                text.say("month.column.priceForWage"), 4, this::neededPrice, this::labourBasis);
    return withWhole(table).captioned(text.say("month.margins.priced"));
  }

  private Optional<String> neededPrice(MarginGroup group) {
    return Optional.ofNullable(margins.neededPrice().get(group.name())).map(text::amount);
  }

  /** What the groups left, with the whole below. */
  Table leftWithWhole(MarginBy by, List<MarginGroup> groups) {
    return withWhole(left(by, groups)).plain();
  }

  /** What some of the groups left. */
  Table leftOf(MarginBy by, List<MarginGroup> groups) {
    return left(by, groups).plain();
  }

  private TableOf<MarginGroup> left(MarginBy by, List<MarginGroup> groups) {
    TableOf<MarginGroup> table =
        TableOf.rows(groups)
            .words(by.header(text), 7, group -> by.name(group, text))
            .count(text.say("month.column.jobs"), 2, group -> group.jobs().size());
    return income(table)
        .figure(
            text.say("month.column.costs"),
            4,
            group -> text.amount(group.income().subtract(group.marginBefore())),
            this::basisBefore)
        .figure(
            text.say("month.column.labour"),
            4,
            group -> amount(group, JobCost::labour),
            this::labourBasis)
        .figure(
            text.say("month.column.left"),
            4,
            group -> text.amount(group.marginAfter()),
            group -> basisBefore(group).weaker(labourBasis(group)))
        .figure(
            text.say("month.column.time"),
            4,
            group -> text.hours(Margins.hours(group)),
            MarginGroup::timeBasis)
        .figureOrDash(
            text.say("month.column.anHour"),
            4,
            group -> group.earnedPerHour().map(text::amount),
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
  Table belowWage(List<JobCost> jobs) {
    return TableOf.rows(jobs)
        .words(text.say("month.column.date"), 3, cost -> text.shortDay(cost.job().date()))
        .words(text.say("month.column.horse"), 5, cost -> cost.job().horse().name())
        .words(text.say("month.column.work"), 6, cost -> cost.job().workName())
        .number(text.say("month.column.charge"), 3, cost -> text.amount(cost.chargeNet()))
        .number(text.say("month.column.left"), 3, cost -> text.amount(cost.marginAfterLabour()))
        .number(
            text.say("month.column.anHour"),
            3,
            cost -> cost.earnedPerHour().map(text::amount).orElse("–"))
        .plain();
  }
}
