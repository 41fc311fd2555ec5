package clenchbook.reports.month;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.costing.JobCost;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.FirstPage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The first page of the margins: what was left, and what fell short of the wage by most. */
final class MarginsAnswer {
  private final Margins margins;
  private final FigureText text;
  private final boolean wageGiven;

  MarginsAnswer(Margins margins) {
    this.margins = margins;
    this.text = FigureText.of(margins.settings());
    this.wageGiven = margins.settings().isGiven(Setting.HOURLY_WAGE);
  }

  FirstPage page() {
    return margins
        .whole()
        .map(
            whole ->
                FirstPage.of(
                    sentence(whole),
                    Optional.of(new MarginPictures(margins).whereItWent(whole)),
                    toDo()))
        .orElseGet(
            () -> FirstPage.of(text.say("month.margins.noWork"), Optional.empty(), List.of()));
  }

  private String sentence(MarginGroup whole) {
    String income = text.about(whole.income());
    String hour = whole.earnedPerHour().map(text::money).orElse("");
    String wage = text.money(margins.settings().number(Setting.HOURLY_WAGE));
    if (!wageGiven) {
      String before = text.about(whole.marginBefore());
      return hour.isEmpty()
          ? text.say("month.margins.leftBefore", income, before)
          : text.say("month.margins.leftBeforeHour", income, before, hour);
    }
    String left = text.about(whole.marginAfter().abs());
    if (whole.marginAfter().signum() < 0) {
      return hour.isEmpty()
          ? text.say("month.margins.short", income, left)
          : text.say("month.margins.shortHour", income, left, hour, wage);
    }
    return hour.isEmpty()
        ? text.say("month.margins.left", income, left)
        : text.say("month.margins.leftHour", income, left, hour, wage);
  }

  /** One thing to do and the money it is about. */
  private record Short(BigDecimal money, String words) {}

  private List<String> toDo() {
    List<String> things = new ArrayList<>(missing());
    Stream<Short> works =
        wageGiven
            ? margins.byWork().stream().filter(MarginGroup::fellShort).map(this::work)
            : none();
    Stream<Short> places =
        wageGiven
            ? margins.byPlace().stream()
                .filter(MarginGroup::fellShort)
                .filter(group -> !group.name().equals(Margins.NO_PLACE))
                .map(this::place)
            : none();
    Stream.concat(works, places)
        .sorted(Comparator.comparing(Short::money))
        .map(Short::words)
        .forEach(things::add);
    return things;
  }

  private static Stream<Short> none() {
    return Stream.empty();
  }

  /** Nothing on the pages is right while a cost counts as nothing. */
  private List<String> missing() {
    List<String> missing = notGiven(margins.settings());
    return missing.isEmpty() ? List.of() : List.of(text.say("month.margins.missing", missing));
  }

  static List<String> notGiven(Settings settings) {
    List<String> missing = new ArrayList<>();
    Stream.of(Setting.HOURLY_WAGE, Setting.VEHICLE_COST, Setting.SUNDRIES)
        .filter(setting -> !settings.isGiven(setting))
        .map(Setting::title)
        .forEach(missing::add);
    if (!settings.gasCostGiven()) {
      missing.add("Gas cost");
    }
    return missing;
  }

  private Short work(MarginGroup group) {
    String lost = text.about(group.marginAfter().abs());
    int jobs = group.jobs().size();
    return new Short(
        group.marginAfter(),
        Optional.ofNullable(margins.neededPrice().get(group.name()))
            .map(
                needed ->
                    text.say(
                        "month.margins.workShortPrice",
                        group.name(),
                        jobs,
                        lost,
                        text.money(needed)))
            .orElseGet(() -> text.say("month.margins.workShort", group.name(), jobs, lost)));
  }

  private Short place(MarginGroup group) {
    return new Short(
        group.marginAfter(),
        text.say(
            "month.margins.placeShort",
            group.name(),
            group.jobs().size(),
            text.about(group.marginAfter().abs()),
            text.about(group.sum(JobCost::travel))));
  }
}
