package clenchbook.tax.jurisdiction.uk;

import clenchbook.book.Setting;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.jurisdiction.TaxTable;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.sales.VatPeriod;
import clenchbook.tax.sales.VatPurchases;
import clenchbook.texts.Message;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** The boxes of the VAT return, period by period, on each scheme. */
final class VatTable {
  private static final Wording STANDARD = Wording.of("standard", "britain.scheme.standard");
  private static final List<String> PRINTED = List.of("1", "4", "5", "6", "7");

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
  TaxTable table() {
    List<Box> boxes = isRegistered() ? boxes() : List.of();
    FigureTable table =
        FiguresOf.rows(boxes)
            .column("from", box -> box.period().first().toString())
            .column("to", box -> box.period().last().toString())
            .column("scheme", box -> box.scheme().file())
            .column("box", Box::number)
            .column("name", Box::name)
            .amount("amount", Box::amount)
            .named("vat");
    return TaxTable.byPeriod(Message.of("britain.vat"), table, PRINTED)
        .said("scheme", boxes.stream().map(box -> box.scheme().said()).toList());
  }

  private List<Box> boxes() {
    List<Box> boxes = new ArrayList<>();
    periods().stream().filter(VatPeriod::isUsed).forEach(period -> addVat(boxes, period));
    return boxes;
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

  private void addVat(List<Box> boxes, VatPeriod vat) {
    Return standard = new Return(boxes, vat.period(), STANDARD);
    standard.add("1", "VAT due on sales", vat.salesTax());
    standard.add("2", "VAT due on acquisitions", figures.unit().zero());
    standard.add("3", "Total VAT due", vat.salesTax());
    standard.add("4", "VAT reclaimed on purchases", vat.purchaseTax());
    standard.add("5", "Net VAT to pay (below zero: to reclaim)", vat.payable());
    standard.add("6", "Sales without VAT, whole pounds", VatPeriod.wholePounds(vat.sales()));
    standard.add(
        "7", "Purchases without VAT, whole pounds", VatPeriod.wholePounds(vat.purchases()));
    standard.add("8", "Supplies to the European Union", BigDecimal.ZERO);
    standard.add("9", "Acquisitions from the European Union", BigDecimal.ZERO);
    for (FlatRate flat : FlatRate.values()) {
      rates
          .find("uk/flat-rate", flat.code(), vat.period().last())
          .ifPresent(
              rate -> addFlat(new Return(boxes, vat.period(), flat.scheme(rate)), vat, rate));
    }
  }

  private void addFlat(Return flat, VatPeriod vat, Rate rate) {
    BigDecimal due = vat.flatRateTax(rate.factor(), figures.unit());
    flat.add("1", "VAT due at the flat rate", due);
    flat.add("3", "Total VAT due", due);
    flat.add("4", "VAT reclaimed (large equipment only)", figures.unit().zero());
    flat.add("5", "Net VAT to pay", due);
    flat.add("6", "Turnover with VAT, whole pounds", VatPeriod.wholePounds(vat.flatRateTurnover()));
    flat.add("7", "Purchases", BigDecimal.ZERO);
  }

  /** A box of the return of a period on a scheme; its name stands in the file alone. */
  private record Box(
      Period period, Wording scheme, String number, String name, BigDecimal amount) {}

  /** The boxes of one period on one scheme, which go to those of all. */
  private record Return(List<Box> boxes, Period period, Wording scheme) {
    void add(String number, String name, BigDecimal amount) {
      boxes.add(new Box(period, scheme, number, name, amount));
    }
  }
}
