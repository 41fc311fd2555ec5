package clenchbook.comparison;

import clenchbook.comparison.lostshoes.LostShoes;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.reports.blocks.NamedRows;
import clenchbook.statistics.EffectsModel;
import clenchbook.statistics.Interval;
import clenchbook.statistics.Proportion;
import clenchbook.statistics.Side;
import clenchbook.statistics.StratifiedEstimate;
import clenchbook.statistics.StratumEstimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The figures of the comparisons as tables for files. */
final class ComparisonTables {

  /** The stratum that stands for all of them. */
  static final String ALL = "all";

  /** The measure of shoes found lost. */
  static final String LOST_SHOES = "lost shoes";

  private ComparisonTables() {}

  static List<FigureTable> of(Comparisons all) {
    List<FigureTable> tables = new ArrayList<>();
    tables.add(comparisons(all));
    tables.addAll(BreakEvenTables.of(all));
    tables.addAll(List.of(trend(all), use(all), lostShoes(all.lostShoes()), jobs(all)));
    tables.addAll(PriceTables.of(all));
    return List.copyOf(tables);
  }

  private static FigureTable comparisons(Comparisons all) {
    NamedRows rows =
        NamedRows.of(
            "question",
            "measure",
            "stratum",
            "a",
            "b",
            "n_a",
            "n_b",
            "mean_a",
            "mean_b",
            "difference",
            "low",
            "high",
            "verdict",
            "horses_a",
            "horses_b",
            "low_horse",
            "high_horse",
            "low_a",
            "high_a",
            "low_b",
            "high_b",
            "degrees_of_freedom",
            "guard_difference",
            "guard_low",
            "guard_high",
            "guard_horses",
            "guard_says",
            "more_jobs_needed");
    for (Comparison comparison : all.comparisons()) {
      if (comparison.question() == Question.HANDMADE_WITH_KEG
          && comparison.measure() == Measure.values()[0]) {
        lost(rows.row(), all.lostShoes());
      }
      overall(rows.row(), comparison);
      Map<String, String> names = comparison.names();
      comparison.estimate().stream()
          .flatMap(found -> found.strata().stream())
          .forEach(stratum -> stratum(rows.row(), comparison, stratum, names));
    }
    return rows.named("comparisons");
  }

  private static void start(NamedRows.Row row, Question question, String measure, String stratum) {
    row.put("question", question.title())
        .put("measure", measure)
        .put("stratum", stratum)
        .put("a", question.nameA())
        .put("b", question.nameB());
  }

  private static void overall(NamedRows.Row row, Comparison comparison) {
    start(row, comparison.question(), comparison.measure().title(), ALL);
    Optional<StratifiedEstimate> found = comparison.estimate();
    row.put("n_a", found.map(StratifiedEstimate::countA).orElse(0))
        .put("n_b", found.map(StratifiedEstimate::countB).orElse(0))
        .put("verdict", comparison.verdict().word())
        .put("horses_a", found.map(StratifiedEstimate::groupsA).orElse(0))
        .put("horses_b", found.map(StratifiedEstimate::groupsB).orElse(0))
        .put("guard_says", guardWord(comparison.agreement()))
        .put("more_jobs_needed", MoreJobs.of(comparison).filed());
    found.ifPresent(each -> estimated(row, each));
    comparison.guard().ifPresent(each -> guarded(row, each));
  }

  private static void estimated(NamedRows.Row row, StratifiedEstimate found) {
    row.put("mean_a", Numbers.file(found.meanA()))
        .put("mean_b", Numbers.file(found.meanB()))
        .put("difference", Numbers.file(found.difference()));
    interval(row, "low", "high", found.plain());
    interval(row, "low_horse", "high_horse", found.leaveOneOut());
    if (found.plain().isPresent()) {
      row.put("degrees_of_freedom", Numbers.file(found.degreesOfFreedom()));
    }
  }

  private static void guarded(NamedRows.Row row, EffectsModel.Answer guard) {
    row.put("guard_difference", Numbers.file(guard.difference()))
        .put("guard_horses", guard.groupsOnBothSides());
    interval(row, "guard_low", "guard_high", guard.interval());
  }

  private static String guardWord(Comparison.Agreement agreement) {
    return switch (agreement) {
      case AGREE -> "agrees";
      case OTHER_SIGN -> "says the opposite";
      case INTERVALS_PART -> "intervals part";
      case NOT_TRIED -> "could not be tried";
    };
  }

  private static void interval(
      NamedRows.Row row, String low, String high, Optional<Interval> interval) {
    row.put(low, Numbers.low(interval)).put(high, Numbers.high(interval));
  }

  private static void stratum(
      NamedRows.Row row,
      Comparison comparison,
      StratumEstimate stratum,
      Map<String, String> names) {
    String name = names.getOrDefault(stratum.stratum(), stratum.stratum());
    start(row, comparison.question(), comparison.measure().title(), name);
    row.put("n_a", stratum.a().n())
        .put("n_b", stratum.b().n())
        .put("mean_a", Numbers.file(stratum.a().mean()))
        .put("mean_b", Numbers.file(stratum.b().mean()))
        .put("difference", Numbers.file(stratum.difference()))
        .put("horses_a", stratum.groupsA())
        .put("horses_b", stratum.groupsB());
    interval(row, "low", "high", stratum.plain());
    interval(row, "low_horse", "high_horse", stratum.leaveOneOut());
  }

  private static void lost(NamedRows.Row row, LostShoes lost) {
    start(row, Question.HOT_WITH_COLD, LOST_SHOES, ALL);
    Optional<Proportion> hot = lost.hot().share();
    Optional<Proportion> cold = lost.cold().share();
    row.put("n_a", Numbers.file(lost.hot().on()))
        .put("n_b", Numbers.file(lost.cold().on()))
        .put("mean_a", hot.map(each -> Numbers.file(each.share())).orElse(""))
        .put("mean_b", cold.map(each -> Numbers.file(each.share())).orElse(""))
        .put("difference", lost.difference().map(Numbers::file).orElse(""))
        .put("verdict", lost.verdict().word())
        .put("horses_a", lost.horsesHot())
        .put("horses_b", lost.horsesCold());
    interval(row, "low", "high", lost.plain());
    interval(row, "low_horse", "high_horse", lost.leaveOneOut());
    interval(row, "low_a", "high_a", hot.map(Proportion::wilson));
    interval(row, "low_b", "high_b", cold.map(Proportion::wilson));
  }

  private static FigureTable trend(Comparisons all) {
    return FiguresOf.rows(all.trends())
        .column("month", each -> each.month().toString())
        .column("question", each -> each.question().title())
        .column("measure", each -> each.measure().title())
        .column("a", each -> each.question().nameA())
        .column("b", each -> each.question().nameB())
        .count("n_a", each -> each.countA())
        .count("n_b", each -> each.countB())
        .column("mean_a", each -> Numbers.file(each.meanA()))
        .column("mean_b", each -> Numbers.file(each.meanB()))
        .column("difference", each -> Numbers.file(each.difference()))
        .named("comparison-trend");
  }

  /** How many jobs of a comparison were used, or left out for one reason. */
  private record Use(Comparison comparison, String reason, int jobs) {
    String percent() {
      int all = comparison.jobs();
      return all == 0 ? "" : Numbers.rounded(100.0 * jobs / all, 1);
    }
  }

  private static FigureTable use(Comparisons all) {
    List<Use> uses = new ArrayList<>();
    for (Comparison each : all.comparisons()) {
      uses.add(new Use(each, "used", each.used().size()));
      each.leftOut().forEach((reason, jobs) -> uses.add(new Use(each, reason.words(), jobs)));
    }
    return FiguresOf.rows(uses)
        .column("question", use -> use.comparison().question().title())
        .column("measure", use -> use.comparison().measure().title())
        .column("reason", Use::reason)
        .count("jobs", Use::jobs)
        .count("of_jobs", use -> use.comparison().jobs())
        .column("percent", Use::percent)
        .named("comparison-use");
  }

  /** What one method lost. */
  private record Method(String name, LostShoes.Tally tally, int horses) {
    String percent(ToDoubleFunction<Proportion> part) {
      return tally
          .share()
          .map(share -> Numbers.rounded(100 * part.applyAsDouble(share), 1))
          .orElse("");
    }
  }

  private static FigureTable lostShoes(LostShoes lost) {
    return FiguresOf.rows(
            List.of(
                new Method("hot", lost.hot(), lost.horsesHot()),
                new Method("cold", lost.cold(), lost.horsesCold())))
        .column("method", Method::name)
        .column("shoes_on", method -> Numbers.file(method.tally().on()))
        .column("lost", method -> Numbers.file(method.tally().lost()))
        .column("percent", method -> method.percent(Proportion::share))
        .column("low_percent", method -> method.percent(share -> share.wilson().low()))
        .column("high_percent", method -> method.percent(share -> share.wilson().high()))
        .count("horses", Method::horses)
        .named("lost-shoes");
  }

  /** One job on its side of one comparison. */
  private record Compared(Comparison comparison, Comparison.Entry entry, double againstMeanOfB) {
    Question question() {
      return comparison.question();
    }

    String side() {
      return entry.side() == Side.A ? question().nameA() : question().nameB();
    }

    ComparedJob job() {
      return entry.job();
    }
  }

  private static FigureTable jobs(Comparisons all) {
    List<Compared> jobs = new ArrayList<>();
    for (Comparison comparison : all.comparisons()) {
      Map<String, Double> means = comparison.meansOfB();
      for (Comparison.Entry entry : comparison.used()) {
        double mean = means.getOrDefault(entry.stratum(), 0.0);
        jobs.add(new Compared(comparison, entry, entry.value() - mean));
      }
    }
    return FiguresOf.rows(jobs)
        .column("question", each -> each.question().title())
        .column("measure", each -> each.comparison().measure().title())
        .column("stratum", each -> each.question().stratumName(each.job()))
        .column("side", Compared::side)
        .column("value", each -> Numbers.file(each.entry().value()))
        .column("against_mean_b", each -> Numbers.file(each.againstMeanOfB()))
        .column("date", each -> each.job().date().toString())
        .column("horse", each -> each.job().horseName())
        .column("owner", each -> each.job().owner())
        .column("work", each -> each.job().work())
        .count("row", each -> each.job().source().row())
        .column("sheet", each -> each.job().source().sheet())
        .named("comparison-jobs");
  }
}
