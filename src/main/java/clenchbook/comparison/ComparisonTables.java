package clenchbook.comparison;

import clenchbook.comparison.lostshoes.LostShoes;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.reports.blocks.FigureTable;
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
    List<List<String>> rows = new ArrayList<>();
    for (Comparison comparison : all.comparisons()) {
      if (comparison.question() == Question.HANDMADE_WITH_KEG
          && comparison.measure() == Measure.values()[0]) {
        rows.add(lost(all.lostShoes()));
      }
      rows.add(overall(comparison));
      Map<String, String> names = comparison.names();
      comparison.estimate().stream()
          .flatMap(found -> found.strata().stream())
          .forEach(stratum -> rows.add(stratumRow(comparison, stratum, names)));
    }
    return FigureTable.of(
        "comparisons",
        "question,measure,stratum,a,b,n_a,n_b,mean_a,mean_b,difference,low,high,verdict,horses_a,"
            + "horses_b,low_horse,high_horse,low_a,high_a,low_b,high_b,degrees_of_freedom,"
            + "guard_difference,guard_low,guard_high,guard_horses,guard_says,more_jobs_needed",
        rows);
  }

  private static List<String> start(Comparison comparison, String stratum) {
    Question question = comparison.question();
    return new ArrayList<>(
        List.of(
            question.title(),
            comparison.measure().title(),
            stratum,
            question.nameA(),
            question.nameB()));
  }

  private static List<String> overall(Comparison comparison) {
    Optional<StratifiedEstimate> found = comparison.estimate();
    List<String> row = start(comparison, ALL);
    row.add(String.valueOf(found.map(StratifiedEstimate::countA).orElse(0)));
    row.add(String.valueOf(found.map(StratifiedEstimate::countB).orElse(0)));
    row.add(found.map(each -> Numbers.file(each.meanA())).orElse(""));
    row.add(found.map(each -> Numbers.file(each.meanB())).orElse(""));
    row.add(found.map(each -> Numbers.file(each.difference())).orElse(""));
    interval(row, found.flatMap(StratifiedEstimate::plain));
    row.add(comparison.verdict().word());
    row.add(String.valueOf(found.map(StratifiedEstimate::groupsA).orElse(0)));
    row.add(String.valueOf(found.map(StratifiedEstimate::groupsB).orElse(0)));
    interval(row, found.flatMap(StratifiedEstimate::leaveOneOut));
    row.addAll(List.of("", "", "", ""));
    row.add(
        found
            .filter(each -> each.plain().isPresent())
            .map(each -> Numbers.file(each.degreesOfFreedom()))
            .orElse(""));
    Optional<EffectsModel.Answer> guard = comparison.guard();
    row.add(guard.map(each -> Numbers.file(each.difference())).orElse(""));
    interval(row, guard.flatMap(EffectsModel.Answer::interval));
    row.add(guard.map(each -> String.valueOf(each.groupsOnBothSides())).orElse(""));
    row.add(guardWord(comparison.agreement()));
    row.add(MoreJobs.of(comparison).filed());
    return row;
  }

  private static String guardWord(Comparison.Agreement agreement) {
    return switch (agreement) {
      case AGREE -> "agrees";
      case OTHER_SIGN -> "says the opposite";
      case INTERVALS_PART -> "intervals part";
      case NOT_TRIED -> "could not be tried";
    };
  }

  private static void interval(List<String> row, Optional<Interval> interval) {
    row.add(Numbers.low(interval));
    row.add(Numbers.high(interval));
  }

  private static List<String> stratumRow(
      Comparison comparison, StratumEstimate stratum, Map<String, String> names) {
    List<String> row = start(comparison, names.getOrDefault(stratum.stratum(), stratum.stratum()));
    row.add(String.valueOf(stratum.a().n()));
    row.add(String.valueOf(stratum.b().n()));
    row.add(Numbers.file(stratum.a().mean()));
    row.add(Numbers.file(stratum.b().mean()));
    row.add(Numbers.file(stratum.difference()));
    interval(row, stratum.plain());
    row.add("");
    row.add(String.valueOf(stratum.groupsA()));
    row.add(String.valueOf(stratum.groupsB()));
    interval(row, stratum.leaveOneOut());
    row.addAll(List.of("", "", "", "", "", "", "", "", "", "", ""));
    return row;
  }

  private static List<String> lost(LostShoes lost) {
    Optional<Interval> hot = lost.hot().share().map(Proportion::wilson);
    Optional<Interval> cold = lost.cold().share().map(Proportion::wilson);
    Question question = Question.HOT_WITH_COLD;
    List<String> row =
        new ArrayList<>(
            List.of(question.title(), LOST_SHOES, ALL, question.nameA(), question.nameB()));
    row.add(Numbers.file(lost.hot().on()));
    row.add(Numbers.file(lost.cold().on()));
    row.add(lost.hot().share().map(each -> Numbers.file(each.share())).orElse(""));
    row.add(lost.cold().share().map(each -> Numbers.file(each.share())).orElse(""));
    row.add(lost.difference().map(Numbers::file).orElse(""));
    interval(row, lost.plain());
    row.add(lost.verdict().word());
    row.add(String.valueOf(lost.horsesHot()));
    row.add(String.valueOf(lost.horsesCold()));
    interval(row, lost.leaveOneOut());
    interval(row, hot);
    interval(row, cold);
    row.addAll(List.of("", "", "", "", "", "", ""));
    return row;
  }

  private static FigureTable trend(Comparisons all) {
    return FigureTable.of(
        "comparison-trend",
        "month,question,measure,a,b,n_a,n_b,mean_a,mean_b,difference",
        all.trends().stream()
            .map(
                each ->
                    List.of(
                        each.month().toString(),
                        each.question().title(),
                        each.measure().title(),
                        each.question().nameA(),
                        each.question().nameB(),
                        String.valueOf(each.countA()),
                        String.valueOf(each.countB()),
                        Numbers.file(each.meanA()),
                        Numbers.file(each.meanB()),
                        Numbers.file(each.difference())))
            .toList());
  }

  private static FigureTable use(Comparisons all) {
    List<List<String>> rows = new ArrayList<>();
    for (Comparison each : all.comparisons()) {
      rows.add(useRow(each, "used", each.used().size()));
      each.leftOut().forEach((reason, jobs) -> rows.add(useRow(each, reason.words(), jobs)));
    }
    return FigureTable.of("comparison-use", "question,measure,reason,jobs,of_jobs,percent", rows);
  }

  private static List<String> useRow(Comparison comparison, String reason, int jobs) {
    return List.of(
        comparison.question().title(),
        comparison.measure().title(),
        reason,
        String.valueOf(jobs),
        String.valueOf(comparison.jobs()),
        comparison.jobs() == 0 ? "" : Numbers.rounded(100.0 * jobs / comparison.jobs(), 1));
  }

  private static FigureTable lostShoes(LostShoes lost) {
    return FigureTable.of(
        "lost-shoes",
        "method,shoes_on,lost,percent,low_percent,high_percent,horses",
        List.of(
            method("hot", lost.hot(), lost.horsesHot()),
            method("cold", lost.cold(), lost.horsesCold())));
  }

  private static List<String> method(String name, LostShoes.Tally tally, int horses) {
    Optional<Proportion> share = tally.share();
    return List.of(
        name,
        Numbers.file(tally.on()),
        Numbers.file(tally.lost()),
        share.map(each -> Numbers.rounded(100 * each.share(), 1)).orElse(""),
        share.map(each -> Numbers.rounded(100 * each.wilson().low(), 1)).orElse(""),
        share.map(each -> Numbers.rounded(100 * each.wilson().high(), 1)).orElse(""),
        String.valueOf(horses));
  }

  private static FigureTable jobs(Comparisons all) {
    List<List<String>> rows = new ArrayList<>();
    for (Comparison comparison : all.comparisons()) {
      Map<String, Double> means = comparison.meansOfB();
      for (Comparison.Entry entry : comparison.used()) {
        ComparedJob job = entry.job();
        Question question = comparison.question();
        rows.add(
            List.of(
                question.title(),
                comparison.measure().title(),
                question.stratumName(job),
                entry.side() == Side.A ? question.nameA() : question.nameB(),
                Numbers.file(entry.value()),
                Numbers.file(entry.value() - means.getOrDefault(entry.stratum(), 0.0)),
                job.date().toString(),
                job.horseName(),
                job.owner(),
                job.work(),
                String.valueOf(job.source().row()),
                job.source().sheet()));
      }
    }
    return FigureTable.of(
        "comparison-jobs",
        "question,measure,stratum,side,value,against_mean_b,date,horse,owner,work,row,sheet",
        rows);
  }
}
