package clenchbook.print.invoice;

import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedTax;
import clenchbook.reports.letters.PrintedTotals;
import clenchbook.reports.letters.Settlement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rows of an invoice or credit note: its lines, then its sums, as a template prints them. */
final class InvoiceRows {
  private static final String SUMS = "sums";

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
   * Adds the lines, those of one visit together.
   *
   * @param lines by date
   * @param showsTax whether each bears its tax code
   * @param usualDiscount the discount that the page says once for all; empty for none
   */
  void lines(List<PrintedLine> lines, boolean showsTax, Optional<BigDecimal> usualDiscount) {
    LineNotes notes = new LineNotes(wording, formats, usualDiscount);
    List<PrintedLine> together = together(lines);
    List<String> blocks = blocks(together);
    for (int i = 0; i < together.size(); i++) {
      PrintedLine line = together.get(i);
      Map<String, Object> row = row("isLine", blocks.get(i));
      row.put("visit", visit(line));
      put(row, "date", formats.shortDate(line.date()));
      put(row, "horse", line.horse());
      put(row, "work", line.work());
      put(row, "details", String.join("  ·  ", notes.of(line)));
      put(row, "tax", showsTax ? line.taxCode() : "");
      put(row, "amount", line.free() ? wording.say("line.free") : formats.amount(line.amount()));
    }
  }

  private static String visit(PrintedLine line) {
    return line.date() + line.horse();
  }

  private static List<PrintedLine> together(List<PrintedLine> lines) {
    Map<String, List<PrintedLine>> visits = new LinkedHashMap<>();
    lines.forEach(
        line -> visits.computeIfAbsent(visit(line), unused -> new ArrayList<>()).add(line));
    return visits.values().stream().flatMap(List::stream).toList();
  }

  /**
   * What each line stays on a page with: its visit; the first visits up to two lines together, for
   * the head keeps two lines on its page; and so do the sums.
   */
  private static List<String> blocks(List<PrintedLine> lines) {
    List<String> blocks = new ArrayList<>(lines.stream().map(InvoiceRows::visit).toList());
    int first = lastOfVisit(blocks, 1);
    int sums = firstOfVisit(blocks, lines.size() - 2);
    for (int i = 0; i < lines.size(); i++) {
      if (i >= sums) {
        blocks.set(i, SUMS);
      } else if (i <= first) {
        blocks.set(i, "first");
      }
    }
    return blocks;
  }

  private static int lastOfVisit(List<String> visits, int line) {
    int last = line;
    while (last + 1 < visits.size() && visits.get(last + 1).equals(visits.get(last))) {
      last++;
    }
    return last;
  }

  private static int firstOfVisit(List<String> visits, int line) {
    int first = Math.max(0, line);
    while (first > 0 && visits.get(first - 1).equals(visits.get(first))) {
      first--;
    }
    return first;
  }

  /**
   * Adds the sums of the lines.
   *
   * @param totals the sums
   * @param totalKey what the total is called
   */
  void sums(PrintedTotals totals, String totalKey) {
    row("isRule", SUMS).put("visit", SUMS);
    if (!totals.taxes().isEmpty()) {
      sum(wording.say("sum.net"), totals.net());
      for (PrintedTax tax : totals.taxes()) {
        sum(taxLabel(tax), tax.tax());
      }
    }
    money("isTotal", wording.say(totalKey), formats.money(totals.total()));
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

  /** How to pay and what else is said beneath; it stays on the page of the sums. */
  void end() {
    row("isEnd", SUMS).put("visit", SUMS);
  }

  private void sum(String label, BigDecimal amount) {
    money("isSum", label, formats.amount(amount));
  }

  private void money(String kind, String label, String amount) {
    Map<String, Object> row = row(kind, SUMS);
    row.put("visit", SUMS);
    put(row, "label", label);
    put(row, "amount", amount);
  }

  private Map<String, Object> row(String kind, String block) {
    return LetterParts.row(rows, kind, block);
  }

  private static void put(Map<String, Object> row, String name, String text) {
    LetterParts.put(row, name, text);
  }
}
