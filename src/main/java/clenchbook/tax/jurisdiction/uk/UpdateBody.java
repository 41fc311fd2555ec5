package clenchbook.tax.jurisdiction.uk;

import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.lines.SummaryBuilder;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The body of a cumulative period summary as the authority's published request schema has it
 * (hmrc/self-employment-business-api, createAmendCumulativePeriodSummary, version 5.0). Every
 * single field is sent, nothing consolidated; what is never allowed stands in its field and in the
 * disallowable one, so that field less disallowable is the summary's box. Nothing is transmitted.
 */
final class UpdateBody {
  private static final String FIELDS = "uk/update-fields";
  private static final BigDecimal NOTHING = new BigDecimal("0.00");

  private final YearFigures figures;
  private final SummaryBuilder lines;
  private final RateLookup rates;

  /**
   * Over the days of an update.
   *
   * @param figures the figures from the year's first day to the quarter's end
   * @param lines the boxes built from them
   */
  UpdateBody(YearFigures figures, SummaryBuilder lines, RateLookup rates) {
    this.figures = figures;
    this.lines = lines;
    this.rates = rates;
  }

  /** The body; empty for a year before the schema's first, and for one beyond the table, named. */
  Optional<String> json() {
    Period days = figures.period();
    List<Rate> fields =
        rates.inForce(FIELDS, figures.input().taxYear().last()).stream()
            .sorted(
                Comparator.comparing(this::box, SummaryBuilder.BY_NUMBER)
                    .thenComparing(Rate::value))
            .toList();
    if (fields.isEmpty()) {
      if (!rates.beginsAfter(FIELDS, days.last())) {
        rates.lacks(FIELDS, figures.input().taxYear().last());
      }
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    parts.add(
        "\"periodDates\": {\n    \"periodStartDate\": \""
            + days.first()
            + "\",\n    \"periodEndDate\": \""
            + days.last()
            + "\"\n  }");
    parts.add(object("periodIncome", amounts(fields, "income")));
    parts.add(object("periodExpenses", amounts(fields, "expense")));
    TreeMap<String, BigDecimal> disallowed = disallowed(fields);
    if (!disallowed.isEmpty()) {
      parts.add(
          object(
              "periodDisallowableExpenses",
              disallowed.entrySet().stream()
                  .map(entry -> new Field(entry.getKey(), entry.getValue()))
                  .toList()));
    }
    return Optional.of("{\n  " + String.join(",\n  ", parts) + "\n}\n");
  }

  /** A field and its amount. */
  private record Field(String name, BigDecimal amount) {}

  private List<Field> amounts(List<Rate> fields, String kind) {
    return fields.stream()
        .filter(field -> field.name().equals(kind))
        .map(field -> new Field(field.value(), amount(field)))
        .toList();
  }

  private BigDecimal amount(Rate field) {
    if (field.code().equals(UkJurisdiction.ENTERTAINMENT)) {
      return neverAllowed();
    }
    BigDecimal amount = lines.find(field.code()).map(SummaryLine::amount).orElse(NOTHING);
    return field.name().equals("income") ? amount.max(BigDecimal.ZERO) : amount;
  }

  /** Entertaining and gifts: sent in full, and in full as not allowed. */
  private BigDecimal neverAllowed() {
    return figures.expenses().left().stream()
        .filter(
            item ->
                item.code().equals(UkJurisdiction.ENTERTAINMENT)
                    || item.code().equals(UkJurisdiction.GIFTS))
        .map(LineItem::net)
        .reduce(NOTHING, BigDecimal::add);
  }

  private TreeMap<String, BigDecimal> disallowed(List<Rate> fields) {
    TreeMap<String, BigDecimal> disallowed = new TreeMap<>();
    if (neverAllowed().signum() != 0) {
      fields.stream()
          .filter(field -> field.code().equals(UkJurisdiction.ENTERTAINMENT))
          .forEach(field -> disallowed.put(field.value() + "Disallowable", neverAllowed()));
    }
    return disallowed;
  }

  /** The box whose place in the form a field takes; entertaining stands with advertising. */
  private String box(Rate field) {
    String code = field.code().equals(UkJurisdiction.ENTERTAINMENT) ? "advertising" : field.code();
    return lines.scheme().head(code).line();
  }

  private static String object(String name, List<Field> fields) {
    List<String> members =
        fields.stream()
            .map(
                field ->
                    "    \""
                        + field.name()
                        + "\": "
                        + field.amount().setScale(2, RoundingMode.HALF_UP).toPlainString())
            .toList();
    return "\"" + name + "\": {\n" + String.join(",\n", members) + "\n  }";
  }
}
