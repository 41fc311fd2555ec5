package clenchbook.billing.documents;

import clenchbook.jobs.charge.LineTax;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Net and tax of a document's lines, rounded half up either once per tax code or on each line.
 * Where prices include tax, net is gross divided by one plus the rate at the same level, and net
 * and tax add to what was charged.
 *
 * @param nets one per line, in their order; the lines of a code add to its net
 * @param totals one per code and rate, by code, then rate
 */
public record TaxAmounts(List<BigDecimal> nets, List<TaxTotal> totals) {
  /** Copies its lists. */
  public TaxAmounts {
    nets = List.copyOf(nets);
    totals = List.copyOf(totals);
  }

  /**
   * An amount with its tax.
   *
   * @param amount what is charged, at the minor unit
   * @param tax its code and rate
   */
  public record Item(BigDecimal amount, LineTax tax) {}

  /**
   * Works out the tax of a document.
   *
   * @param items its lines
   * @param perLine true to round tax on each line, false once per code
   * @param unit the minor unit
   * @return nets and totals
   */
  public static TaxAmounts of(List<Item> items, boolean perLine, MinorUnit unit) {
    Map<LineTax, List<Integer>> groups = new TreeMap<>(ORDER);
    for (int index = 0; index < items.size(); index++) {
      groups.computeIfAbsent(items.get(index).tax(), unused -> new ArrayList<>()).add(index);
    }
    List<BigDecimal> nets = new ArrayList<>(Collections.nCopies(items.size(), unit.zero()));
    List<TaxTotal> totals = new ArrayList<>();
    groups.forEach(
        (tax, lines) -> {
          List<BigDecimal> amounts = lines.stream().map(line -> items.get(line).amount()).toList();
          Group group = perLine ? eachLine(tax, amounts, unit) : once(tax, amounts, unit);
          for (int index = 0; index < lines.size(); index++) {
            nets.set(lines.get(index), group.nets().get(index));
          }
          totals.add(
              new TaxTotal(
                  tax.code(),
                  tax.name(),
                  tax.chargedPercent(),
                  sum(group.nets()),
                  group.tax(),
                  tax.category(),
                  tax.reason()));
        });
    return new TaxAmounts(nets, totals);
  }

  private static final Comparator<LineTax> ORDER =
      Comparator.comparing(LineTax::code)
          .thenComparing(LineTax::ratePercent)
          .thenComparing(LineTax::exempt)
          .thenComparing(LineTax::included)
          .thenComparing(LineTax::kind)
          .thenComparing(LineTax::reason);

  private record Group(List<BigDecimal> nets, BigDecimal tax) {}

  private static Group once(LineTax tax, List<BigDecimal> amounts, MinorUnit unit) {
    BigDecimal charged = sum(amounts);
    if (!tax.included()) {
      return new Group(amounts, due(tax, charged, unit));
    }
    BigDecimal net = unit.round(without(tax, charged));
    List<BigDecimal> weights = amounts.stream().map(BigDecimal::abs).toList();
    List<BigDecimal> nets = LargestRemainder.split(net, weights, unit);
    return new Group(nets, tax.exempt() ? unit.zero() : charged.subtract(net));
  }

  private static Group eachLine(LineTax tax, List<BigDecimal> amounts, MinorUnit unit) {
    List<BigDecimal> nets = new ArrayList<>();
    BigDecimal total = unit.zero();
    for (BigDecimal amount : amounts) {
      BigDecimal net = tax.included() ? unit.round(without(tax, amount)) : amount;
      BigDecimal lineTax = tax.included() ? amount.subtract(net) : due(tax, amount, unit);
      nets.add(net);
      total = total.add(tax.exempt() ? unit.zero() : lineTax);
    }
    return new Group(nets, total);
  }

  private static BigDecimal without(LineTax tax, BigDecimal gross) {
    return gross.divide(BigDecimal.ONE.add(tax.rate()), MathContext.DECIMAL128);
  }

  private static BigDecimal due(LineTax tax, BigDecimal net, MinorUnit unit) {
    return tax.exempt() ? unit.zero() : unit.round(net.multiply(tax.rate()));
  }

  private static BigDecimal sum(List<BigDecimal> amounts) {
    return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
