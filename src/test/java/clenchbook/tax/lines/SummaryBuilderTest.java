package clenchbook.tax.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.tax.lines.SummaryLine.Kind;
import clenchbook.tax.page.Bases;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.MissingRate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.WrittenRates;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines of a summary, their order and their sums. */
class SummaryBuilderTest {
  private static final LocalDate LAST = LocalDate.of(2026, 12, 31);
  private static final MinorUnit CENTS = new MinorUnit(2);

  private static RateLookup rates() {
    return WrittenRates.lookup(
        "x/lines, work, line, 1, Receipts",
        "x/lines, insurance, line, 15, Insurance",
        "x/lines, phone, line, 27b, Other",
        "x/lines, dues, line, 27b, Other",
        "x/lines, meals, line, 24b, Meals",
        "x/lines, net, line, 31, Profit",
        "x/lines, vehicle, line, 9, Car",
        "x/lines, old, line, 8, Old, 2000-01-01, 2025-12-31",
        "x/lines, old, line, gone, Old, 2026-01-01, 2026-12-31");
  }

  private static SummaryBuilder builder() {
    return new SummaryBuilder(new LineScheme(WrittenRates.regime(), LAST, rates()), CENTS, LAST);
  }

  private static LineItem item(String code, int row, String net) {
    BigDecimal amount = new BigDecimal(net);
    return new LineItem(
        code, "Purchases", row, LocalDate.of(2026, 3, 1), "x", amount, CENTS.zero(), amount);
  }

  private static String written(SummaryLine line) {
    return String.join(
        " ",
        line.head().line(),
        line.head().name(),
        line.amount().toPlainString(),
        line.basis().file(),
        line.kind().toString());
  }

  @Test
  void costs_stand_in_the_forms_order_and_two_words_of_a_line_together() {
    List<SummaryLine> lines =
        builder()
            .costs(
                List.of(
                    item("meals", 2, "5"),
                    item("phone", 3, "7"),
                    item("insurance", 4, "11"),
                    item("dues", 5, "13"),
                    item("vehicle", 6, "17"),
                    item("whatnot", 7, "19"),
                    item("old", 8, "23")),
                Bases.CASH);
    assertEquals(
        List.of(
            "gone Old 23.00 cash COST",
            "9 Car 17.00 cash COST",
            "15 Insurance 11.00 cash COST",
            "24b Meals 5.00 cash COST",
            "27b Other 20.00 cash COST",
            "whatnot Whatnot 19.00 cash COST"),
        lines.stream().map(SummaryBuilderTest::written).toList());
    assertEquals(2, lines.get(4).items().size());
  }

  @Test
  void a_line_of_rows_stands_though_it_has_none() {
    SummaryBuilder builder = builder();
    assertEquals("1 Receipts 0.00 cash ROWS", written(builder.rows("work", List.of(), Bases.CASH)));
    assertEquals(List.of(), builder.costs(List.of(), Bases.CASH));
    assertEquals(1, builder.lines().size());
  }

  @Test
  void a_total_adds_and_takes_away_whole_lines() {
    SummaryBuilder builder = builder();
    SummaryLine work = builder.rows("work", List.of(item("work", 2, "100.50")), Bases.CASH);
    List<SummaryLine> costs = builder.costs(List.of(item("insurance", 3, "40.25")), Bases.CASH);
    SummaryLine net = builder.total("net", List.of(work), costs);
    assertEquals("31 Profit 60.25 computed TOTAL", written(net));
    assertEquals(
        List.of("line 1, Receipts 100.50", "line 15, Insurance -40.25"),
        net.items().stream().map(each -> each.who() + " " + each.net()).toList());
    assertEquals("tax-summary", net.items().get(0).sheet());
    assertEquals(Optional.of(net), builder.find("net"));
    assertEquals(Optional.empty(), builder.find("meals"));
    assertEquals(3, builder.lines().size());
  }

  @Test
  void an_explained_code_gives_its_line_another_basis_and_more_sources() {
    SummaryBuilder builder = builder();
    builder.explain("phone", Wording.literal("half of it"), "Phone rule");
    builder.explain("dues", Wording.literal("half of it"), "");
    List<SummaryLine> lines =
        builder.costs(
            List.of(item("dues", 2, "1"), item("phone", 3, "2"), item("meals", 4, "3")),
            Bases.CASH);
    assertEquals("24b Meals 3.00 cash COST", written(lines.get(0)));
    assertEquals("27b Other 3.00 half of it COST", written(lines.get(1)));
    assertEquals("a test (not checked); Phone rule", lines.get(1).head().source());
    assertEquals("a test (not checked)", lines.get(0).head().source());
  }

  @Test
  void figures_made_by_a_rate_bear_the_rule_as_their_one_row() {
    LineHead head = new LineHead("A", "Figure", "a test");
    BigDecimal five = new BigDecimal("5.00");
    SummaryBuilder builder = builder();
    assertEquals("A Figure 5.00 computed BESIDE", written(builder.figure(head, five, "by rule")));
    assertEquals(
        "A Figure 5.00 estimate ESTIMATE", written(builder.estimate(head, five, "by rule")));
    assertEquals("A Figure 5.00 computed TABLED", written(builder.tabled(head, five, "by rule")));
    assertEquals(
        "A Figure 5.00 cash TABLED",
        written(builder.tabled(head, List.of(item("x", 2, "5.00")), Bases.CASH)));
    assertEquals(
        "A Figure 5.00 cash BESIDE",
        written(builder.beside(head, List.of(item("x", 2, "5.00")), Bases.CASH)));
    assertEquals("by rule", builder.lines().get(0).items().get(0).who());
    assertEquals(LAST, builder.lines().get(0).items().get(0).date());
  }

  @Test
  void a_line_whose_rows_do_not_add_to_it_is_refused() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new SummaryLine(
                new LineHead("1", "x", ""),
                new BigDecimal("5"),
                Bases.CASH,
                List.of(item("x", 2, "4.99")),
                Kind.ROWS));
  }

  @ParameterizedTest
  @CsvSource({"9, 10, -1", "24a, 24b, -1", "9, word, -1", "word, another, 1", "7, 7, 0"})
  void numbers_stand_before_words_and_by_their_size(String one, String other, int order) {
    assertEquals(order, Integer.signum(SummaryBuilder.BY_NUMBER.compare(one, other)));
  }

  @Test
  void a_code_that_the_form_lacks_stands_under_its_own_word() {
    LineScheme scheme = new LineScheme(WrittenRates.regime(), LAST, rates());
    assertEquals(
        new LineHead("whatnot", "Whatnot", "the program's own heading"), scheme.head("whatnot"));
    assertEquals("", scheme.head("").name());
    assertEquals(Optional.empty(), scheme.find("x/lines", "whatnot"));
    assertEquals("8", scheme.order("old"), "the number of a year that has one");
    assertEquals("whatnot", scheme.order("whatnot"));
  }

  @Test
  void a_heading_of_the_programs_own_has_no_number_on_pages_and_its_code_in_files() {
    LineScheme scheme =
        new LineScheme(
            WrittenRates.regime(), LAST, rates(), Map.of("whatnot", Message.of("x.whatnot")));
    LineHead head = scheme.head("whatnot");
    assertEquals(List.of("whatnot", "Whatnot"), List.of(head.line(), head.name()));
    assertTrue(head.isUnnumbered());
    assertEquals(Message.of("x.whatnot"), head.named().said());
    assertTrue(scheme.head("unmapped").isUnnumbered());
    assertFalse(scheme.head("other").isUnnumbered());
  }

  @Test
  void a_year_without_any_line_is_missing_its_table() {
    RateLookup rates = rates();
    new LineScheme(WrittenRates.regime(), LAST, rates);
    assertEquals(List.of(), rates.missing());
    LocalDate beyond = LocalDate.of(2150, 12, 31);
    new LineScheme(WrittenRates.regime(), beyond, rates);
    assertEquals(List.of(new MissingRate("x/lines", MissingRate.ALL, beyond)), rates.missing());
  }

  @ParameterizedTest
  @CsvSource({"Form (from memory), from memory", "Form 2026, ''"})
  void a_heads_mark_says_how_its_number_was_found(String source, String mark) {
    assertEquals(mark, InEnglish.said(new LineHead("1", "x", source).mark()));
  }

  @Test
  void rows_are_sorted_taken_by_code_and_by_period() {
    LineItem first = item("a", 2, "1");
    LineItem later = item("a", 3, "1").onDay(LocalDate.of(2026, 4, 1));
    LineItem other = item("b", 2, "1");
    assertEquals(
        List.of(first, other, later),
        Stream.of(later, other, first).sorted(LineItem.BY_DATE).toList());
    assertEquals(List.of(first, later), LineItem.of("a", List.of(later, other, first)));
    Period march = new Period(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 31));
    assertEquals(List.of(first, other), LineItem.within(march, List.of(later, other, first)));
    assertEquals(new BigDecimal("3"), LineItem.sum(List.of(first, later, other)));
    assertEquals("b", first.on("b").code());
    assertEquals(new BigDecimal("7"), first.with(new BigDecimal("7")).net());
  }
}
