package clenchbook.tax.jurisdiction.de;

import clenchbook.book.TaxKind;
import clenchbook.tax.figures.YearFigures;
import clenchbook.tax.income.Income;
import clenchbook.tax.income.Sold;
import clenchbook.tax.lines.LineItem;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateLookup;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one advance return of value-added tax holds: bases by rate in whole euros, the tax on them,
 * input tax of the period's purchases, and what is to pay.
 */
final class AdvanceReturn {
  static final String STANDARD = "standard";
  static final String REDUCED = "reduced";
  static final String OTHER = "other rates";
  static final String EXEMPT = "exempt";
  private static final String ELSEWHERE = "";

  private final YearFigures figures;
  private final SmallBusiness small;
  private final RateLookup rates;
  private final Period period;
  private final List<Income.Sale> sales;
  private final List<LineItem> bought;

  /**
   * Of a period.
   *
   * @param sales what was sold on any day, by the money or by the bill
   * @param bought input tax of any day, by the day of the purchase
   */
  AdvanceReturn(
      YearFigures figures,
      SmallBusiness small,
      RateLookup rates,
      Period period,
      List<Income.Sale> sales,
      List<LineItem> bought) {
    this.figures = figures;
    this.small = small;
    this.rates = rates;
    this.period = period;
    this.sales = sales.stream().filter(sale -> period.holds(sale.item().date())).toList();
    this.bought = LineItem.within(period, bought);
  }

  /** The sales of a kind without tax, row by row, and the cents left off. */
  List<LineItem> base(String kind) {
    List<LineItem> rows =
        new ArrayList<>(
            sales.stream()
                .filter(sale -> kind(sale.sold()).equals(kind))
                .map(Income.Sale::item)
                .toList());
    BigDecimal sum = LineItem.sum(rows);
    BigDecimal cents = WholeEuros.cut(sum).subtract(sum);
    if (cents.signum() != 0) {
      rows.add(made("cents left off", cents));
    }
    return List.copyOf(rows);
  }

  /** The tax on a base. */
  BigDecimal tax(String kind) {
    if (kind.equals(OTHER)) {
      return sales.stream()
          .filter(sale -> kind(sale.sold()).equals(OTHER))
          .map(sale -> sale.item().tax())
          .reduce(figures.unit().zero(), BigDecimal::add);
    }
    return rate(kind, period.last())
        .map(rate -> WholeEuros.tax(LineItem.sum(base(kind)), rate.amount(), figures.unit()))
        .orElse(figures.unit().zero());
  }

  /** Input tax, row by row. */
  List<LineItem> inputTax() {
    return bought;
  }

  /** Tax on each base less input tax; below zero it comes back. */
  List<LineItem> payable() {
    List<LineItem> parts = new ArrayList<>();
    for (String kind : List.of(STANDARD, REDUCED, OTHER)) {
      BigDecimal tax = tax(kind);
      if (tax.signum() != 0) {
        parts.add(made(taxAt(kind), tax));
      }
    }
    parts.add(made("less input tax", LineItem.sum(bought).negate()));
    return List.copyOf(parts);
  }

  private static String taxAt(String kind) {
    return switch (kind) {
      case STANDARD -> "tax at the standard rate";
      case REDUCED -> "tax at the reduced rate";
      default -> "tax at the other rates";
    };
  }

  /** Sales without tax that no code here takes: which one does is the preparer's to say. */
  BigDecimal elsewhere() {
    return sales.stream()
        .filter(sale -> kind(sale.sold()).equals(ELSEWHERE))
        .map(sale -> sale.item().net())
        .reduce(figures.unit().zero(), BigDecimal::add);
  }

  private String kind(Sold sold) {
    if (!sold.taxed()) {
      TaxKind kind = figures.taxKinds().get(sold.taxCode());
      boolean exempt = kind == TaxKind.EXEMPT || small.on(sold.day());
      return exempt ? EXEMPT : ELSEWHERE;
    }
    for (String kind : List.of(STANDARD, REDUCED)) {
      Optional<Rate> rate = rate(kind, sold.day());
      if (rate.filter(one -> one.amount().compareTo(sold.ratePercent()) == 0).isPresent()) {
        return kind;
      }
    }
    return OTHER;
  }

  private Optional<Rate> rate(String kind, LocalDate day) {
    return rates.ask("de/vat", kind, day);
  }

  private LineItem made(String what, BigDecimal amount) {
    BigDecimal zero = figures.unit().zero();
    return new LineItem("", "tax-summary", 0, period.last(), what, amount, zero, amount);
  }
}
