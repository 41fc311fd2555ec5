package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.VatPeriod;
import clenchbook.tax.sales.VatPurchases;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The boxes of the VAT return, period by period, on each scheme. */
final class VatTable {
  private final YearFigures figures;
  private final RateLookup rates;

  VatTable(YearFigures figures, RateLookup rates) {
    this.figures = figures;
    this.rates = rates;
  }

  /** Whether a Tax number is given: without one no VAT is charged or shown. */
  boolean isRegistered() {
    return !figures.input().book().settings().text(Setting.TAX_NUMBER).isEmpty();
  }

  /** VAT by calendar quarter, on the standard method and at both flat rates. */
  FigureTable table() {
    List<List<String>> rows = new ArrayList<>();
    if (isRegistered()) {
      periods().stream().filter(VatPeriod::isUsed).forEach(period -> addVat(rows, period));
    }
    return new FigureTable("vat", List.of("from", "to", "scheme", "box", "name", "amount"), rows);
  }

  /** The VAT periods of the figures, those without any sale or purchase included. */
  List<VatPeriod> periods() {
    List<VatPeriod> periods = new ArrayList<>();
    List<LineItem> sales = figures.sales();
    List<LineItem> purchases = VatPurchases.of(figures.input().book());
    YearMonth first = YearMonth.from(figures.period().first());
    YearMonth start = first.minusMonths((first.getMonthValue() - 1) % 3);
    int quarters = figures.wholeYear() ? 4 : 1;
    for (int i = 0; i < quarters; i++) {
      YearMonth from = start.plusMonths(3L * i);
      Period period = new Period(from.atDay(1), from.plusMonths(2).atEndOfMonth());
      periods.add(VatPeriod.of(period, sales, purchases, figures.unit()));
    }
    return periods;
  }

  private void addVat(List<List<String>> rows, VatPeriod vat) {
    add(rows, vat, "standard", "1", "VAT due on sales", vat.salesTax());
    add(rows, vat, "standard", "2", "VAT due on acquisitions", figures.unit().zero());
    add(rows, vat, "standard", "3", "Total VAT due", vat.salesTax());
    add(rows, vat, "standard", "4", "VAT reclaimed on purchases", vat.purchaseTax());
    add(rows, vat, "standard", "5", "Net VAT to pay (below zero: to reclaim)", vat.payable());
    add(
        rows,
        vat,
        "standard",
        "6",
        "Sales without VAT, whole pounds",
        VatPeriod.wholePounds(vat.sales()));
    add(
        rows,
        vat,
        "standard",
        "7",
        "Purchases without VAT, whole pounds",
        VatPeriod.wholePounds(vat.purchases()));
    add(rows, vat, "standard", "8", "Supplies to the European Union", BigDecimal.ZERO);
    add(rows, vat, "standard", "9", "Acquisitions from the European Union", BigDecimal.ZERO);
    for (String code : List.of("other activity", "limited cost")) {
      rates
          .find("uk/flat-rate", code, vat.period().last())
          .ifPresent(rate -> addFlat(rows, vat, rate));
    }
  }

  private void addFlat(List<List<String>> rows, VatPeriod vat, Rate rate) {
    String scheme =
        "flat rate " + rate.value() + " % (" + rate.name().toLowerCase(Locale.ROOT) + ")";
    BigDecimal due = vat.flatRateTax(rate.factor(), figures.unit());
    add(rows, vat, scheme, "1", "VAT due at the flat rate", due);
    add(rows, vat, scheme, "3", "Total VAT due", due);
    add(rows, vat, scheme, "4", "VAT reclaimed (large equipment only)", figures.unit().zero());
    add(rows, vat, scheme, "5", "Net VAT to pay", due);
    add(
        rows,
        vat,
        scheme,
        "6",
        "Turnover with VAT, whole pounds",
        VatPeriod.wholePounds(vat.flatRateTurnover()));
    add(rows, vat, scheme, "7", "Purchases", BigDecimal.ZERO);
  }

  private static void add(
      List<List<String>> rows,
      VatPeriod vat,
      String scheme,
      String box,
      String name,
      BigDecimal amount) {
    rows.add(
        List.of(
            vat.period().first().toString(),
            vat.period().last().toString(),
            scheme,
            box,
            name,
            amount.toPlainString()));
  }
}
