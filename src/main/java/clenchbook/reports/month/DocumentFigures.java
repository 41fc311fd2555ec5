package clenchbook.reports.month;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.PaidState;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.book.Names;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.reports.blocks.FigureTable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The tables of the month's documents: invoices, their lines, their tax, and the balances. */
final class DocumentFigures {
  private final List<BilledDocument> documents;
  private final Map<String, Account> accounts = new HashMap<>();

  DocumentFigures(List<BilledDocument> documents, List<Account> accounts) {
    this.documents = List.copyOf(documents);
    accounts.forEach(account -> this.accounts.put(Names.key(account.owner()), account));
  }

  FigureTable invoices() {
    return new FigureTable(
        "invoices",
        List.of(
            "number",
            "date",
            "due",
            "owner",
            "net",
            "tax",
            "gross",
            "state",
            "kind",
            "corrects",
            "open"),
        documents.stream().map(this::invoice).toList());
  }

  private List<String> invoice(BilledDocument document) {
    Account account = accounts.get(Names.key(document.owner()));
    String state = account == null ? document.state().word() : PaidState.of(document, account);
    String open =
        account == null || !document.counts() || !document.invoice()
            ? Figures.money(document.net().subtract(document.net()))
            : Figures.money(account.open().getOrDefault(document.number(), document.gross()));
    return List.of(
        document.number(),
        document.date().toString(),
        document.due().toString(),
        document.owner(),
        Figures.money(document.net()),
        Figures.money(document.tax()),
        Figures.money(document.gross()),
        state,
        document.invoice() ? "invoice" : "credit note",
        document.corrects(),
        open);
  }

  FigureTable lines() {
    List<List<String>> rows = new ArrayList<>();
    for (BilledDocument document : documents) {
      int line = 1;
      for (DocumentLine each : document.lines()) {
        rows.add(line(document, line++, each));
      }
    }
    return new FigureTable(
        "invoice-lines",
        List.of(
            "number",
            "line",
            "row",
            "date",
            "horse",
            "work",
            "description",
            "share",
            "net",
            "tax_code",
            "tax_rate",
            "amount",
            "discount",
            "sheet"),
        rows);
  }

  private static List<String> line(BilledDocument document, int number, DocumentLine line) {
    return List.of(
        document.number(),
        Figures.count(number),
        Figures.count(line.row()),
        line.visit().date().toString(),
        line.horse(),
        line.work(),
        description(line),
        Figures.plain(line.sharePercent()),
        Figures.money(line.net()),
        line.tax().code(),
        Figures.plain(line.tax().ratePercent()),
        Figures.money(line.amount()),
        Figures.plain(line.discountPercent()),
        line.sheet());
  }

  static String description(DocumentLine line) {
    String what =
        line.kind() == ChargeLine.Kind.EXTRA ? line.count() + " × " + line.item() : line.work();
    return switch (line.part()) {
      case WHOLE -> what;
      case GOODS -> what + ", goods";
      case REST -> what + ", other than goods";
    };
  }

  FigureTable tax() {
    List<List<String>> rows = new ArrayList<>();
    for (BilledDocument document : documents) {
      for (TaxTotal total : document.taxes()) {
        rows.add(
            List.of(
                document.number(),
                total.code(),
                Figures.plain(total.ratePercent()),
                Figures.money(total.net()),
                Figures.money(total.tax())));
      }
    }
    return new FigureTable("tax", List.of("number", "tax_code", "rate", "net", "tax"), rows);
  }

  static FigureTable balances(List<Account> accounts) {
    return new FigureTable(
        "balances",
        List.of(
            "owner",
            "brought_forward",
            "invoiced",
            "paid",
            "balance",
            "current",
            "past_due_1_30",
            "past_due_31_60",
            "past_due_over_60"),
        accounts.stream()
            .map(
                account ->
                    List.of(
                        account.owner(),
                        Figures.money(account.broughtForward()),
                        Figures.money(account.invoiced()),
                        Figures.money(account.paid()),
                        Figures.money(account.balance()),
                        Figures.money(account.ageing().current()),
                        Figures.money(account.ageing().pastDue1To30()),
                        Figures.money(account.ageing().pastDue31To60()),
                        Figures.money(account.ageing().pastDueOver60())))
            .toList());
  }
}
