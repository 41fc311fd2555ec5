package clenchbook.workload;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
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

  private final WorkYear work;
  private final FigureText text;

  OutlookSection(WorkYear work) {
    this.work = work;
    this.text = work.text();
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, text.say("workload.stop")));
    blocks.addAll(stopAge());
    blocks.add(new Block.Heading(1, text.say("workload.hot")));
    blocks.add(new Block.Paragraph(hotShaping()));
    blocks.add(new Block.Heading(1, text.say("workload.change")));
    blocks.addAll(changes());
    return blocks;
  }

  private List<Block> stopAge() {
    if (work.stop().isEmpty()) {
      return List.of(new Block.Paragraph(text.say("workload.stop.notSet")));
    }
    StopAge stop = work.stop().get();
    if (stop.years() == 0) {
      return List.of(new Block.Paragraph(text.say("workload.stop.over")));
    }
    return List.of(
        new Block.Paragraph(toDate(stop)),
        mixes(stop),
        new Block.Paragraph(text.say("workload.stop.intervals")));
  }

  private Block mixes(StopAge stop) {
    String interval = text.say("workload.column.interval");
    return TableOf.rows(List.of(Mix.values()))
        .words(text.say("workload.column.mix"), 4, mix -> text.say(mix.words().said()))
        .number(text.say("workload.column.blows"), 3, mix -> number(stop.blows(mix)))
        .words(interval, 4, mix -> interval(stop.blows(mix), text::whole))
        .number(
            text.say("workload.column.atTheStallJack"), 3, mix -> number(stop.stallJackHours(mix)))
        .words(interval, 4, mix -> interval(stop.stallJackHours(mix), text::whole))
        .captioned(text.say("workload.stop.toCome"));
  }

  private String toDate(StopAge stop) {
    List<String> sentences = new ArrayList<>();
    if (work.ratings().ratesBlows()) {
      double blows = work.ratings().blows(work.load().shoes()).orElse(0);
      sentences.add(text.say("workload.stop.blowsToDate", text.whole(blows)));
    }
    sentences.add(
        text.say(
            "workload.stop.stallJackToDate",
            text.hours(work.load().hours(HoursMeasure.AT_THE_STALL_JACK))));
    sentences.add(text.say("workload.stop.yearsLeft", text.number(stop.years(), 2)));
    return String.join(" ", sentences);
  }

  private String notSaid() {
    return text.say("workload.notComputed");
  }

  private String number(Optional<Estimate> estimate) {
    return estimate.map(one -> text.whole(one.value())).orElseGet(this::notSaid);
  }

  private String interval(Optional<Estimate> estimate, DoubleFunction<String> digits) {
    return estimate
        .flatMap(Estimate::interval)
        .map(
            ends ->
                text.say("workload.interval", digits.apply(ends.low()), digits.apply(ends.high())))
        .orElse("");
  }

  private String tenths(double number) {
    return text.number(number, 1);
  }

  private String tenths(Optional<Estimate> estimate) {
    return estimate.map(one -> tenths(one.value())).orElseGet(this::notSaid);
  }

  private String blows(ChangedWeek.Change change) {
    return change.blows().isPresent() ? text.whole(change.blows().getAsDouble()) : notSaid();
  }

  private String hotShaping() {
    if (work.past().load().shoes().hotSteel() == 0) {
      return text.say("workload.hot.none");
    }
    return work.hotLessCold()
        .map(difference -> perShoe(difference) + " " + perYear(difference))
        .orElseGet(() -> text.say("workload.hot.tooFew"));
  }

  private String perYear(ShapeDifference difference) {
    Estimate minutes =
        work.mixed().hotShapingMinutes().orElseThrow().map(each -> each * work.past().scale());
    double setUp = work.mixed().setUpSpent() * work.past().scale();
    Estimate both = minutes.map(each -> each + setUp);
    return text.say(
        "workload.hot.year",
        pastYear(),
        difference.shown() ? withInterval(minutes) : between(minutes),
        Math.round(setUp),
        difference.shown() ? withInterval(both) : between(both));
  }

  /** A gain is told only where its interval leaves none but gains. */
  private String perShoe(ShapeDifference difference) {
    if (!difference.shown()) {
      return text.say(
          "workload.hot.open",
          minutes(difference.low().orElse(difference.minutesPerShoe())),
          minutes(difference.high().orElse(difference.minutesPerShoe())));
    }
    String minutes = minutes(Math.abs(difference.minutesPerShoe()));
    return difference.minutesPerShoe() < 0
        ? text.say("workload.hot.quicker", minutes)
        : text.say("workload.hot.slower", minutes);
  }

  private String minutes(double number) {
    return text.number(number, 2);
  }

  private String between(Estimate estimate) {
    return estimate
        .interval()
        .map(ends -> text.say("workload.between", text.whole(ends.low()), text.whole(ends.high())))
        .orElseGet(() -> text.whole(estimate.value()));
  }

  private String pastYear() {
    PastYear past = work.past();
    String from = text.date(past.from());
    String to = text.date(past.to());
    return past.whole()
        ? text.say("workload.past", from, to)
        : text.say("workload.past.scaled", from, to);
  }

  private String withInterval(Estimate estimate) {
    String ends = interval(Optional.of(estimate), text::whole);
    return text.whole(estimate.value()) + (ends.isEmpty() ? "" : " (" + ends + ")");
  }

  private List<Block> changes() {
    return List.of(
        TableOf.rows(work.changes())
            .words(text.say("workload.column.change"), 5, change -> text.say(change.name().said()))
            .number(text.say("workload.column.hoursInAll"), 2, change -> tenths(change.hours()))
            .words(
                text.say("workload.column.interval"),
                3,
                change -> interval(change.hours(), this::tenths))
            .number(
                text.say("workload.column.horseVisits"), 2, change -> text.whole(change.horses()))
            .number(
                text.say("workload.column.atTheStallJack"),
                2,
                change -> tenths(change.stallJackHours()))
            .number(text.say("workload.column.blows"), 2, this::blows)
            .captioned(text.say("workload.change.table", pastYear())),
        new Block.Paragraph(text.say("workload.change.arithmetic")));
  }
}
