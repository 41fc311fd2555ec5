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
        .orElseGet(() -> FirstPage.of("There was no work to bill.", Optional.empty(), List.of()));
  }

  private String sentence(MarginGroup whole) {
    String income = text.about(whole.income());
    String hour = whole.earnedPerHour().map(text::money).orElse("");
    String wage = text.money(margins.settings().number(Setting.HOURLY_WAGE));
    if (!wageGiven) {
      String before = text.about(whole.marginBefore());
      return hour.isEmpty()
          ? "The work brought %s and left %s before your own labour.".formatted(income, before)
          : "The work brought %s and left %s before your own labour: %s an hour."
              .formatted(income, before, hour);
    }
    String left = text.about(whole.marginAfter().abs());
    String what =
        whole.marginAfter().signum() < 0
            ? "The work brought %s and fell %s short of every cost and your own labour"
            : "The work brought %s and left %s after every cost and your own labour";
    String earned = hour.isEmpty() ? "." : ": it earned %s an hour, against your wage of %s.";
    return (what + earned).formatted(income, left, hour, wage);
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
    return missing.isEmpty()
        ? List.of()
        : List.of(
            "Write into Settings what they lack: %s. Until then each counts as nothing here."
                .formatted(String.join(", ", missing)));
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
    String price =
        Optional.ofNullable(margins.neededPrice().get(group.name()))
            .map(needed -> " A list price of %s would cover it.".formatted(text.money(needed)))
            .orElse("");
    return new Short(
        group.marginAfter(),
        "%s: %s fell %s short of the wage.%s".formatted(group.name(), jobs(group), lost, price));
  }

  private Short place(MarginGroup group) {
    return new Short(
        group.marginAfter(),
        "%s: %s fell %s short of the wage; travel there took %s."
            .formatted(
                group.name(),
                jobs(group),
                text.about(group.marginAfter().abs()),
                text.about(group.sum(JobCost::travel))));
  }

  private String jobs(MarginGroup group) {
    int jobs = group.jobs().size();
    return jobs == 1 ? "1 job" : text.count(jobs) + " jobs";
  }
}
