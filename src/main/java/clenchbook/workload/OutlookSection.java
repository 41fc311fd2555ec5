package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.TableOf;
import clenchbook.workload.hours.Estimate;
import clenchbook.workload.hours.HoursMeasure;
import clenchbook.workload.hours.PastYear;
import clenchbook.workload.outlook.ChangedWeek;
import clenchbook.workload.outlook.Mix;
import clenchbook.workload.outlook.ShapeDifference;
import clenchbook.workload.outlook.StopAge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The part of the pages that looks ahead: Stop age, hot against cold, a changed week. */
final class OutlookSection {

  private static final String NOT_SAID = "not computed";

  private final WorkYear work;

  OutlookSection(WorkYear work) {
    this.work = work;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "Blows and the stall jack until you stop"));
    blocks.addAll(stopAge());
    blocks.add(new Block.Heading(1, "What hot shaping saves or costs in minutes"));
    blocks.add(new Block.Paragraph(hotShaping()));
    blocks.add(new Block.Heading(1, "What a changed week would have done"));
    blocks.addAll(changes());
    return blocks;
  }

  private List<Block> stopAge() {
    if (work.stop().isEmpty()) {
      return List.of(
          new Block.Paragraph(
              "Give Birth year and Stop age in Settings to see what is still to come."));
    }
    StopAge stop = work.stop().get();
    if (stop.years() == 0) {
      return List.of(new Block.Paragraph("The year in which Stop age is reached is over."));
    }
    return List.of(
        new Block.Paragraph(toDate(stop)),
        TableOf.rows(List.of(Mix.values()))
            .words("Mix", 4, Mix::words)
            .number("Blows", 3, mix -> number(stop.blows(mix)))
            .words("95 % interval", 4, mix -> interval(stop.blows(mix), work.text()::whole))
            .number("Hours at the stall jack", 3, mix -> number(stop.stallJackHours(mix)))
            .words(
                "95 % interval", 4, mix -> interval(stop.stallJackHours(mix), work.text()::whole))
            .captioned("Still to come, if every year is like the past one"),
        new Block.Paragraph(
            "The intervals come from the spread of the weeks of the past year, taken as"
                + " independent, and from the comparison of hot with cold where a mix needs it."
                + " They do not cover a change of the round, of the ratings or of health. Steel"
                + " shoes change their shaping and are keg; aluminium is worked cold only and stays"
                + " as it is."));
  }

  private String toDate(StopAge stop) {
    String blows =
        work.ratings().ratesBlows()
            ? "Blows in the year to date: "
                + work.text().whole(work.ratings().blows(work.load().shoes()).orElse(0))
                + ". "
            : "";
    return blows
        + "Hours at the stall jack in the year to date: "
        + work.text().hours(work.load().hours(HoursMeasure.AT_THE_STALL_JACK))
        + ". Years left, to the end of the year in which Stop age is reached: "
        + work.text().number(stop.years(), 2)
        + ".";
  }

  private String number(Optional<Estimate> estimate) {
    return estimate.map(one -> work.text().whole(one.value())).orElse(NOT_SAID);
  }

  private String interval(Optional<Estimate> estimate, DoubleFunction<String> digits) {
    return estimate
        .flatMap(Estimate::interval)
        .map(ends -> digits.apply(ends.low()) + " to " + digits.apply(ends.high()))
        .orElse("");
  }

  private String tenths(double number) {
    return work.text().number(number, 1);
  }

  private String tenths(Optional<Estimate> estimate) {
    return estimate.map(one -> tenths(one.value())).orElse(NOT_SAID);
  }

  private String blows(ChangedWeek.Change change) {
    return change.blows().isPresent() ? work.text().whole(change.blows().getAsDouble()) : NOT_SAID;
  }

  private String hotShaping() {
    double shoes = work.past().load().shoes().hotSteel();
    if (shoes == 0) {
      return "No steel shoe was shaped hot in the past year.";
    }
    if (work.hotLessCold().isEmpty()) {
      return "The past year does not hold enough measured jobs of both kinds to compare: "
          + "give Shape min for at least five hot and five cold jobs of one Work.";
    }
    ShapeDifference difference = work.hotLessCold().get();
    Estimate minutes =
        work.mixed().hotShapingMinutes().orElseThrow().map(each -> each * work.past().scale());
    double setUp = work.mixed().setUpSpent() * work.past().scale();
    return perShoe(difference)
        + " Over "
        + pastYear()
        + " that is "
        + (difference.shown() ? withInterval(minutes) : between(minutes))
        + " minutes a year on the steel shoes shaped hot (below 0: saved). Setting the forge up"
        + " took "
        + work.text().whole(setUp)
        + " minutes; both together: "
        + (difference.shown()
            ? withInterval(minutes.map(each -> each + setUp))
            : between(minutes.map(each -> each + setUp)))
        + ".";
  }

  /** A gain is told only where its interval leaves none but gains. */
  private String perShoe(ShapeDifference difference) {
    if (!difference.shown()) {
      return "The book can't tell yet whether hot shaping saves minutes: like with like, anything"
          + " from "
          + minutes(difference.low().orElse(difference.minutesPerShoe()))
          + " to "
          + minutes(difference.high().orElse(difference.minutesPerShoe()))
          + " minutes a shoe against cold would fit your own jobs (see the comparisons).";
    }
    boolean less = difference.minutesPerShoe() < 0;
    return "On your own jobs hot shaping takes "
        + minutes(Math.abs(difference.minutesPerShoe()))
        + (less ? " minutes a shoe less" : " minutes a shoe more")
        + " than cold, like with like ("
        + (less ? "hot is quicker" : "hot is slower")
        + "; see the comparisons).";
  }

  private String minutes(double number) {
    return work.text().number(number, 2);
  }

  private String between(Estimate estimate) {
    String ends = interval(Optional.of(estimate), work.text()::whole);
    return ends.isEmpty() ? work.text().whole(estimate.value()) : "anything from " + ends;
  }

  private String pastYear() {
    PastYear past = work.past();
    return work.text().date(past.from())
        + " to "
        + work.text().date(past.to())
        + (past.whole() ? "" : ", scaled up to a year");
  }

  private String withInterval(Estimate estimate) {
    String ends = interval(Optional.of(estimate), work.text()::whole);
    return work.text().whole(estimate.value()) + (ends.isEmpty() ? "" : " (" + ends + ")");
  }

  private List<Block> changes() {
    return List.of(
        TableOf.rows(work.changes())
            .words("Change", 5, ChangedWeek.Change::name)
            .number("Hours in all", 2, change -> tenths(change.hours()))
            .words("95 % interval", 3, change -> interval(change.hours(), this::tenths))
            .number("Horse-visits", 2, change -> work.text().whole(change.horses()))
            .number("Hours at the stall jack", 2, change -> tenths(change.stallJackHours()))
            .number("Blows", 2, this::blows)
            .captioned("Arithmetic on " + pastYear() + ": what a year would have had more or less"),
        new Block.Paragraph(
            "This is arithmetic on what happened, not a forecast: the horses taken off would have"
                + " to be seen on other days or by someone else. A rest day takes one average day"
                + " off each week worked; a day above the limit loses the horses beyond it with"
                + " their share of the work, not of the drive; hot or cold moves the minutes of the"
                + " steel shoes as the comparison shows, drops making by hand, and lights the forge"
                + " at every stop with steel shoes or at none."));
  }
}
