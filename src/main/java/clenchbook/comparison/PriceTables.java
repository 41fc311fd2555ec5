package clenchbook.comparison;

import clenchbook.comparison.pricing.Callback;
import clenchbook.comparison.pricing.CallbackSum;
import clenchbook.comparison.pricing.Pricing;
import clenchbook.comparison.pricing.UnderList;
import clenchbook.comparison.pricing.WorkPrice;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.reports.blocks.FigureTable;
import java.math.BigDecimal;
import java.util.ArrayList;
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
    String days = String.valueOf(all.rates().callbackDays());
    String target = money(pricing.target().movePointRight(2).stripTrailingZeros());
    List<List<String>> rows = new ArrayList<>();
    pricing.works().forEach(each -> rows.add(price(each, target, days)));
    rows.add(priceTotals(pricing, days));
    return FigureTable.of(
        "prices",
        "work,jobs,charged,list_price,cost,margin_after_labour,price_for_wage,price_for_target,"
            + "target_margin_percent,rise_5_percent_brings,jobs_under_list,under_list_by,callbacks,"
            + "callback_cost,left_after_callbacks,loses_by,callback_days",
        rows);
  }

  private static List<String> price(WorkPrice each, String target, String days) {
    return List.of(
        each.work(),
        String.valueOf(each.jobs()),
        money(each.charged()),
        each.list().map(PriceTables::money).orElse(""),
        money(each.cost()),
        money(each.margin()),
        money(each.forWage()),
        money(each.forTarget()),
        target,
        money(each.riseBrings()),
        String.valueOf(each.underList()),
        money(each.underListBy()),
        String.valueOf(each.callbacks()),
        money(each.callbackCost()),
        money(each.leftAfterCallbacks()),
        each.loses().map(WorkPrice.Loss::word).orElse(""),
        days);
  }

  private static List<String> priceTotals(Pricing pricing, String days) {
    return List.of(
        ComparisonTables.ALL,
        String.valueOf(pricing.works().stream().mapToInt(WorkPrice::jobs).sum()),
        total(pricing, WorkPrice::charged),
        "",
        total(pricing, WorkPrice::cost),
        total(pricing, WorkPrice::margin),
        "",
        "",
        "",
        total(pricing, WorkPrice::riseBrings),
        String.valueOf(pricing.works().stream().mapToInt(WorkPrice::underList).sum()),
        total(pricing, WorkPrice::underListBy),
        String.valueOf(pricing.callbacks().size()),
        money(pricing.callbackNetCost()),
        "",
        "",
        days);
  }

  private static String total(Pricing pricing, Function<WorkPrice, BigDecimal> what) {
    return money(pricing.works().stream().map(what).reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  private static FigureTable underList(Pricing pricing) {
    return FigureTable.of(
        "under-list",
        "owner,jobs,under_list_by",
        pricing.underList().stream().map(PriceTables::under).toList());
  }

  private static List<String> under(UnderList each) {
    return List.of(each.owner(), String.valueOf(each.jobs()), money(each.by()));
  }

  private static FigureTable callbacks(Pricing pricing) {
    return FigureTable.of(
        "callbacks",
        "row,date,owner,horse,work,reason,cost,charged,net_cost,days,caused_date,caused_work,"
            + "caused_method,caused_row,sheet,caused_sheet",
        pricing.callbacks().stream().map(PriceTables::callback).toList());
  }

  private static List<String> callback(Callback each) {
    ComparedJob visit = each.visit();
    return List.of(
        String.valueOf(visit.source().row()),
        visit.date().toString(),
        visit.owner(),
        visit.horseName(),
        visit.work(),
        visit.reason().word(),
        money(each.cost()),
        money(visit.money().charged()),
        money(each.netCost()),
        String.valueOf(each.days()),
        each.cause().date().toString(),
        each.cause().work(),
        Pricing.method(each.cause()),
        String.valueOf(each.cause().source().row()),
        visit.source().sheet(),
        each.cause().source().sheet());
  }

  private static FigureTable callbackSums(Pricing pricing) {
    return FigureTable.of(
        "callback-costs",
        "work,method,jobs,callbacks,cost,charged,net_cost",
        pricing.callbackSums().stream().map(PriceTables::callbackSum).toList());
  }

  private static List<String> callbackSum(CallbackSum each) {
    return List.of(
        each.work(),
        each.method(),
        String.valueOf(each.jobs()),
        String.valueOf(each.callbacks()),
        money(each.cost()),
        money(each.charged()),
        money(each.netCost()));
  }
}
