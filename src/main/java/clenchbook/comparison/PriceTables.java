package clenchbook.comparison;

import clenchbook.comparison.pricing.Callback;
import clenchbook.comparison.pricing.CallbackSum;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.reports.blocks.NamedRows;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/** Prices and callbacks as tables for files. */
final class PriceTables {
  private PriceTables() {}

  static List<FigureTable> of(Comparisons all) {
    Pricing pricing = all.pricing();
    return List.of(prices(all), underList(pricing), callbacks(pricing), callbackSums(pricing));
  }

  private static String money(BigDecimal amount) {
    return amount.toPlainString();
  }

  private static FigureTable prices(Comparisons all) {
    Pricing pricing = all.pricing();
    NamedRows rows =
        NamedRows.of(
            "work",
            "jobs",
            "charged",
            "list_price",
            "cost",
            "margin_after_labour",
            "price_for_wage",
            "price_for_target",
            "target_margin_percent",
            "rise_5_percent_brings",
            "jobs_under_list",
            "under_list_by",
            "callbacks",
            "callback_cost",
            "left_after_callbacks",
            "loses_by",
            "callback_days");
    int days = all.rates().callbackDays();
    String target = money(pricing.target().movePointRight(2).stripTrailingZeros());
    for (WorkPrice each : pricing.works()) {
      price(rows.row().put("callback_days", days).put("target_margin_percent", target), each);
    }
    totals(rows.row().put("callback_days", days), pricing);
    return rows.named("prices");
  }

  private static void price(NamedRows.Row row, WorkPrice each) {
    row.put("work", each.work())
        .put("jobs", each.jobs())
        .put("charged", money(each.charged()))
        .put("list_price", each.list().map(PriceTables::money).orElse(""))
        .put("cost", money(each.cost()))
        .put("margin_after_labour", money(each.margin()))
        .put("price_for_wage", money(each.forWage()))
        .put("price_for_target", money(each.forTarget()))
        .put("rise_5_percent_brings", money(each.riseBrings()))
        .put("jobs_under_list", each.underList())
        .put("under_list_by", money(each.underListBy()))
        .put("callbacks", each.callbacks())
        .put("callback_cost", money(each.callbackCost()))
        .put("left_after_callbacks", money(each.leftAfterCallbacks()))
        .put("loses_by", each.loses().map(WorkPrice.Loss::word).orElse(""));
  }

  private static void totals(NamedRows.Row row, Pricing pricing) {
    List<WorkPrice> works = pricing.works();
    row.put("work", ComparisonTables.ALL)
        .put("jobs", works.stream().mapToInt(WorkPrice::jobs).sum())
        .put("charged", total(pricing, WorkPrice::charged))
        .put("cost", total(pricing, WorkPrice::cost))
        .put("margin_after_labour", total(pricing, WorkPrice::margin))
        .put("rise_5_percent_brings", total(pricing, WorkPrice::riseBrings))
        .put("jobs_under_list", works.stream().mapToInt(WorkPrice::underList).sum())
        .put("under_list_by", total(pricing, WorkPrice::underListBy))
        .put("callbacks", pricing.callbacks().size())
        .put("callback_cost", money(pricing.callbackNetCost()));
  }

  private static String total(Pricing pricing, Function<WorkPrice, BigDecimal> what) {
    return money(pricing.works().stream().map(what).reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  private static FigureTable underList(Pricing pricing) {
    return FiguresOf.rows(pricing.underList())
        .column("owner", UnderList::owner)
        .count("jobs", UnderList::jobs)
        .amount("under_list_by", UnderList::by)
        .named("under-list");
  }

  private static FigureTable callbacks(Pricing pricing) {
    return FiguresOf.rows(pricing.callbacks())
        .count("row", each -> each.visit().source().row())
        .column("date", each -> each.visit().date().toString())
        .column("owner", each -> each.visit().owner())
        .column("horse", each -> each.visit().horseName())
        .column("work", each -> each.visit().work())
        .column("reason", each -> each.visit().reason().word())
        .amount("cost", Callback::cost)
        .amount("charged", each -> each.visit().money().charged())
        .amount("net_cost", Callback::netCost)
        .count("days", Callback::days)
        .column("caused_date", each -> each.cause().date().toString())
        .column("caused_work", each -> each.cause().work())
        .column("caused_method", each -> Pricing.method(each.cause()))
        .count("caused_row", each -> each.cause().source().row())
        .column("sheet", each -> each.visit().source().sheet())
        .column("caused_sheet", each -> each.cause().source().sheet())
        .named("callbacks");
  }

  private static FigureTable callbackSums(Pricing pricing) {
    return FiguresOf.rows(pricing.callbackSums())
        .column("work", CallbackSum::work)
        .column("method", CallbackSum::method)
        .count("jobs", CallbackSum::jobs)
        .count("callbacks", CallbackSum::callbacks)
        .amount("cost", CallbackSum::cost)
        .amount("charged", CallbackSum::charged)
        .amount("net_cost", CallbackSum::netCost)
        .named("callback-costs");
  }
}
