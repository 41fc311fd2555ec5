package clenchbook.comparison;

import clenchbook.comparison.pricing.Callback;
import clenchbook.comparison.pricing.CallbackSum;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.comparison.statistics.EffectsModel;
import clenchbook.comparison.statistics.Interval;
import clenchbook.comparison.statistics.Proportion;
import clenchbook.comparison.statistics.Side;
import clenchbook.comparison.statistics.StratifiedEstimate;
import clenchbook.comparison.statistics.StratumEstimate;
import clenchbook.report.FigureTable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The figures of the comparisons as tables for files. */
final class ComparisonTables {

  /** The stratum that stands for all of them. */
  static final String ALL = "all";

  /** The measure of shoes found lost. */
  static final String LOST_SHOES = "lost shoes";

  private ComparisonTables() {}

  static List<FigureTable> of(Comparisons all) {
    return List.of(
        comparisons(all),
        breakEven(all),
        curve(all),
        sensitivity(all),
        trend(all),
        use(all),
        lostShoes(all.lostShoes()),
        jobs(all),
        prices(all),
        underList(all.pricing()),
        callbacks(all.pricing()),
        callbackSums(all.pricing()));
  }

  private static FigureTable table(String name, String columns, List<List<String>> rows) {
    return new FigureTable(name, List.of(columns.split(",")), rows);
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
    return table(
        "comparisons",
        "question,measure,stratum,a,b,n_a,n_b,mean_a,mean_b,difference,low,high,verdict,horses_a,"
            + "horses_b,low_horse,high_horse,low_a,high_a,low_b,high_b,degrees_of_freedom,"
            + "guard_difference,guard_low,guard_high,guard_horses,guard_says",
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
    row.addAll(List.of("", "", "", "", "", "", "", "", "", ""));
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
    row.addAll(List.of("", "", "", "", "", ""));
    return row;
  }

  private static String unit(Comparisons all, String unit) {
    return unit.equals("money") ? all.rates().currency() : unit;
  }

  private static FigureTable breakEven(Comparisons all) {
    return table(
        "break-even",
        "question,quantity,value,unit,low,high,basis",
        all.breakEvens().stream()
            .map(
                each ->
                    List.of(
                        each.question().title(),
                        each.quantity(),
                        Numbers.file(each.value()),
                        unit(all, each.unit()),
                        Numbers.low(each.interval()),
                        Numbers.high(each.interval()),
                        each.basis()))
            .toList());
  }

  private static FigureTable curve(Comparisons all) {
    return table(
        "break-even-curve",
        "shoes_per_stop,gain,low,high,unit",
        all.curve().stream()
            .map(
                point ->
                    List.of(
                        String.valueOf(point.shoes()),
                        Numbers.file(point.gain()),
                        Numbers.low(point.interval()),
                        Numbers.high(point.interval()),
                        all.rates().currency()))
            .toList());
  }

  private static FigureTable sensitivity(Comparisons all) {
    return table(
        "sensitivity",
        "input,change_percent,question,quantity,value,today,change,unit,shoes_at_stop",
        all.sensitivities().stream()
            .map(
                each ->
                    List.of(
                        each.input(),
                        String.valueOf(each.percent()),
                        each.question().title(),
                        each.quantity(),
                        Numbers.file(each.value()),
                        Numbers.file(each.today()),
                        Numbers.file(each.change()),
                        unit(all, each.unit()),
                        each.quantity().equals(Sensitivity.GAIN)
                            ? String.valueOf(all.stopShoes())
                            : ""))
            .toList());
  }

  private static FigureTable trend(Comparisons all) {
    return table(
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
    return table("comparison-use", "question,measure,reason,jobs,of_jobs,percent", rows);
  }

  private static List<String> useRow(Comparison comparison, String reason, int jobs) {
    return List.of(
        comparison.question().title(),
        comparison.measure().title(),
        reason,
        String.valueOf(jobs),
        String.valueOf(comparison.jobs()),
        comparison.jobs() == 0 ? "" : Numbers.people(100.0 * jobs / comparison.jobs(), 1));
  }

  private static FigureTable lostShoes(LostShoes lost) {
    return table(
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
        share.map(each -> Numbers.people(100 * each.share(), 1)).orElse(""),
        share.map(each -> Numbers.people(100 * each.wilson().low(), 1)).orElse(""),
        share.map(each -> Numbers.people(100 * each.wilson().high(), 1)).orElse(""),
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
    return table(
        "comparison-jobs",
        "question,measure,stratum,side,value,against_mean_b,date,horse,owner,work,row,sheet",
        rows);
  }

  private static String money(BigDecimal amount) {
    return amount.toPlainString();
  }

  private static FigureTable prices(Comparisons all) {
    Pricing pricing = all.pricing();
    String days = String.valueOf(all.rates().callbackDays());
    String target = money(pricing.target().movePointRight(2).stripTrailingZeros());
    List<List<String>> rows = new ArrayList<>();
    pricing.works().forEach(each -> rows.add(price(each, target, days)));
    rows.add(priceTotals(pricing, days));
    return table(
        "prices",
        "work,jobs,charged,list_price,cost,margin_after_labour,price_for_wage,price_for_target,"
            + "target_margin_percent,rise_5_percent_brings,jobs_under_list,under_list_by,callbacks,"
            + "callback_cost,left_after_callbacks,loses_by,callback_days",
        rows);
  }

  private static List<String> price(WorkPrice each, String target, String days) {
    return List.of(
        each.work(),
        String.valueOf(each.jobs()),
        money(each.charged()),
        each.list().map(ComparisonTables::money).orElse(""),
        money(each.cost()),
        money(each.margin()),
        money(each.forWage()),
        money(each.forTarget()),
        target,
        money(each.riseBrings()),
        String.valueOf(each.underList()),
        money(each.underListBy()),
        String.valueOf(each.callbacks()),
        money(each.callbackCost()),
        money(each.leftAfterCallbacks()),
        each.loses().map(WorkPrice.Loss::word).orElse(""),
        days);
  }

  private static List<String> priceTotals(Pricing pricing, String days) {
    return List.of(
        ALL,
        String.valueOf(pricing.works().stream().mapToInt(WorkPrice::jobs).sum()),
        total(pricing, WorkPrice::charged),
        "",
        total(pricing, WorkPrice::cost),
        total(pricing, WorkPrice::margin),
        "",
        "",
        "",
        total(pricing, WorkPrice::riseBrings),
        String.valueOf(pricing.works().stream().mapToInt(WorkPrice::underList).sum()),
        total(pricing, WorkPrice::underListBy),
        String.valueOf(pricing.callbacks().size()),
        money(pricing.callbackNetCost()),
        "",
        "",
        days);
  }

  private static String total(Pricing pricing, Function<WorkPrice, BigDecimal> what) {
    return money(pricing.works().stream().map(what).reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  private static FigureTable underList(Pricing pricing) {
    return table(
        "under-list",
        "owner,jobs,under_list_by",
        pricing.underList().stream().map(ComparisonTables::under).toList());
  }

  private static List<String> under(UnderList each) {
    return List.of(each.owner(), String.valueOf(each.jobs()), money(each.by()));
  }

  private static FigureTable callbacks(Pricing pricing) {
    return table(
        "callbacks",
        "row,date,owner,horse,work,reason,cost,charged,net_cost,days,caused_date,caused_work,"
            + "caused_method,caused_row,sheet,caused_sheet",
        pricing.callbacks().stream().map(ComparisonTables::callback).toList());
  }

  private static List<String> callback(Callback each) {
    ComparedJob visit = each.visit();
    return List.of(
        String.valueOf(visit.source().row()),
        visit.date().toString(),
        visit.owner(),
        visit.horseName(),
        visit.work(),
        visit.reason().word(),
        money(each.cost()),
        money(visit.money().charged()),
        money(each.netCost()),
        String.valueOf(each.days()),
        each.cause().date().toString(),
        each.cause().work(),
        Pricing.method(each.cause()),
        String.valueOf(each.cause().source().row()),
        visit.source().sheet(),
        each.cause().source().sheet());
  }

  private static FigureTable callbackSums(Pricing pricing) {
    return table(
        "callback-costs",
        "work,method,jobs,callbacks,cost,charged,net_cost",
        pricing.callbackSums().stream().map(ComparisonTables::callbackSum).toList());
  }

  private static List<String> callbackSum(CallbackSum each) {
    return List.of(
        each.work(),
        each.method(),
        String.valueOf(each.jobs()),
        String.valueOf(each.callbacks()),
        money(each.cost()),
        money(each.charged()),
        money(each.netCost()));
  }
}
