package clenchbook.tax.jurisdiction;

import clenchbook.tax.lines.LineItem;
import java.util.List;

/**
 * Assets that count as expense or income instead of staying in the register, for the journal.
 *
 * @param bought the part of each asset's cost that is an expense of the period
 * @param sold the part of each asset's proceeds that is income of the period
 * @param retired what was left of assets that are gone, where that is an expense of its own
 */
public record CapitalItems(List<LineItem> bought, List<LineItem> sold, List<LineItem> retired) {
  /** No asset counts so. */
  public static final CapitalItems NONE = new CapitalItems(List.of(), List.of());

  /** Copies its lists. */
  public CapitalItems {
    bought = List.copyOf(bought);
    sold = List.copyOf(sold);
    retired = List.copyOf(retired);
  }

  /** Without anything left over of assets that are gone. */
  public CapitalItems(List<LineItem> bought, List<LineItem> sold) {
    this(bought, sold, List.of());
  }
}
