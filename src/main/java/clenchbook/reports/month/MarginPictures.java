package clenchbook.reports.month;

import clenchbook.book.Setting;
import clenchbook.costing.JobCost;
import clenchbook.reports.blocks.Block.Picture;
import clenchbook.reports.blocks.Chart;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/** The pictures of the margins. */
final class MarginPictures {
  private final Margins margins;

  MarginPictures(Margins margins) {
    this.margins = margins;
  }

  /** What the income was spent on, and what was left of it. */
  Picture whereItWent(MarginGroup whole) {
    List<String> names =
        List.of(
            "materials", "gas", "sundries", "travel", "overhead", "labour", "left after labour");
    List<BigDecimal> amounts =
        List.of(
            whole.sum(JobCost::materials),
            whole.sum(JobCost::gas),
            whole.sum(JobCost::sundries),
            whole.sum(JobCost::travel),
            whole.sum(JobCost::overhead),
            whole.sum(JobCost::labour),
            whole.marginAfter());
    return new Picture(
        "Where the income went",
        "Of "
            + Figures.money(whole.income())
            + " income, "
            + Figures.money(whole.marginAfter())
            + " was left after all costs and own labour.",
        new Chart.Columns(
            "",
            margins.settings().currency(),
            names,
            List.of(
                new Chart.Series("amount", amounts.stream().map(BigDecimal::doubleValue).toList())),
            false,
            true,
            List.of()));
  }

  /** What each Work earned an hour, beside the wage. */
  Picture perHour() {
    List<MarginGroup> groups =
        margins.byWork().stream()
            .filter(group -> group.earnedPerHour().isPresent())
            .sorted(
                Comparator.comparing((MarginGroup group) -> group.earnedPerHour().orElseThrow())
                    .reversed())
            .toList();
    BigDecimal wage = margins.settings().number(Setting.HOURLY_WAGE);
    long below =
        groups.stream()
            .filter(group -> group.earnedPerHour().orElseThrow().compareTo(wage) < 0)
            .count();
    List<Chart.Limit> limits =
        wage.signum() > 0 ? List.of(new Chart.Limit("the wage", wage.doubleValue())) : List.of();
    return new Picture(
        "Earned per hour, before own labour",
        below + " of " + groups.size() + " kinds of work earned less an hour than the wage.",
        new Chart.Columns(
            "",
            margins.settings().currency() + " an hour",
            groups.stream().map(MarginGroup::name).toList(),
            List.of(
                new Chart.Series(
                    "earned per hour",
                    groups.stream()
                        .map(group -> group.earnedPerHour().orElseThrow().doubleValue())
                        .toList())),
            false,
            true,
            limits));
  }
}
