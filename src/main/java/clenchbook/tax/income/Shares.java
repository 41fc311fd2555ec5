package clenchbook.tax.income;

import clenchbook.tax.billed.Billed;
import clenchbook.tax.billed.BilledLine;
import clenchbook.values.money.LargestRemainder;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A bill's work by tax code while it is being paid: whatever was received so far is spread over the
 * codes by what each asks for, so that the shares add to the money to the cent.
 */
final class Shares {
  private final List<Group> groups;
  private final MinorUnit unit;

  /** One tax code's work, and what it took so far; mutable while it is being paid. */
  private static final class Group {
    private final Sold sold;
    private BigDecimal net = BigDecimal.ZERO;
    private BigDecimal tax = BigDecimal.ZERO;
    private BigDecimal netTaken = BigDecimal.ZERO;
    private BigDecimal taxTaken = BigDecimal.ZERO;

    Group(Sold sold) {
      this.sold = sold;
    }

    void add(BilledLine line) {
      net = net.add(line.net());
      tax = tax.add(line.tax());
    }

    SoldShare take(BigDecimal netNow, BigDecimal taxNow) {
      SoldShare share = new SoldShare(sold, netNow.subtract(netTaken), taxNow.subtract(taxTaken));
      netTaken = netNow;
      taxTaken = taxNow;
      return share;
    }
  }

  private Shares(List<Group> groups, MinorUnit unit) {
    this.groups = groups;
    this.unit = unit;
  }

  /** The codes of a bill's lines, in their order. */
  static Shares of(Billed bill, List<BilledLine> lines, MinorUnit unit) {
    Map<Sold, Group> groups = new LinkedHashMap<>();
    lines.forEach(line -> groups.computeIfAbsent(Sold.of(bill, line), Group::new).add(line));
    return new Shares(List.copyOf(groups.values()), unit);
  }

  /** What each code takes when so much is received in all, less what it took before. */
  List<SoldShare> upTo(BigDecimal net, BigDecimal tax) {
    List<BigDecimal> nets = spread(net, groups.stream().map(group -> group.net).toList());
    List<BigDecimal> taxes = spread(tax, groups.stream().map(group -> group.tax).toList());
    List<SoldShare> shares = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      shares.add(groups.get(i).take(nets.get(i), taxes.get(i)));
    }
    return List.copyOf(shares);
  }

  /** By largest remainder; a code that takes away instead of asking gets nothing. */
  private List<BigDecimal> spread(BigDecimal amount, List<BigDecimal> asked) {
    if (asked.size() == 1) {
      return List.of(amount);
    }
    List<BigDecimal> weights = asked.stream().map(one -> one.max(BigDecimal.ZERO)).toList();
    return LargestRemainder.split(amount, weights, unit);
  }
}
