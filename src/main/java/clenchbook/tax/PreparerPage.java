package clenchbook.tax;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.blocks.TableOf;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.PageWords;
import clenchbook.tax.page.Sentence;
import clenchbook.tax.rates.MissingRate;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.Coverage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The page for whoever prepares the return, of three sheets at most, in one language. The first
 * sheet holds the year, what the book covers of it, the profit, the form's lines, what to look at,
 * and what was not computed; the others the taxes on sales, limits, due days, vehicle and assets.
 */
final class PreparerPage {
  private static final Sentence FOOT =
      Sentence.of(
          "Not a return and not advice: local rules and a licensed adviser decide. Each rate's year"
              + " and source stand in the annex.");

  private static final List<String> LABELS = List.of("Income", "Expenses", "Profit");
  private static final int MOST_ON_FIRST_SHEET = 22;
  private static final int MOST_ASSETS = 16;
  private static final int MOST_TO_LOOK_AT = 15;
  private static final int MOST_ROWS = 14;

  private final YearFigures figures;
  private final Jurisdiction jurisdiction;
  private final YearTables tables;
  private final List<SummaryLine> summary;
  private final Coverage coverage;
  private final Gauges gauges;
  private final List<TaxTable> tax;
  private final PageWords words;
  private final FigureText text;
  private final List<Block> blocks = new ArrayList<>();

  PreparerPage(YearPages pages, String language) {
    this.figures = pages.figures();
    this.jurisdiction = pages.jurisdiction();
    this.tables = pages.tables();
    this.summary = pages.summary();
    this.coverage = pages.coverage();
    this.gauges = pages.gauges();
    this.tax = pages.tax().stream().filter(TaxTable::onPage).toList();
    Settings settings = figures.input().book().settings();
    this.text = new FigureText(settings.texts().in(language), settings.currency());
    this.words = PageWords.of(language, figures.input().translations()).with(text);
  }

  /**
   * The report.
   *
   * @param name the file's name without extension
   * @param look what to look at
   * @param missing what the rate tables lack
   */
  Report report(String name, List<Sentence> look, List<MissingRate> missing) {
    List<String> cautions = new ArrayList<>();
    coverage(cautions);
    for (Sentence error : MissingRate.said(missing)) {
      cautions.add(words.say("No figure:") + " " + words.say(error) + ".");
    }
    cautions.forEach(caution -> blocks.add(new Block.Caution(caution)));
    keyFigures();
    List<SummaryLine> form = summary.stream().filter(PreparerPage::isOfForm).toList();
    boolean apart = form.size() > MOST_ON_FIRST_SHEET;
    lines(form.stream().filter(line -> !apart || !isEstimate(line)).toList());
    look(look);
    if (apart) {
      estimates(form.stream().filter(PreparerPage::isEstimate).toList());
    }
    tax.forEach(this::table);
    blocks.addAll(gauges.blocks(words));
    vehicle();
    assets();
    beside();
    return new Report(name, title(), subtitle(), words.say(FOOT), blocks, text.texts())
        .in(words.language());
  }

  /** The evidence, in a file of its own under this page's title. */
  Report annex(String name, List<Block> evidence) {
    String title = title() + ": annex";
    return new Report("annex/" + name, title, subtitle(), words.say(FOOT), evidence, text.texts());
  }

  private String title() {
    return words.say(
        figures
            .input()
            .quarter()
            .map(
                quarter ->
                    Sentence.of(
                        "Tax summary {0}, quarter {1}",
                        figures.input().taxYear().label(), String.valueOf(quarter)))
            .orElse(Sentence.of("Tax summary {0}", figures.input().taxYear().label())));
  }

  private String subtitle() {
    String business = figures.input().book().settings().text(Setting.BUSINESS_NAME);
    String period =
        words.say(
            Sentence.of(
                "{0} to {1}",
                text.date(figures.period().first()), text.date(figures.period().last())));
    return business.isEmpty() ? period : business + ", " + period;
  }

  private void coverage(List<String> cautions) {
    if (!coverage.sentences().isEmpty()) {
      cautions.add(String.join(" ", words.say(coverage.sentences())));
    }
  }

  private void keyFigures() {
    List<Block.KeyFigure> set = new ArrayList<>();
    for (int i = 0; i < LABELS.size(); i++) {
      String label = words.say(LABELS.get(i));
      String line = tables.headOf(jurisdiction.keyFigures().get(i)).line();
      SummaryLine.find(summary, line)
          .ifPresent(
              row ->
                  set.add(new Block.KeyFigure(label, text.money(row.amount()), Optional.empty())));
    }
    blocks.add(new Block.KeyFigures(set));
    List<String> said = new ArrayList<>();
    if (coverage.whole() && coverage.bare().isEmpty()) {
      said.add(
          words.say(
              Sentence.of("The book covers all {0} months.", String.valueOf(coverage.months()))));
    }
    said.add(
        words.say(
            Sentence.of(
                "Regime {0}. Income: {1}. Costs: {2}. Amounts in {3}.",
                figures.regime().word(),
                words.say(figures.basis().word()),
                words.say(figures.basis().costWord()),
                figures.input().book().settings().currency())));
    blocks.add(new Block.Paragraph(String.join(" ", said)));
  }

  /** The form's lines; one of nothing, behind which no row stands, needs no line on paper. */
  private static boolean isOfForm(SummaryLine line) {
    boolean nothing = line.amount().signum() == 0 && line.items().isEmpty();
    return line.kind() != SummaryLine.Kind.BESIDE
        && line.kind() != SummaryLine.Kind.TABLED
        && !nothing;
  }

  private static boolean isEstimate(SummaryLine line) {
    return line.kind() == SummaryLine.Kind.ESTIMATE;
  }

  private void estimates(List<SummaryLine> estimates) {
    if (!estimates.isEmpty()) {
      blocks.add(new Block.Heading(2, words.say("Estimates, in no total")));
      blocks.add(new LineBlocks(words).table(estimates));
    }
  }

  private void lines(List<SummaryLine> form) {
    blocks.add(new Block.Heading(1, words.say("Line by line")));
    LineBlocks printed =
        new LineBlocks(
            words,
            Set.copyOf(List.of(figures.basis().word(), figures.basis().costWord(), "computed")));
    blocks.add(printed.table(form));
    printed.carriedOver(form).ifPresent(blocks::add);
  }

  private void look(List<Sentence> look) {
    boolean registered = !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
    List<String> said = new ArrayList<>(registered ? List.of() : gauges.said(words));
    said.addAll(words.say(look));
    String notComputed =
        words.say(jurisdiction.notComputed(figures)).stream().collect(Collectors.joining(". "))
            + ".";
    blocks.add(new Block.Heading(1, words.say("What was not computed")));
    blocks.add(new Block.Paragraph(notComputed));
    blocks.add(new Block.Heading(1, words.say("What to look at")));
    said.stream().limit(MOST_TO_LOOK_AT).forEach(one -> blocks.add(new Block.Paragraph(one)));
    if (said.isEmpty()) {
      blocks.add(new Block.Paragraph(words.say("Nothing stands out.")));
    }
    if (said.size() > MOST_TO_LOOK_AT) {
      more(said.size() - MOST_TO_LOOK_AT, "figures/what-to-look-at.csv");
    }
  }

  private void more(int count, String where) {
    blocks.add(
        new Block.Paragraph(
            words.say(Sentence.of("And {0} more in {1}.", String.valueOf(count), where))));
  }

  private void table(TaxTable table) {
    blocks.add(new Block.Heading(2, words.say(table.title())));
    blocks.add(new PrintedTables(words).of(table));
    table.remarks().forEach(remark -> blocks.add(new Block.Paragraph(words.say(remark))));
  }

  private void vehicle() {
    if (figures.log().trips().isEmpty() && figures.expenses().vehicleRows().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, words.say("Vehicle")));
    List<List<String>> rows = new ArrayList<>(tables.distances());
    rows.removeIf(PreparerPage::isNothing);
    for (MileageAllowance.Step step : figures.vehicle().mileage().steps()) {
      rows.add(allowance(step));
    }
    blocks.add(
        TableOf.rows(rows)
            .words(words.say("Measure"), 9, row -> words.say(row.get(0)))
            .number(words.say("Value"), 4, row -> words.inColumn(row.get(1)))
            .words(words.say("Unit"), 3, row -> words.say(row.get(2)))
            .words(words.say("Basis"), 8, row -> words.say(row.get(3)))
            .plain());
  }

  private List<String> allowance(MileageAllowance.Step step) {
    Rate rate = step.rate();
    String unit = rate.unit() == RateUnit.PER_KM ? "km" : "miles";
    String distance = YearTables.text(YearTables.rounded(step.distance()));
    String mark = rate.standing().mark();
    String basis =
        words.say(Sentence.of("{0} {1} at {2}", distance, unit, rate.value()))
            + (mark.isEmpty() ? "" : ", " + words.say(mark));
    return List.of(
        rate.name(),
        step.amount().toPlainString(),
        figures.input().book().settings().currency(),
        basis);
  }

  /** A measure of nothing needs no line on paper. */
  private static boolean isNothing(List<String> measure) {
    return measure.get(0).startsWith("reconstructed") && measure.get(1).equals("0");
  }

  private void assets() {
    if (figures.assets().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, words.say("Assets")));
    blocks.add(
        TableOf.rows(figures.assets().stream().limit(MOST_ASSETS).toList())
            .words(words.say("Asset"), 7, asset -> asset.asset().name())
            .words(words.say("Bought"), 4, asset -> asset.asset().bought().toString())
            .number(words.say("Basis"), 4, asset -> words.amount(asset.basis()))
            .words(words.say("Class"), 8, this::classOf)
            .number(words.say("This year"), 4, asset -> words.amount(asset.thisYear()))
            .number(
                words.say("Left"),
                4,
                asset -> asset.remaining().map(words::amount).orElse(words.say("not known")))
            .plain());
    int rest = figures.assets().size() - MOST_ASSETS;
    if (rest > 0) {
      more(rest, "accountant/assets.csv");
    }
  }

  private String classOf(DepreciatedAsset asset) {
    return AssetWords.of(asset, figures.period(), words);
  }

  /** What counts on no line, and the vehicle the other way. */
  private void beside() {
    List<SummaryLine> lines =
        summary.stream().filter(line -> line.kind() == SummaryLine.Kind.BESIDE).toList();
    blocks.add(new Block.Heading(2, words.say("Beside the lines, in no total")));
    blocks.add(new LineBlocks(words).beside(lines.stream().limit(MOST_ROWS).toList()));
    if (lines.size() > MOST_ROWS) {
      more(lines.size() - MOST_ROWS, "annex/tax-summary.pdf");
    }
  }
}
