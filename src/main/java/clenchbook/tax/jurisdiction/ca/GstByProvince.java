package clenchbook.tax.jurisdiction.ca;

import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Sales of the period by the province in which the work was done: the rate charged beside the rate
 * of that province on the bill's day.
 */
final class GstByProvince {
  private static final String NOT_KNOWN = "not known";

  private final YearFigures figures;
  private final RateLookup rates;
  private final TreeMap<String, Row> rows = new TreeMap<>();

  GstByProvince(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
    if (GstReturn.isRegistered(figures)) {
      Provinces provinces = new Provinces(figures.input().jobs());
      figures.billed().stream()
          .filter(bill -> bill.isIncome() && figures.period().holds(bill.date()))
          .forEach(bill -> bill.lines().forEach(line -> add(bill, line, provinces)));
    }
  }

  /** Sales of one province at one rate; mutable while it is added up. */
  private static final class Row {
    private final String province;
    private final boolean measured;
    private final BigDecimal charged;
    private final Optional<Rate> expected;
    private BigDecimal net = BigDecimal.ZERO;
    private BigDecimal tax = BigDecimal.ZERO;

    Row(Provinces.Found found, BigDecimal charged, Optional<Rate> expected) {
      this.province = found.code();
      this.measured = found.measured();
      this.charged = charged;
      this.expected = expected;
    }

    boolean differs() {
      return expected.filter(rate -> rate.amount().compareTo(charged) != 0).isPresent();
    }

    BigDecimal expectedTax(YearFigures figures) {
      return expected
          .map(rate -> figures.unit().round(net.multiply(rate.factor())))
          .orElse(figures.unit().zero());
    }
  }

  private void add(Billed bill, BilledLine line, Provinces provinces) {
    Provinces.Found found = provinces.of(line).orElse(new Provinces.Found("", false));
    BigDecimal charged =
        line.tax().signum() == 0 ? BigDecimal.ZERO : line.ratePercent().stripTrailingZeros();
    Optional<Rate> expected =
        found.code().isEmpty()
            ? Optional.empty()
            : rates.find("ca/gst", found.code().toLowerCase(Locale.ROOT), bill.date());
    String key =
        String.join(
            "\n",
            found.code(),
            String.valueOf(found.measured()),
            charged.toPlainString(),
            expected.map(Rate::value).orElse(""));
    Row row = rows.computeIfAbsent(key, unused -> new Row(found, charged, expected));
    row.net = row.net.add(line.net());
    row.tax = row.tax.add(line.tax());
  }

  TaxTable table() {
    return TaxTable.asIs(Message.of("canada.provinces"), figures())
        .headed("province", Message.of("canada.column.province"))
        .headed("charged_percent", Message.of("canada.column.charged"))
        .headed("province_percent", Message.of("canada.column.ofProvince"))
        .headed("tax_charged", Message.of("canada.column.taxCharged"))
        .headed("tax_by_province", Message.of("canada.column.taxByProvince"))
        .said("province", GstByProvince::province)
        .placedOnPage()
        .without("found_by", "differs");
  }

  private static Message province(String code) {
    return code.equals(NOT_KNOWN) ? Message.of("canada.noProvince") : Message.literal(code);
  }

  private FigureTable figures() {
    return FiguresOf.rows(List.copyOf(rows.values()))
        .column("province", row -> row.province.isEmpty() ? NOT_KNOWN : row.province)
        .column(
            "found_by", row -> row.measured ? "the place's address" : "default: the business's own")
        .amount("charged_percent", row -> row.charged)
        .column("province_percent", row -> row.expected.map(Rate::value).orElse(""))
        .amount("net", row -> row.net)
        .amount("tax_charged", row -> row.tax)
        .amount("tax_by_province", row -> row.expectedTax(figures))
        .column("differs", row -> row.differs() ? "yes" : "no")
        .named("gst-by-province");
  }

  /** Taxed sales at another rate than their province's. */
  BigDecimal atAnotherRate() {
    return sum(row -> row.differs() && row.charged.signum() != 0);
  }

  /** Sales in Quebec, whose own sales tax is not carried. */
  BigDecimal inQuebec() {
    return sum(row -> row.province.equals("QC"));
  }

  /** Sales of which no province is known. */
  BigDecimal nowhere() {
    return sum(row -> row.province.isEmpty());
  }

  private BigDecimal sum(Predicate<Row> which) {
    return rows.values().stream()
        .filter(which)
        .map(row -> row.net)
        .reduce(figures.unit().zero(), BigDecimal::add);
  }
}
