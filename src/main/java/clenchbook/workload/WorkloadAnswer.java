package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.FirstPage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The first page about the body: what exceeds its limit by most, and what to do about it. */
final class WorkloadAnswer {
  private static final int BARS = 10;

  private final WorkYear work;
  private final FigureText text;
  private final List<Excess> all;

  WorkloadAnswer(WorkYear work) {
    this.work = work;
    this.text = work.text();
    this.all = Excess.of(work);
  }

  FirstPage page() {
    return FirstPage.of(sentence(), picture(), toDo());
  }

  private String sentence() {
    List<Excess> over = all.stream().filter(Excess::over).toList();
    if (over.isEmpty()) {
      return nothingOver();
    }
    Excess worst = over.get(0);
    String count =
        over.size() == 1
            ? "One measure is over its limit: "
            : "%6$s measures are over their limits, furthest ";
    String what =
        worst.when().isEmpty()
            ? "%1$s, %2$s against %4$s (%5$s)."
            : worst.kind() == Excess.Kind.HOURS && worst.unit().equals("h")
                ? "%1$s, %2$s in the week of %3$s against %4$s (%5$s)."
                : "%1$s, %2$s on %3$s against %4$s (%5$s).";
    return (count + what)
        .formatted(
            worst.measure(),
            value(worst),
            worst.when().map(text::day).orElse(""),
            limit(worst),
            worst.limitName(),
            text.count(over.size()));
  }

  private String nothingOver() {
    if (work.load().hours() == 0) {
      return "No minutes are known, so little can be said of the body: %s visits on %s days so far."
          .formatted(text.count(work.load().horses()), text.count(work.load().daysWorked()));
    }
    String hours = text.hours(work.load().hours());
    return all.isEmpty()
        ? "%s of work so far, and no limit or rating to set it against.".formatted(hours)
        : "%s of work so far, and nothing is over its limit.".formatted(hours);
  }

  private String value(Excess one) {
    return withUnit(one, one.value());
  }

  private String limit(Excess one) {
    return withUnit(one, one.limit());
  }

  private String withUnit(Excess one, double number) {
    if (one.unit().equals("h")) {
      return text.hours(number);
    }
    String figure =
        number == one.limit() ? text.plain(number) : text.number(number, number % 1 == 0 ? 0 : 1);
    return one.unit().isEmpty() ? figure : figure + "\u00A0" + one.unit();
  }

  private Optional<Block.Picture> picture() {
    List<Excess> drawn = all.stream().limit(BARS).toList();
    if (drawn.isEmpty()) {
      return work.load().hours() > 0
          ? Optional.of(new YearPictures(work).weeks())
          : Optional.empty();
    }
    return Optional.of(
        new Block.Picture(
            "The worst day, week or year against its limit or published value",
            "The line is each measure's own limit; a bar twice as long as to the line is twice the"
                + " limit. Noise is drawn by its sound energy.",
            new Chart.Columns(
                "",
                "",
                drawn.stream().map(Excess::measure).toList(),
                List.of(
                    new Chart.Series(
                        "times its limit",
                        drawn.stream().map(Excess::times).toList(),
                        drawn.stream()
                            .map(one -> "%s of %s".formatted(value(one), limit(one)))
                            .toList())),
                false,
                true,
                List.of(new Chart.Limit("its limit or published value", 1)))));
  }

  private List<String> toDo() {
    List<String> things = new ArrayList<>();
    Set<Excess.Kind> said = EnumSet.noneOf(Excess.Kind.class);
    for (Excess one : all) {
      if (one.over() && said.add(one.kind())) {
        things.addAll(advice(one));
      }
    }
    if (things.isEmpty() && work.load().hours() == 0) {
      things.add(HoursSection.WITHOUT_MINUTES);
    }
    return things;
  }

  private List<String> advice(Excess one) {
    return switch (one.kind()) {
      case NOISE ->
          List.of(
              "Noise: wear hearing protection and have the levels measured at your ear; local law"
                  + " says what it asks above these values.");
      case STRAIN ->
          List.of(
              "Hand and wrist: most is asked by %s. Spread it over more days or pass some of it on;"
                      .formatted(hardestTask())
                  + " numbness or pain belongs before a clinician early.");
      case VIBRATION ->
          List.of(
              "Vibration: shorten the time at the grinder or change the tool; local law says what"
                  + " it asks above these values.");
      case POSTURE ->
          List.of(
              "A bent back: break the time under the horse up, and raise what can be raised; back"
                  + " pain belongs before a clinician.");
      case HOURS -> work.warnings();
    };
  }

  /** The task whose strain index is highest on its worst day; the whole day where none stands. */
  private String hardestTask() {
    return all.stream()
        .filter(one -> one.kind() == Excess.Kind.STRAIN && one.measure().contains(", "))
        .findFirst()
        .map(one -> "%s (%s against %s)".formatted(task(one), value(one), limit(one)))
        .orElse("the whole day");
  }

  private static String task(Excess one) {
    return one.measure().substring(one.measure().indexOf(", ") + 2);
  }
}
