package clenchbook.tax;

import clenchbook.book.Trip;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.assets.DepreciatedAsset;
import clenchbook.tax.expenses.CostRule;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.journal.JournalEntry;
import clenchbook.tax.journal.Posting;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.LineScheme;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.rates.RateUnit;
import clenchbook.tax.vehicle.MileageAllowance;
import clenchbook.tax.vehicle.MileageLog;
import clenchbook.tax.vehicle.Reconstructed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The year's end as tables for files. */
final class YearTables {
  private final YearFigures figures;
  private final Map<String, CostRule> rules;
  private final LineScheme lines;
  private final RateLookup rates;

  YearTables(YearFigures figures, Jurisdiction jurisdiction, LineScheme lines, RateLookup rates) {
    this.figures = figures;
    this.rules = jurisdiction.costRules(rates, figures.unit());
    this.lines = lines;
    this.rates = rates;
  }

  FigureTable summary(List<SummaryLine> summary, List<String> errors) {
    List<List<String>> rows = new ArrayList<>();
    String regime = figures.regime().word();
    for (SummaryLine line : summary) {
      LineHead head = line.head();
      rows.add(
          List.of(
              regime, head.line(), head.name(), text(line.amount()), line.basis(), head.source()));
    }
    errors.forEach(error -> rows.add(List.of(regime, "error", error, "", "", "")));
    return new FigureTable(
        "tax-summary", List.of("regime", "line", "name", "amount", "basis", "source"), rows);
  }

  FigureTable lines(List<SummaryLine> summary) {
    List<List<String>> rows = new ArrayList<>();
    summary.forEach(line -> line.items().forEach(item -> rows.add(lineRow(line, item))));
    return new FigureTable(
        "lines", List.of("line", "sheet", "row", "date", "who", "net", "tax", "gross"), rows);
  }

  private static List<String> lineRow(SummaryLine line, LineItem item) {
    return List.of(
        line.head().line(),
        item.sheet(),
        row(item.row()),
        item.date().toString(),
        item.who(),
        text(item.net()),
        text(item.tax()),
        text(item.gross()));
  }

  FigureTable journal(List<JournalEntry> journal) {
    List<List<String>> rows = new ArrayList<>();
    for (JournalEntry entry : journal) {
      entry.postings().forEach(posting -> rows.add(posting(entry, posting)));
    }
    return new FigureTable(
        "journal",
        List.of("date", "account", "description", "debit", "credit", "sheet", "row"),
        rows);
  }

  private static List<String> posting(JournalEntry entry, Posting posting) {
    boolean debit = posting.amount().signum() > 0;
    String amount = text(posting.amount().abs());
    return List.of(
        entry.date().toString(),
        posting.account(),
        entry.description(),
        debit ? amount : "",
        debit ? "" : amount,
        entry.sheet(),
        row(entry.row()));
  }

  FigureTable mileageLog() {
    List<List<String>> rows = new ArrayList<>();
    for (Trip trip : figures.log().trips()) {
      rows.add(
          List.of(
              row(trip.source().row()),
              trip.date().toString(),
              trip.from(),
              trip.to(),
              trip.purpose(),
              text(trip.distance()),
              text(trip.odometerStart()),
              text(trip.odometerEnd()),
              trip.vehicle(),
              trip.business() ? "yes" : "no"));
    }
    return new FigureTable(
        "mileage-log",
        List.of(
            "row",
            "date",
            "from",
            "to",
            "purpose",
            "distance",
            "odometer_start",
            "odometer_end",
            "vehicle",
            "business"),
        rows);
  }

  /** Distances and the business share: measure, value, unit, basis. */
  List<List<String>> distances() {
    List<List<String>> rows = new ArrayList<>();
    String unit = figures.distanceUnit().word();
    MileageLog log = figures.log();
    rows.add(List.of("business distance", text(log.business()), unit, "Trips"));
    rows.add(List.of("private distance", text(log.privateDistance()), unit, totalBasis(log)));
    rows.add(List.of("total distance", text(log.total()), unit, totalBasis(log)));
    rows.add(List.of("business share", share(), "percent", figures.vehicle().shareBasis()));
    rows.add(
        List.of(
            "reconstructed from Places, not counted",
            text(Reconstructed.total(figures.reconstructed())),
            unit,
            "each place's own way out and back on days with visits but no business trip"));
    formMiles("vehicle business miles", log.business()).ifPresent(rows::add);
    formMiles("vehicle other miles", log.privateDistance()).ifPresent(rows::add);
    return rows;
  }

  FigureTable mileage() {
    List<List<String>> rows = distances();
    for (MileageAllowance.Step step : figures.vehicle().mileage().steps()) {
      Rate rate = step.rate();
      String name = rate.name() + " from " + rate.from();
      String far = rate.unit() == RateUnit.PER_KM ? "km" : "miles";
      String distance = text(rounded(step.distance()));
      rows.add(List.of(far + " at " + name, distance, far, "of the whole tax year"));
      rows.add(List.of("rate: " + name, rate.value(), rate.unit().text(), rate.citation()));
      rows.add(List.of("amount at " + name, text(step.amount()), "money", "of the whole tax year"));
    }
    return new FigureTable("mileage", List.of("measure", "value", "unit", "basis"), rows);
  }

  /** The miles that a form asks for; nothing where the regime's form does not. */
  private Optional<List<String>> formMiles(String code, BigDecimal distance) {
    String miles = text(rounded(figures.distanceUnit().miles(distance)));
    return lines
        .find(figures.regime().lineTable(), code)
        .map(
            head ->
                List.of("line " + head.line() + ", " + head.name(), miles, "miles", head.source()));
  }

  static BigDecimal rounded(BigDecimal miles) {
    return miles.setScale(2, RoundingMode.HALF_UP);
  }

  String share() {
    return text(figures.vehicle().share().movePointRight(2).setScale(1, RoundingMode.HALF_UP));
  }

  private static String totalBasis(MileageLog log) {
    return log.fromOdometers() ? "odometer readings and Trips" : "Trips";
  }

  FigureTable flags() {
    List<List<String>> rows =
        figures.log().flags().stream()
            .map(
                flag ->
                    List.of(
                        flag.source().sheet(),
                        flag.source().at(flag.heading()).cell(),
                        row(flag.source().row()),
                        flag.what(),
                        flag.value()))
            .toList();
    return new FigureTable("mileage-flags", List.of("sheet", "cell", "row", "what", "value"), rows);
  }

  FigureTable reconstructed() {
    List<List<String>> rows =
        figures.reconstructed().stream()
            .map(row -> List.of(row.date().toString(), row.place(), text(row.distance())))
            .toList();
    return new FigureTable("reconstructed", List.of("date", "place", "distance"), rows);
  }

  FigureTable categories() {
    List<List<String>> rows = new ArrayList<>();
    for (Expenses.Mapped mapped : figures.expenses().mapping()) {
      LineHead head = headOf(mapped.code());
      rows.add(
          List.of(
              mapped.word(),
              mapped.by(),
              head.line(),
              head.name(),
              String.valueOf(mapped.rows()),
              text(mapped.amount())));
    }
    return new FigureTable(
        "categories", List.of("word", "known_as", "line", "name", "rows", "amount"), rows);
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

  private static LineHead notCounted(String why) {
    return new LineHead("not counted: " + why, why, "categories of the regime");
  }

  FigureTable reconciliation(Reconciliation ties) {
    List<List<String>> rows = new ArrayList<>();
    ties.steps()
        .forEach(step -> rows.add(List.of(step.part(), step.label(), text(step.amount()), "", "")));
    ties.left()
        .forEach(
            left ->
                rows.add(
                    List.of(
                        "left over, by row",
                        left.date() + " " + left.who() + ": " + left.why(),
                        text(left.amount()),
                        left.sheet(),
                        row(left.row()))));
    return new FigureTable(
        "reconciliation", List.of("part", "step", "amount", "sheet", "row"), rows);
  }

  FigureTable assets() {
    List<List<String>> rows = figures.assets().stream().map(this::assetRow).toList();
    return new FigureTable(
        "assets",
        List.of(
            "row",
            "asset",
            "bought",
            "cost",
            "class",
            "class_used",
            "convention",
            "business_use_percent",
            "basis",
            "depreciation_before",
            "depreciation",
            "remaining",
            "sold",
            "proceeds",
            "gain",
            "taken_by_mileage",
            "not_known"),
        rows);
  }

  private List<String> assetRow(DepreciatedAsset asset) {
    return List.of(
        row(asset.asset().source().row()),
        asset.asset().name(),
        asset.asset().bought().toString(),
        text(asset.asset().cost()),
        asset.asset().assetClass(),
        asset.kind(),
        asset.convention(),
        asset.asset().businessUsePercent().map(YearTables::text).orElse("100"),
        text(asset.basis()),
        text(asset.before()),
        text(asset.thisYear()),
        asset.remaining().map(YearTables::text).orElse(""),
        asset.asset().sold().map(LocalDate::toString).orElse(""),
        text(asset.asset().proceeds()),
        asset.gain(figures.period()).map(YearTables::text).orElse(""),
        asset.mileage().map(taken -> taken.known() ? text(taken.amount()) : "").orElse(""),
        asset.mileage().map(taken -> taken.unknown()).orElse(""));
  }

  FigureTable rates() {
    List<List<String>> rows = rates.used().stream().map(YearTables::rateRow).toList();
    return new FigureTable(
        "rates",
        List.of(
            "table",
            "code",
            "name",
            "value",
            "unit",
            "from",
            "to",
            "source",
            "section",
            "checked",
            "own_file"),
        rows);
  }

  private static List<String> rateRow(Rate rate) {
    return List.of(
        rate.table(),
        rate.code(),
        rate.name(),
        rate.value(),
        rate.unit().text(),
        rate.from().toString(),
        rate.to().toString(),
        rate.source(),
        rate.section(),
        rate.checked().map(LocalDate::toString).orElse(""),
        rate.overlaid() ? "yes" : "no");
  }

  static String text(BigDecimal amount) {
    return amount.toPlainString();
  }

  static String text(Optional<BigDecimal> amount) {
    return amount.map(value -> value.stripTrailingZeros().toPlainString()).orElse("");
  }

  static String row(int row) {
    return row == 0 ? "" : String.valueOf(row);
  }
}
