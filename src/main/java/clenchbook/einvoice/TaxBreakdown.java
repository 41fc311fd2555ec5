package clenchbook.einvoice;

import clenchbook.billing.documents.TaxTotal;
import clenchbook.book.TaxCategory;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The tax of one category and rate: BG-23.
 *
 * @param category BT-118
 * @param ratePercent BT-119; zero where no tax is charged
 * @param net BT-116: the sum of its lines
 * @param tax BT-117: as the register holds it
 * @param reason BT-120: why no tax is charged, in words; empty where tax is charged
 * @param reasonCode BT-121: why no tax is charged, as a code of the VATEX list
 */
public record TaxBreakdown(
    TaxCategory category,
    BigDecimal ratePercent,
    BigDecimal net,
    BigDecimal tax,
    Optional<String> reason,
    Optional<String> reasonCode) {

  /**
   * The taxes of a document by category and rate: several codes of one category and rate are one
   * entry, with their amounts added and each reason once.
   *
   * @param totals the document's taxes by code
   * @param invoice false for a credit note, whose amounts are negated
   * @param words the grounds in the document's language
   * @return by category, then rate
   */
  static List<TaxBreakdown> of(List<TaxTotal> totals, boolean invoice, EInvoiceWords words) {
    Map<TaxCategory, Map<BigDecimal, List<TaxTotal>>> groups = new TreeMap<>();
    for (TaxTotal total : totals) {
      groups
          .computeIfAbsent(total.category(), unused -> new TreeMap<>())
          .computeIfAbsent(total.ratePercent(), unused -> new ArrayList<>())
          .add(total);
    }
    List<TaxBreakdown> breakdowns = new ArrayList<>();
    groups.forEach(
        (category, rates) ->
            rates.forEach(
                (rate, group) -> breakdowns.add(of(category, rate, group, invoice, words))));
    return breakdowns;
  }

  private static TaxBreakdown of(
      TaxCategory category,
      BigDecimal rate,
      List<TaxTotal> group,
      boolean invoice,
      EInvoiceWords words) {
    String grounds =
        group.stream()
            .map(total -> ground(total, words))
            .filter(ground -> !ground.isBlank())
            .distinct()
            .collect(Collectors.joining("; "));
    return new TaxBreakdown(
        category,
        rate,
        EInvoiceMaker.signed(sum(group, TaxTotal::net), invoice),
        EInvoiceMaker.signed(sum(group, TaxTotal::tax), invoice),
        Optional.of(grounds).filter(text -> !text.isEmpty()),
        code(category, group));
  }

  /** A code stands by itself; it is no ground in words. */
  private static String ground(TaxTotal total, EInvoiceWords words) {
    boolean code = ExemptionCode.of(total.reason()).isPresent();
    if (code && total.category() == TaxCategory.E) {
      return "";
    }
    return words.ground(total.category(), code ? "" : total.reason());
  }

  /** The first code given, else the one that the category has by itself. */
  private static Optional<String> code(TaxCategory category, List<TaxTotal> group) {
    Optional<String> given =
        group.stream().flatMap(total -> ExemptionCode.of(total.reason()).stream()).findFirst();
    return switch (category) {
      case S, Z -> Optional.empty();
      case E -> given;
      case AE -> Optional.of(given.orElse(ExemptionCode.REVERSE_CHARGE));
      case O -> Optional.of(ExemptionCode.OUTSIDE_SCOPE);
    };
  }

  private static BigDecimal sum(List<TaxTotal> group, Function<TaxTotal, BigDecimal> amount) {
    return group.stream().map(amount).reduce(BigDecimal::add).orElseThrow();
  }
}
