package clenchbook.print.invoice;

import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.HowToPay;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.NextVisit;
import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedTotals;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the invoice's template prints: for an invoice and for a credit note. */
public final class InvoicePage {
  private final DocumentHead head;
  private final LetterWording wording;
  private final PrintFormats formats;
  private final Optional<LogoImage> logo;

  /** Prints invoices and credit notes under this head, with the logo where there is one. */
  public InvoicePage(DocumentHead head, Optional<LogoImage> logo) {
    this.head = head;
    this.logo = logo;
    this.wording = LetterWording.of(head.locale().language());
    this.formats = new PrintFormats(head.locale(), head.currency());
  }

  /** The invoice's fields and rows, formatted for its language and country. */
  public PrintedPage of(InvoiceDocument invoice) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put(wording.say("fact.invoiceNumber"), head.number());
    facts.put(wording.say("fact.date"), formats.longDate(head.date()));
    facts.put(wording.say("fact.due"), formats.longDate(invoice.due()));
    addTaxNumber(facts);
    String title = wording.say("title.invoice", head.number());
    Map<String, Object> parts = parts(title, facts, invoice.totals(), "column.amount");
    Optional<BigDecimal> discount = LineNotes.usualDiscount(invoice.lines());
    put(parts, "subtitle", subtitle(invoice, discount));
    List<String> remarks = new ArrayList<>(TaxGround.remarks(invoice.totals(), wording));
    remarks.addAll(Remarks.of(invoice, wording));
    remarks.addAll(invoice.remarks());
    put(parts, "remarks", String.join("\n", remarks));
    addPayment(parts, invoice);
    addNextVisits(parts, invoice.nextVisits());
    InvoiceRows rows = new InvoiceRows(wording, formats);
    rows.lines(invoice.lines(), showsTax(invoice.totals()), discount);
    rows.sums(invoice.totals(), "sum.total");
    rows.settlements(invoice.settlements());
    rows.due(dueLabel(invoice), invoice.amountDue().abs());
    rows.end();
    return new PrintedPage(
        title, parts, rows.rows(), LetterParts.notes(head, parts, invoice.pay().link(), wording));
  }

  private String subtitle(InvoiceDocument invoice, Optional<BigDecimal> discount) {
    String month = formats.month(invoice.month());
    return discount
        .map(
            percent -> wording.say("subtitle.invoiceWithDiscount", month, formats.percent(percent)))
        .orElseGet(() -> wording.say("subtitle.invoice", month));
  }

  /** The credit note's fields and rows, formatted for its language and country. */
  public PrintedPage of(CreditNoteDocument note) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put(wording.say("fact.creditNoteNumber"), head.number());
    facts.put(wording.say("fact.date"), formats.longDate(head.date()));
    addTaxNumber(facts);
    String title = wording.say("title.creditNote", head.number());
    PrintedTotals credited = note.totals().credited();
    Map<String, Object> parts = parts(title, facts, credited, "column.credit");
    put(
        parts,
        "intro",
        wording.say(
            "credit.intro",
            note.invoiceNumber(),
            formats.longDate(note.invoiceDate()),
            formats.money(credited.total())));
    List<String> remarks = new ArrayList<>(Remarks.of(note, wording));
    remarks.addAll(TaxGround.remarks(credited, wording));
    remarks.addAll(note.remarks());
    put(parts, "payText", String.join("\n", remarks));
    InvoiceRows rows = new InvoiceRows(wording, formats);
    List<PrintedLine> lines = note.lines().stream().map(PrintedLine::credited).toList();
    rows.lines(lines, showsTax(credited), Optional.empty());
    rows.sums(credited, "sum.totalCredit");
    rows.due(wording.say("credit.total"), credited.total());
    rows.end();
    return new PrintedPage(
        title, parts, rows.rows(), LetterParts.notes(head, parts, Optional.empty(), wording));
  }

  private Map<String, Object> parts(
      String title, Map<String, String> facts, PrintedTotals totals, String amountKey) {
    Map<String, Object> parts = LetterParts.of(head, facts, wording, logo);
    put(parts, "runningHead", LetterParts.runningHead(head, title));
    put(parts, "title", title);
    put(parts, "documentName", title);
    put(parts, "columnDate", wording.say("column.date"));
    put(parts, "columnHorse", wording.say("column.horse"));
    put(parts, "columnWork", wording.say("column.work"));
    put(parts, "columnTax", showsTax(totals) ? wording.say("column.tax") : "");
    put(parts, "columnAmount", wording.say(amountKey + form(totals), formats.currencySign()));
    return parts;
  }

  private static String form(PrintedTotals totals) {
    if (totals.linesExempt()) {
      return "Exempt";
    }
    return totals.linesIncludeTax() ? "WithTax" : "";
  }

  private void addTaxNumber(Map<String, String> facts) {
    head.to().taxNumber().ifPresent(number -> facts.put(wording.say("fact.yourTaxNumber"), number));
  }

  private static boolean showsTax(PrintedTotals totals) {
    return !totals.taxes().isEmpty();
  }

  private String dueLabel(InvoiceDocument invoice) {
    return switch (invoice.amountDue().signum()) {
      case 1 -> wording.say("due.amount", formats.longDate(invoice.due()));
      case 0 -> wording.say("due.nothing");
      default -> wording.say("due.credit");
    };
  }

  private void addPayment(Map<String, Object> parts, InvoiceDocument invoice) {
    int sign = invoice.amountDue().signum();
    if (sign <= 0) {
      put(parts, "payText", wording.say(sign == 0 ? "pay.thanks" : "pay.credit"));
      return;
    }
    put(parts, "payHeading", wording.say("pay.heading"));
    String please =
        wording.say(
            "pay.please", formats.money(invoice.amountDue()), formats.longDate(invoice.due()));
    put(
        parts,
        "payText",
        PaymentLines.of(please, invoice.pay(), invoice.pay().said(head.number()), wording));
    code(invoice)
        .ifPresent(
            text -> {
              parts.put("paymentCode", new SquareCode(PaymentCode.squares(text)));
              put(parts, "codeCaption", wording.say("pay.scan"));
            });
  }

  private Optional<String> code(InvoiceDocument invoice) {
    if (!head.currency().equals("EUR")) {
      return Optional.empty();
    }
    HowToPay pay = invoice.pay();
    return pay.iban()
        .flatMap(
            iban ->
                PaymentCode.text(
                    head.from().name(),
                    iban,
                    pay.bic().orElse(""),
                    invoice.amountDue(),
                    pay.reference(),
                    head.number()));
  }

  private void addNextVisits(Map<String, Object> parts, List<NextVisit> visits) {
    if (visits.isEmpty()) {
      return;
    }
    put(parts, "nextHeading", wording.say("next.heading"));
    put(
        parts,
        "nextText",
        horsesByWeek(visits).entrySet().stream()
            .map(week -> wording.say("next.line", week.getValue(), week.getKey()))
            .collect(Collectors.joining("\n")));
  }

  /** Horses due in one week share a line, which keeps a stable of them on the invoice's page. */
  private Map<String, String> horsesByWeek(List<NextVisit> visits) {
    Map<String, String> weeks = new LinkedHashMap<>();
    for (NextVisit visit : visits) {
      weeks.merge(
          formats.weekOf(visit.due()), visit.horse(), (others, horse) -> others + ", " + horse);
    }
    return weeks;
  }

  private static void put(Map<String, Object> parts, String name, String text) {
    LetterParts.put(parts, name, text);
  }
}
