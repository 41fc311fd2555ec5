package clenchbook.tax;

import clenchbook.book.Trip;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.reports.blocks.NamedRows;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.expenses.CostRule;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.journal.Posting;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The year's end as tables for files. */
final class YearTables {
  private final YearFigures figures;
  private final Map<String, CostRule> rules;
  private final FileWords words;
  private final LineScheme lines;
  private final RateLookup rates;

  YearTables(YearFigures figures, Jurisdiction jurisdiction, LineScheme lines, RateLookup rates) {
    this.figures = figures;
    this.rules = jurisdiction.costRules(rates, figures.unit());
    this.words = new FileWords(jurisdiction);
    this.lines = lines;
    this.rates = rates;
  }

  FigureTable summary(List<SummaryLine> summary, List<String> errors) {
    NamedRows rows = NamedRows.of("regime", "line", "name", "amount", "basis", "source");
    for (SummaryLine line : summary) {
      LineHead head = line.head();
      rows.row()
          .put("regime", figures.regime().word())
          .put("line", head.line())
          .put("name", head.name())
          .put("amount", text(line.amount()))
          .put("basis", line.basis().file())
          .put("source", head.source());
    }
    errors.forEach(
        error ->
            rows.row()
                .put("regime", figures.regime().word())
                .put("line", "error")
                .put("name", error));
    return rows.named("tax-summary");
  }

  /** A row behind a line. */
  private record LineRow(SummaryLine line, LineItem item) {}

  FigureTable lines(List<SummaryLine> summary) {
    List<LineRow> rows = new ArrayList<>();
    summary.forEach(line -> line.items().forEach(item -> rows.add(new LineRow(line, item))));
    return FiguresOf.rows(rows)
        .column("line", row -> row.line().head().line())
        .column("sheet", row -> row.item().sheet())
        .column("row", row -> row(row.item().row()))
        .column("date", row -> row.item().date().toString())
        .column("who", row -> row.item().who())
        .amount("net", row -> row.item().net())
        .amount("tax", row -> row.item().tax())
        .amount("gross", row -> row.item().gross())
        .named("lines");
  }

  /** One side of an entry. */
  private record JournalRow(JournalEntry entry, Posting posting) {
    String debit() {
      return posting.amount().signum() > 0 ? text(posting.amount()) : "";
    }

    String credit() {
      return posting.amount().signum() > 0 ? "" : text(posting.amount().negate());
    }
  }

  FigureTable journal(List<JournalEntry> journal) {
    List<JournalRow> rows = new ArrayList<>();
    journal.forEach(
        entry -> entry.postings().forEach(posting -> rows.add(new JournalRow(entry, posting))));
    return FiguresOf.rows(rows)
        .column("date", row -> row.entry().date().toString())
        .column("account", row -> row.posting().account())
        .column("description", row -> row.entry().description())
        .column("debit", JournalRow::debit)
        .column("credit", JournalRow::credit)
        .column("sheet", row -> row.entry().sheet())
        .column("row", row -> row(row.entry().row()))
        .named("journal");
  }

  FigureTable mileageLog() {
    return FiguresOf.rows(figures.log().trips())
        .column("row", trip -> row(trip.source().row()))
        .column("date", trip -> trip.date().toString())
        .column("from", Trip::from)
        .column("to", Trip::to)
        .column("purpose", Trip::purpose)
        .column("distance", trip -> text(trip.distance()))
        .column("odometer_start", trip -> text(trip.odometerStart()))
        .column("odometer_end", trip -> text(trip.odometerEnd()))
        .column("vehicle", Trip::vehicle)
        .column("business", trip -> trip.business() ? "yes" : "no")
        .named("mileage-log");
  }

  /** Distances and the business share. */
  List<Measure> distances() {
    return new Distances(figures, lines).all();
  }

  FigureTable mileage() {
    return FiguresOf.rows(new Distances(figures, lines).withRates())
        .column("measure", measure -> measure.what().file())
        .column("value", Measure::value)
        .column("unit", measure -> measure.unit().file())
        .column("basis", measure -> measure.basis().file())
        .named("mileage");
  }

  /** What is odd in the log. */
  TaxTable flags() {
    List<MileageLog.Flag> flags = figures.log().flags();
    return TaxTable.asIs(
            Message.of("tax.log.odd"),
            FiguresOf.rows(flags)
                .column("sheet", flag -> flag.source().sheet())
                .column("cell", flag -> flag.source().at(flag.heading()).cell())
                .column("row", flag -> row(flag.source().row()))
                .column("what", flag -> flag.what().file())
                .column("value", MileageLog.Flag::value)
                .named("mileage-flags"))
        .said("what", flags.stream().map(flag -> flag.what().said()).toList());
  }

  /** What was driven without a trip in the log. */
  TaxTable reconstructed() {
    return TaxTable.asIs(
        Message.of("tax.log.reconstructed"),
        FiguresOf.rows(figures.reconstructed())
            .column("date", row -> row.date().toString())
            .column("place", Reconstructed::place)
            .column("distance", row -> text(row.distance()))
            .named("reconstructed"));
  }

  /** The farrier's words for costs, and where they lead. */
  TaxTable categories() {
    List<Expenses.Mapped> mapping = figures.expenses().mapping();
    List<LineHead> heads = mapping.stream().map(mapped -> headOf(mapped.code())).toList();
    TaxTable table =
        TaxTable.asIs(
                Message.of("tax.categories"),
                FiguresOf.rows(mapping)
                    .column("word", Expenses.Mapped::word)
                    .column("known_as", Expenses.Mapped::by)
                    .column("line", mapped -> headOf(mapped.code()).line())
                    .column("name", mapped -> headOf(mapped.code()).name())
                    .count("rows", Expenses.Mapped::rows)
                    .amount("amount", Expenses.Mapped::amount)
                    .named("categories"))
            .said("word", mapping.stream().map(YearTables::wordOf).toList())
            .said("line", heads.stream().map(head -> head.number().said()).toList())
            .said("name", heads.stream().map(head -> head.named().said()).toList());
    return heads.stream().allMatch(LineHead::isUnnumbered) ? table.without("line") : table;
  }

  private static Message wordOf(Expenses.Mapped mapped) {
    return mapped.word().equals(Expenses.NO_WORD)
        ? Message.of("tax.categories.none")
        : Message.literal(mapped.word());
  }

  /** Where a category's code leads, in words. */
  LineHead headOf(String code) {
    CostRule rule = rules.get(code);
    if (rule != null) {
      return rule.line().isEmpty() ? notCounted(rule.rest()) : lines.head(rule.line());
    }
    if (Expenses.NEVER.contains(code)) {
      return notCounted(code);
    }
    return switch (code) {
      case Expenses.VEHICLE, Expenses.PARKING -> lines.head(figures.regime().codes().vehicle());
      default -> lines.head(code);
    };
  }

  private LineHead notCounted(String why) {
    Message said = words.said(why);
    return new LineHead(
        Wording.of("not counted: " + why, "tax.notCountedLine", said),
        new Wording(why, said),
        "categories of the regime");
  }

  FigureTable reconciliation(Reconciliation ties) {
    NamedRows rows = NamedRows.of("part", "step", "amount", "sheet", "row");
    ties.steps()
        .forEach(
            step ->
                rows.row()
                    .put("part", step.part().file())
                    .put("step", step.label().file())
                    .put("amount", text(step.amount())));
    ties.left()
        .forEach(
            left ->
                rows.row()
                    .put("part", "left over, by row")
                    .put("step", left.date() + " " + left.who() + ": " + left.why().file())
                    .put("amount", text(left.amount()))
                    .put("sheet", left.sheet())
                    .put("row", row(left.row())));
    return rows.named("reconciliation");
  }

  FigureTable assets() {
    return FiguresOf.rows(figures.assets())
        .column("row", asset -> row(asset.asset().source().row()))
        .column("asset", asset -> asset.asset().name())
        .column("bought", asset -> asset.asset().bought().toString())
        .column("cost", asset -> text(asset.asset().cost()))
        .column("class", asset -> asset.asset().assetClass())
        .column("class_used", DepreciatedAsset::kind)
        .column("convention", DepreciatedAsset::convention)
        .column(
            "business_use_percent",
            asset -> asset.asset().businessUsePercent().map(YearTables::text).orElse("100"))
        .amount("basis", DepreciatedAsset::basis)
        .amount("depreciation_before", DepreciatedAsset::before)
        .amount("depreciation", DepreciatedAsset::thisYear)
        .amountIfAny("remaining", DepreciatedAsset::remaining)
        .column("sold", asset -> asset.asset().sold().map(LocalDate::toString).orElse(""))
        .column("proceeds", asset -> text(asset.asset().proceeds()))
        .amountIfAny("gain", asset -> asset.gain(figures.period()))
        .column(
            "taken_by_mileage",
            asset ->
                asset.mileage().map(taken -> taken.known() ? text(taken.amount()) : "").orElse(""))
        .column(
            "not_known", asset -> asset.mileage().map(taken -> taken.unknown().file()).orElse(""))
        .named("assets");
  }

  FigureTable rates() {
    return FiguresOf.rows(rates.used())
        .column("table", Rate::table)
        .column("code", Rate::code)
        .column("name", Rate::name)
        .column("value", Rate::value)
        .column("unit", rate -> rate.unit().text())
        .column("from", rate -> rate.from().toString())
        .column("to", rate -> rate.to().toString())
        .column("source", Rate::source)
        .column("section", Rate::section)
        .column("checked", rate -> rate.checked().map(LocalDate::toString).orElse(""))
        .column("own_file", rate -> rate.overlaid() ? "yes" : "no")
        .named("rates");
  }

  private static String text(BigDecimal amount) {
    return amount.toPlainString();
  }

  private static String text(Optional<BigDecimal> amount) {
    return amount.map(value -> value.stripTrailingZeros().toPlainString()).orElse("");
  }

  static String row(int row) {
    return row == 0 ? "" : String.valueOf(row);
  }
}
