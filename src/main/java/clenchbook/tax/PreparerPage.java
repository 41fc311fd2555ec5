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
import clenchbook.tax.page.Bases;
import clenchbook.tax.rates.MissingRate;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.year.Coverage;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.math.BigDecimal;
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
  private static final List<Message> LABELS =
      List.of(
          Message.of("tax.key.income"),
          Message.of("tax.key.expenses"),
          Message.of("tax.key.profit"));
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

  PreparerPage(YearPages pages, Texts texts) {
    this.figures = pages.figures();
    this.jurisdiction = pages.jurisdiction();
    this.tables = pages.tables();
    this.summary = pages.summary();
    this.coverage = pages.coverage();
    this.gauges = pages.gauges();
    this.tax = pages.tax().stream().filter(TaxTable::onPage).toList();
    Settings settings = figures.input().book().settings();
    this.text = new FigureText(texts, settings.currency());
    this.words = new PageWords(text);
  }

  /**
   * The report.
   *
   * @param name the file's name without extension
   * @param look what to look at
   * @param missing what the rate tables lack
   */
  Report report(String name, List<Message> look, List<MissingRate> missing) {
    coverage();
    MissingRate.said(missing)
        .forEach(error -> blocks.add(new Block.Caution(words.say("tax.noFigure", error))));
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
    return new Report(name, title(), subtitle(), words.say("tax.foot"), blocks, text.texts());
  }

  /** The evidence, in a file of its own under this page's title. */
  Report annex(String name, List<Block> evidence) {
    String title = words.say("tax.annex", title());
    return new Report(
        "annex/" + name, title, subtitle(), words.say("tax.foot"), evidence, text.texts());
  }

  private String title() {
    String year = figures.input().taxYear().label();
    return figures
        .input()
        .quarter()
        .map(quarter -> words.say("tax.titleOfQuarter", year, quarter))
        .orElseGet(() -> words.say("tax.title", year));
  }

  private String subtitle() {
    String business = figures.input().book().settings().text(Setting.BUSINESS_NAME);
    String from = text.date(figures.period().first());
    String to = text.date(figures.period().last());
    String period = words.say("tax.period", from, to);
    return business.isEmpty() ? period : business + ", " + period;
  }

  private void coverage() {
    if (!coverage.sentences().isEmpty()) {
      blocks.add(new Block.Caution(String.join(" ", words.say(coverage.sentences()))));
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
      said.add(words.say("tax.coverage.all", coverage.months()));
    }
    said.add(
        words.say(
            "tax.regime",
            figures.regime().word(),
            figures.basis().word().said(),
            figures.basis().costWord().said(),
            figures.input().book().settings().currency()));
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
      blocks.add(new Block.Heading(2, words.say("tax.estimates")));
      blocks.add(new LineBlocks(words).table(estimates));
    }
  }

  private void lines(List<SummaryLine> form) {
    blocks.add(new Block.Heading(1, words.say("tax.lines")));
    LineBlocks printed =
        new LineBlocks(
            words,
            Set.copyOf(
                List.of(figures.basis().word(), figures.basis().costWord(), Bases.COMPUTED)));
    blocks.add(printed.table(form));
    printed.carriedOver(form).ifPresent(blocks::add);
  }

  private void look(List<Message> look) {
    boolean registered = !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
    List<String> said = new ArrayList<>(registered ? List.of() : words.say(gauges.said()));
    said.addAll(words.say(look));
    String notComputed =
        words.say(jurisdiction.notComputed(figures)).stream().collect(Collectors.joining(". "))
            + ".";
    blocks.add(new Block.Heading(1, words.say("tax.notComputed")));
    blocks.add(new Block.Paragraph(notComputed));
    blocks.add(new Block.Heading(1, words.say("tax.look")));
    said.stream().limit(MOST_TO_LOOK_AT).forEach(one -> blocks.add(new Block.Paragraph(one)));
    if (said.isEmpty()) {
      blocks.add(new Block.Paragraph(words.say("tax.look.nothing")));
    }
    if (said.size() > MOST_TO_LOOK_AT) {
      more(said.size() - MOST_TO_LOOK_AT, "figures/what-to-look-at.csv");
    }
  }

  private void more(int count, String where) {
    blocks.add(new Block.Paragraph(words.say("tax.more", count, where)));
  }

  private void table(TaxTable table) {
    blocks.add(new Block.Heading(2, words.say(table.title())));
    blocks.add(new PrintedTables(words).of(table));
    table.remarks().forEach(remark -> blocks.add(new Block.Paragraph(words.say(remark))));
  }

  /** A line of the vehicle's table. */
  private record Driven(String what, String value, String unit, String basis) {}

  private void vehicle() {
    if (figures.log().trips().isEmpty() && figures.expenses().vehicleRows().isEmpty()) {
      return;
    }
    blocks.add(new Block.Heading(2, words.say("tax.vehicle")));
    List<Driven> rows = new ArrayList<>();
    for (Measure measure : tables.distances()) {
      if (!Distances.isNothing(measure)) {
        rows.add(
            new Driven(
                words.say(measure.what()),
                words.cell(measure.value()),
                words.say(measure.unit()),
                words.say(measure.basis())));
      }
    }
    figures.vehicle().mileage().steps().forEach(step -> rows.add(allowance(step)));
    blocks.add(
        TableOf.rows(rows)
            .words(words.say("tax.column.measure"), 9, Driven::what)
            .number(words.say("tax.column.value"), 4, Driven::value)
            .words(words.say("tax.column.unit"), 3, Driven::unit)
            .words(words.say("tax.column.basis"), 8, Driven::basis)
            .plain());
  }

  private Driven allowance(MileageAllowance.Step step) {
    Rate rate = step.rate();
    BigDecimal distance = Distances.rounded(step.distance());
    Message far =
        rate.unit() == RateUnit.PER_KM
            ? Message.of("tax.distance.km", distance)
            : Message.of("tax.distance.miles", distance);
    Message basis = Message.of("tax.vehicle.at", far, rate.amount());
    Message mark = rate.standing().mark();
    return new Driven(
        words.say(rate.said()),
        words.amount(step.amount()),
        figures.input().book().settings().currency(),
        words.say(mark.isEmpty() ? basis : Message.joined(", ", List.of(basis, mark))));
  }

  private void assets() {
    if (figures.assets().isEmpty()) {
      return;
    }
    AssetWords register = new AssetWords(words, new FileWords(jurisdiction));
    blocks.add(new Block.Heading(2, words.say("tax.assets")));
    blocks.add(
        TableOf.rows(figures.assets().stream().limit(MOST_ASSETS).toList())
            .words(words.say("tax.asset.name"), 7, asset -> asset.asset().name())
            .words(words.say("tax.asset.bought"), 4, asset -> asset.asset().bought().toString())
            .number(words.say("tax.asset.basis"), 4, asset -> words.amount(asset.basis()))
            .words(words.say("tax.asset.class"), 8, asset -> register.of(asset, figures.period()))
            .number(words.say("tax.asset.thisYear"), 4, asset -> words.amount(asset.thisYear()))
            .number(words.say("tax.asset.left"), 4, this::left)
            .plain());
    int rest = figures.assets().size() - MOST_ASSETS;
    if (rest > 0) {
      more(rest, "accountant/assets.csv");
    }
  }

  private String left(DepreciatedAsset asset) {
    return asset.remaining().map(words::amount).orElseGet(() -> words.say("tax.asset.notKnown"));
  }

  /** What counts on no line, and the vehicle the other way. */
  private void beside() {
    List<SummaryLine> lines =
        summary.stream().filter(line -> line.kind() == SummaryLine.Kind.BESIDE).toList();
    blocks.add(new Block.Heading(2, words.say("tax.beside")));
    blocks.add(new LineBlocks(words).beside(lines.stream().limit(MOST_ROWS).toList()));
    if (lines.size() > MOST_ROWS) {
      more(lines.size() - MOST_ROWS, "annex/tax-summary.pdf");
    }
  }
}
