package clenchbook.comparison.breakeven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.MaterialKind;
import clenchbook.book.Shaping;
import clenchbook.comparison.JobMaker;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.Comparison;
import clenchbook.comparison.questions.Measure;
import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.SortedJob;
import clenchbook.statistics.Interval;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Break-even figures solved on paper.
 *
 * <p>The forge: setting up costs 6 min at 0.50 and 5 min of gas at 0.04, together 3.20; a hot shoe
 * saves 2 min, 1.00, less 5 min of gas, 0.20. So 3.20 / 0.80 = 4 shoes, and a stop of eight brings
 * 8 x 0.80 - 3.20 = 3.20.
 *
 * <p>A keg set earns 60 x 87 / 80 - 6 = 59.25 an hour (120 charged less 24 + 1 + 2 + 6, 70 + 10
 * min, 8.00 of overhead). A handmade set of 140 takes 60 min more: 60 x 107 / 140 - 3.43.
 */
class BreakEvenFiguresTest {
  private int row = 2;

  private static Comparison compare(Question question, Measure measure, List<ComparedJob> jobs) {
    return Comparison.of(question, measure, SortedJob.of(question, jobs), JobMaker.rates());
  }

  private ForgeBreakEven forge(CompareRates rates, ComparedJob... others) {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      jobs.add(JobMaker.job().horse("hot " + i).row(row++).hot("24").make());
      jobs.add(JobMaker.job().horse("cold " + i).row(row++).cold("32").make());
    }
    jobs.addAll(List.of(others));
    return ForgeBreakEven.of(
        compare(Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE, jobs), jobs, rates);
  }

  private JobMaker hand(int shoes, String charged, String making) {
    JobMaker hand = JobMaker.job().horse("hand " + row).row(row++);
    hand.kind = Optional.of(MaterialKind.HANDMADE);
    hand.shoes = shoes;
    hand.newShoes = shoes;
    hand.charged = charged;
    hand.making = making;
    return hand;
  }

  private JobMaker keg(int shoes, String charged) {
    JobMaker keg = JobMaker.job().horse("keg " + row).row(row++);
    keg.shoes = shoes;
    keg.newShoes = shoes;
    keg.charged = charged;
    return keg;
  }

  private static HandmadeBreakEven handmade(List<ComparedJob> jobs) {
    return HandmadeBreakEven.of(compare(Question.HANDMADE_WITH_KEG, Measure.EARNED_PER_HOUR, jobs));
  }

  private List<ComparedJob> sets(int count, String charged) {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      jobs.add(keg(4, "120").make());
      jobs.add(hand(4, charged, "60").make());
    }
    return jobs;
  }

  /** Set-up and gain under each shift, then their quotient and eight gains less the set-up. */
  @ParameterizedTest(name = "{0} {1} %")
  @CsvSource({
    "steel, -20, 3.20, 0.80",
    "steel, 20, 3.20, 0.80",
    "gas, -20, 3.16, 0.84",
    "gas, 20, 3.24, 0.76",
    "wage, -20, 2.60, 0.60",
    "wage, 20, 3.80, 1.00",
    "minutes, -20, 3.20, 0.60",
    "minutes, 20, 3.20, 1.00",
    "price, -20, 3.20, 0.80",
    "price, 20, 3.20, 0.80"
  })
  void the_forge_moves_with_wage_gas_and_minutes(
      String input, int percent, double setup, double gain) {
    List<Sensitivity> all =
        Sensitivity.of(forge(JobMaker.rates()), handmade(List.of()), 8).stream()
            .filter(each -> each.input().equals(input) && each.percent() == percent)
            .toList();
    assertEquals(2, all.size());
    assertEquals(BreakEven.SHOES_PER_STOP, all.get(0).quantity());
    assertEquals(setup / gain, all.get(0).value().orElseThrow(), 1e-9);
    assertEquals(4.0, all.get(0).today().orElseThrow(), 1e-9);
    assertEquals(setup / gain - 4, all.get(0).change().orElseThrow(), 1e-9);
    assertEquals(Sensitivity.GAIN, all.get(1).quantity());
    assertEquals(8 * gain - setup, all.get(1).value().orElseThrow(), 1e-9);
    assertEquals(3.2, all.get(1).today().orElseThrow(), 1e-9);
  }

  @Test
  void the_curve_runs_from_one_shoe_to_twenty_four_and_crosses_at_the_figure() {
    ForgeBreakEven.Answer answer = forge(JobMaker.rates()).answer();
    assertEquals(4.0, answer.figure().value().orElseThrow(), 1e-9);
    assertEquals(24, answer.curve().size());
    assertEquals(1, answer.curve().get(0).shoes());
    assertEquals(0.8 - 3.2, answer.curve().get(0).gain(), 1e-9);
    assertEquals(0, answer.curve().get(3).gain(), 1e-9);
    assertEquals(24 * 0.8 - 3.2, answer.curve().get(23).gain(), 1e-9);
    assertEquals(
        "shape minutes measured; wage given; gas cost given; forge set-up given",
        answer.figure().basis());
    assertEquals(answer.figure().basis(), InEnglish.said(answer.figure().restsOn()));
    // All horses are alike, so that drawing them again changes nothing.
    Interval interval = answer.figure().interval().orElseThrow();
    assertEquals(4.0, interval.low(), 1e-9);
    assertEquals(4.0, interval.high(), 1e-9);
  }

  /** Trims, cold shoes and aluminium burn nothing for a hot steel shoe. */
  @Test
  void only_hot_steel_shoes_say_what_gas_a_shoe_takes() {
    JobMaker trim = JobMaker.job().horse("t").row(row++).hot("24");
    trim.shoes = 0;
    trim.forge = "500";
    JobMaker light = JobMaker.job().horse("l").row(row++).hot("24");
    light.kind = Optional.of(MaterialKind.ALUMINIUM);
    light.forge = "500";
    JobMaker cold = JobMaker.job().horse("c").row(row++);
    cold.shaping = Optional.of(Shaping.COLD);
    cold.shape = "";
    cold.forge = "500";
    ForgeBreakEven forge = forge(JobMaker.rates(), trim.make(), light.make(), cold.make());
    assertEquals(4.0, forge.answer().figure().value().orElseThrow(), 1e-9);
  }

  private static CompareRates without(boolean wage, boolean gas) {
    CompareRates rates = JobMaker.rates();
    return new CompareRates(
        rates.currency(),
        rates.text(),
        rates.minor(),
        wage ? rates.wage() : Optional.empty(),
        rates.helperWage(),
        gas ? rates.gasPerMinute() : Optional.empty(),
        rates.setupMinutes(),
        rates.setupGasMinutes(),
        false,
        rates.callbackDays(),
        rates.targetMargin());
  }

  @Test
  void without_a_wage_time_is_worth_nothing_and_the_forge_never_pays() {
    BreakEven figure = forge(without(false, true)).answer().figure();
    assertEquals(true, figure.never());
    assertEquals(false, figure.known());
    assertEquals(
        "shape minutes measured; wage not given; gas cost given; forge set-up default",
        figure.basis());
    assertEquals(figure.basis(), InEnglish.said(figure.restsOn()));
  }

  /** 3.00 of wage for the set-up over 1.00 a shoe. */
  @Test
  void without_a_gas_cost_gas_is_worth_nothing() {
    BreakEven figure = forge(without(true, false)).answer().figure();
    assertEquals(3.0, figure.value().orElseThrow(), 1e-9);
    assertEquals(true, figure.known());
    assertEquals(false, figure.never());
    assertTrue(figure.basis().contains("gas cost not given"));
  }

  @Test
  void what_cannot_be_told_is_neither_known_nor_never() {
    BreakEven none =
        new BreakEven(
            Question.HOT_WITH_COLD,
            "x",
            "shoes",
            OptionalDouble.empty(),
            Optional.empty(),
            "",
            Message.NONE);
    assertEquals(false, none.known());
    assertEquals(false, none.never());
  }

  /** Factors on steel, gas, minutes and price; the rest solved for the price, then the minutes. */
  private static double[] onPaper(double steel, double gas, double minutes, double price) {
    double keg = 60 * (120 * price - 24 * steel - gas - 8) / (70 * minutes + 10) - 6;
    double rest = 140 * price - 24 * steel - gas - 8;
    double overhead = 60 * 8 / 140.0;
    double time = 130 * minutes + 10;
    double extra = (keg + overhead) * time / 60 - rest;
    double making = ((60 * rest / (keg + overhead) - 10) / minutes - 70) / 4;
    return new double[] {extra, making};
  }

  @ParameterizedTest(name = "{0} {1} %")
  @CsvSource({
    "steel, -20, 0.8, 1, 1, 1",
    "steel, 20, 1.2, 1, 1, 1",
    "gas, -20, 1, 0.8, 1, 1",
    "gas, 20, 1, 1.2, 1, 1",
    "wage, 20, 1, 1, 1, 1",
    "minutes, -20, 1, 1, 0.8, 1",
    "minutes, 20, 1, 1, 1.2, 1",
    "price, -20, 1, 1, 1, 0.8",
    "price, 20, 1, 1, 1, 1.2"
  })
  void handmade_moves_with_steel_gas_minutes_and_price(
      String input, int percent, double steel, double gas, double minutes, double price) {
    HandmadeBreakEven handmade = handmade(sets(5, "140"));
    List<Sensitivity> all =
        Sensitivity.of(
                ForgeBreakEven.of(
                    compare(Question.HOT_WITH_COLD, Measure.SHAPE_MINUTES_PER_SHOE, List.of()),
                    List.of(),
                    JobMaker.rates()),
                handmade,
                8)
            .stream()
            .filter(each -> each.input().equals(input) && each.percent() == percent)
            .toList();
    double[] paper = onPaper(steel, gas, minutes, price);
    assertEquals(BreakEven.EXTRA_PRICE, all.get(0).quantity());
    assertEquals(paper[0], all.get(0).value().orElseThrow(), 1e-9);
    assertEquals(39.25, all.get(0).today().orElseThrow(), 1e-9);
    assertEquals(BreakEven.MAKING_MINUTES, all.get(1).quantity());
    assertEquals(paper[1], all.get(1).value().orElseThrow(), 1e-6);
  }

  @Test
  void figures_of_alike_horses_have_intervals_without_width() {
    List<BreakEven> figures = handmade(sets(5, "140")).figures();
    assertEquals(39.25, figures.get(0).value().orElseThrow(), 1e-9);
    assertEquals(39.25, figures.get(0).interval().orElseThrow().low(), 1e-9);
    assertEquals(onPaper(1, 1, 1, 1)[1], figures.get(1).value().orElseThrow(), 1e-6);
    assertEquals(0, figures.get(1).interval().orElseThrow().width(), 1e-6);
    assertEquals(15.0, figures.get(2).value().orElseThrow(), "60 min over four shoes");
    assertEquals(Optional.empty(), figures.get(2).interval());
    assertEquals(
        List.of(
            "minutes measured; making minutes standard",
            "minutes measured; making minutes standard",
            "standard of sheet Materials"),
        figures.stream().map(BreakEven::basis).toList());
  }

  @Test
  void too_few_sets_give_no_figure_and_say_so() {
    List<BreakEven> figures = handmade(sets(4, "140")).figures();
    assertEquals(3, figures.size());
    figures.forEach(
        figure -> {
          assertEquals(OptionalDouble.empty(), figure.value());
          assertEquals(Optional.empty(), figure.interval());
          assertEquals("not enough jobs", figure.basis());
          assertEquals(figure.basis(), InEnglish.said(figure.restsOn()));
          assertEquals(figure.quantity(), InEnglish.said(figure.named()));
        });
  }

  /**
   * Five of each all round (weight 2.5) and two handmade with three keg in front (weight 1.2): keg
   * 60 x 47 / 80 - 6 = 29.25 against handmade 60 x 57 / 110 - 4.36, whose 30 min of making make
   * 110.
   */
  @Test
  void strata_count_by_their_weights() {
    List<ComparedJob> jobs = sets(5, "140");
    for (int i = 0; i < 3; i++) {
      jobs.add(keg(2, "80").make());
    }
    jobs.add(hand(2, "90", "30").make());
    jobs.add(hand(2, "90", "30").make());
    double gapFull = 60 * 107 / 140.0 - 60 * 8 / 140.0 - 59.25;
    double gapFronts = 60 * 57 / 110.0 - 60 * 8 / 110.0 - 29.25;
    double weighted = (2.5 * gapFull + 1.2 * gapFronts) / 3.7;
    double perUnit = (2.5 * 60 / 140.0 + 1.2 * 60 / 110.0) / 3.7;
    assertEquals(-weighted / perUnit, handmade(jobs).figures().get(0).value().orElseThrow(), 1e-9);
  }

  @Test
  void horses_that_differ_give_an_interval_about_the_figure() {
    List<ComparedJob> jobs = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      JobMaker keg = keg(4, "120");
      keg.jobMinutes = String.valueOf(64 + i);
      jobs.add(keg.make());
      JobMaker hand = hand(4, "140", "60");
      hand.jobMinutes = String.valueOf(66 + i % 5 * 2);
      jobs.add(hand.make());
    }
    List<BreakEven> figures = handmade(jobs).figures();
    for (BreakEven figure : figures.subList(0, 2)) {
      Interval interval = figure.interval().orElseThrow();
      double value = figure.value().orElseThrow();
      assertTrue(interval.low() < value && value < interval.high(), figure.toString());
      // The set's own minutes differ by a tenth: neither figure can lie far off.
      assertTrue(interval.width() < 12, figure.toString());
    }
  }

  /** Two thousand draws for a book of ordinary size, at least five hundred for any. */
  @ParameterizedTest
  @CsvSource({"0, 2000", "1, 2000", "5000, 2000", "10000, 1000", "20000, 500", "90000, 500"})
  void a_large_book_is_drawn_less_often(int jobs, int times) {
    assertEquals(times, HorseDraws.times(jobs));
  }

  @Test
  void a_change_of_what_is_never_or_unknown_is_unknown() {
    OptionalDouble never = OptionalDouble.of(Double.POSITIVE_INFINITY);
    OptionalDouble four = OptionalDouble.of(4);
    assertEquals(OptionalDouble.empty(), shifted(never, four).change());
    assertEquals(OptionalDouble.empty(), shifted(four, never).change());
    assertEquals(OptionalDouble.empty(), shifted(OptionalDouble.empty(), four).change());
    assertEquals(OptionalDouble.empty(), shifted(four, OptionalDouble.empty()).change());
    assertEquals(OptionalDouble.of(0), shifted(four, four).change());
  }

  private static Sensitivity shifted(OptionalDouble value, OptionalDouble today) {
    return new Sensitivity("gas", 20, Question.HOT_WITH_COLD, "x", "shoes", value, today);
  }

  @Test
  void gas_costs_what_the_minutes_burn() {
    assertEquals(0.2, JobMaker.rates().gas(new BigDecimal("5")), 1e-12);
  }
}
