package clenchbook.stock;

import clenchbook.book.Names;
import clenchbook.reports.blocks.FigureText;
import clenchbook.stock.orders.StockLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What to order from one supplier.
 *
 * @param supplier the supplier, as the first line spells it; empty where the book does not say
 * @param lines what to order, by item and size, at least one
 * @param cost what it will cost, the sum of the lines
 */
record SupplierOrder(String supplier, List<StockLine> lines, BigDecimal cost) {

  SupplierOrder {
    lines = List.copyOf(lines);
  }

  /** The orders of a month, the dearest first. */
  static List<SupplierOrder> of(StockMonth month) {
    Map<String, List<StockLine>> suppliers = new TreeMap<>();
    for (StockLine line : month.orders()) {
      suppliers.computeIfAbsent(Names.key(line.supplier()), key -> new ArrayList<>()).add(line);
    }
    return suppliers.values().stream()
        .map(lines -> of(month, lines.get(0).supplier(), lines))
        .sorted(Comparator.comparing(SupplierOrder::cost).reversed())
        .toList();
  }

  private static SupplierOrder of(StockMonth month, String supplier, List<StockLine> lines) {
    BigDecimal cost =
        lines.stream()
            .map(StockLine::orderCost)
            .reduce(month.settings().minorUnit().zero(), BigDecimal::add);
    return new SupplierOrder(supplier, lines, cost);
  }

  String supplierOrNone(FigureText text) {
    return supplier.isEmpty() ? text.say("stock.noSupplier") : supplier;
  }

  String itemNames() {
    return lines.stream()
        .map(line -> StockWarnings.name(line.month().shelf()))
        .collect(Collectors.joining(", "));
  }
}
