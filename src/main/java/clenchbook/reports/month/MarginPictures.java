package clenchbook.reports.month;

import clenchbook.book.Setting;
import clenchbook.costing.JobCost;
import clenchbook.reports.blocks.Block.Picture;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The pictures of the margins. */
final class MarginPictures {
  private final Margins margins;
  private final FigureText text;

  MarginPictures(Margins margins) {
    this.margins = margins;
    this.text = FigureText.of(margins.settings());
  }

  /** What the income was spent on, and what was left of it. */
  Picture whereItWent(MarginGroup whole) {
    Map<String, BigDecimal> parts = new LinkedHashMap<>();
    parts.put("Own labour", whole.sum(JobCost::labour));
    parts.put("Materials", whole.sum(JobCost::materials));
    parts.put("Overheads", whole.sum(JobCost::overhead));
    parts.put("Travel", whole.sum(JobCost::travel));
    parts.put("Sundries", whole.sum(JobCost::sundries));
    parts.put("Gas", whole.sum(JobCost::gas));
    parts.put("Left", whole.marginAfter());
    return new Picture(
        "Where the income went",
        "Of %s, %s was left after every cost and own labour."
            .formatted(text.about(whole.income()), text.about(whole.marginAfter())),
        bars(List.copyOf(parts.keySet()), List.copyOf(parts.values()), text::about, List.of()));
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
        wage.signum() > 0
            ? List.of(new Chart.Limit("the wage, " + text.money(wage), wage.doubleValue()))
            : List.of();
    return new Picture(
        "Earned an hour, before own labour",
        "%s of %s kinds of work earned less an hour than the wage."
            .formatted(text.count(below), text.count(groups.size())),
        bars(
            groups.stream().map(MarginGroup::name).toList(),
            groups.stream().map(group -> group.earnedPerHour().orElseThrow()).toList(),
            text::money,
            limits));
  }

  private static Chart bars(
      List<String> names,
      List<BigDecimal> amounts,
      Function<BigDecimal, String> label,
      List<Chart.Limit> limits) {
    return new Chart.Columns(
        "",
        "",
        names,
        List.of(
            new Chart.Series(
                "amount",
                amounts.stream().map(BigDecimal::doubleValue).toList(),
                amounts.stream().map(label).toList())),
        false,
        true,
        limits);
  }
}
