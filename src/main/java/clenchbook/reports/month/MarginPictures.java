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
    parts.put(text.say("month.picture.ownLabour"), whole.sum(JobCost::labour));
    parts.put(text.say("month.picture.materials"), whole.sum(JobCost::materials));
    parts.put(text.say("month.picture.overheads"), whole.sum(JobCost::overhead));
    parts.put(text.say("month.picture.travel"), whole.sum(JobCost::travel));
    parts.put(text.say("month.picture.sundries"), whole.sum(JobCost::sundries));
    parts.put(text.say("month.picture.gas"), whole.sum(JobCost::gas));
    parts.put(text.say("month.picture.left"), whole.marginAfter());
    return new Picture(
        text.say("month.picture.income"),
        text.say(
            "month.picture.incomeInWords",
            text.about(whole.income()),
            text.about(whole.marginAfter())),
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
            ? List.of(
                new Chart.Limit(
                    text.say("month.picture.wage", text.money(wage)), wage.doubleValue()))
            : List.of();
    return new Picture(
        text.say("month.picture.perHour"),
        text.say("month.picture.perHourInWords", below, groups.size()),
        bars(
            groups.stream().map(MarginGroup::name).toList(),
            groups.stream().map(group -> group.earnedPerHour().orElseThrow()).toList(),
            text::money,
            limits));
  }

  private Chart bars(
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
                text.say("month.picture.amount"),
                amounts.stream().map(BigDecimal::doubleValue).toList(),
                amounts.stream().map(label).toList())),
        false,
        true,
        limits);
  }
}
