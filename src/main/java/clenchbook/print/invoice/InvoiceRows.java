package clenchbook.print.invoice;

import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedTax;
import clenchbook.reports.letters.PrintedTotals;
import clenchbook.reports.letters.Settlement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of an invoice or credit note: its lines, then its sums, as a template prints them. */
final class InvoiceRows {
  private final LetterWording wording;
  private final PrintFormats formats;
  private final List<Map<String, Object>> rows = new ArrayList<>();

  InvoiceRows(LetterWording wording, PrintFormats formats) {
    this.wording = wording;
    this.formats = formats;
  }

  List<Map<String, Object>> rows() {
    return rows;
  }

  /**
   * Adds the lines.
   *
   * @param lines in the order they are printed
   * @param showsTax whether each bears its tax code
   * @param discountSaid whether the page says the discount once for all
   */
  void lines(List<PrintedLine> lines, boolean showsTax, boolean discountSaid) {
    for (PrintedLine line : lines) {
      Map<String, Object> row = row("isLine", "line " + rows.size());
      row.put("visit", line.date() + line.horse());
      put(row, "date", formats.shortDate(line.date()));
      put(row, "horse", line.horse());
      put(row, "work", line.work());
      put(row, "details", details(line, discountSaid));
      put(row, "tax", showsTax ? line.taxCode() : "");
      put(row, "amount", line.free() ? wording.say("line.free") : formats.amount(line.amount()));
    }
  }

  private String details(PrintedLine line, boolean discountSaid) {
    return String.join("  ·  ", details(line, discountSaid, wording, formats));
  }

  /** The smaller print of a line, piece by piece. */
  static List<String> details(
      PrintedLine line, boolean discountSaid, LetterWording wording, PrintFormats formats) {
    List<String> details = new ArrayList<>(line.details());
    line.notes().forEach(note -> details.add(wording.say("note." + note)));
    line.discountPercent()
        .filter(percent -> !discountSaid)
        .ifPresent(percent -> details.add(wording.say("line.discount", formats.percent(percent))));
    line.sharePercent()
        .ifPresent(percent -> details.add(wording.say("line.share", formats.percent(percent))));
    return details;
  }

  void sums(PrintedTotals totals) {
    row("isRule", "sums").put("visit", "sums");
    if (!totals.taxes().isEmpty()) {
      sum(wording.say("sum.net"), totals.net());
      for (PrintedTax tax : totals.taxes()) {
        sum(taxLabel(tax), tax.tax());
      }
    }
    money("isTotal", wording.say("sum.total"), formats.money(totals.total()));
  }

  private String taxLabel(PrintedTax tax) {
    String code =
        tax.code().isBlank() || tax.code().equals(tax.name()) ? "" : " (" + tax.code() + ")";
    String net = formats.amount(tax.net());
    return switch (tax.category()) {
      case S, Z ->
          wording.say("sum.tax", tax.name() + code, formats.percent(tax.ratePercent()), net);
      case E -> wording.say("sum.taxExempt", tax.name() + code, net);
      case AE, O ->
          wording.say(
              "sum.taxOther", tax.name() + code, TaxGround.of(tax.category(), wording), net);
    };
  }

  void settlements(List<Settlement> settlements) {
    for (Settlement settlement : settlements) {
      sum(wording.say(key(settlement)), settlement.amount());
    }
  }

  private static String key(Settlement settlement) {
    return switch (settlement.kind()) {
      case PAID_AT_TRUCK -> "sum.paidAtTruck";
      case PAYMENT -> "sum.payment";
      case DEPOSIT -> "sum.deposit";
      case BROUGHT_FORWARD ->
          settlement.amount().signum() < 0 ? "sum.creditBroughtForward" : "sum.broughtForward";
    };
  }

  void due(String label, BigDecimal amount) {
    money("isDue", label, formats.money(amount));
  }

  private void sum(String label, BigDecimal amount) {
    money("isSum", label, formats.amount(amount));
  }

  private void money(String kind, String label, String amount) {
    Map<String, Object> row = row(kind, "sums");
    row.put("visit", "sums");
    put(row, "label", label);
    put(row, "amount", amount);
  }

  private Map<String, Object> row(String kind, String block) {
    Map<String, Object> row = new HashMap<>();
    row.put(kind, Boolean.TRUE);
    row.put("block", block);
    rows.add(row);
    return row;
  }

  private static void put(Map<String, Object> row, String name, String text) {
    LetterParts.put(row, name, text);
  }
}
