package clenchbook.reports.month;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.PaidState;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.book.Names;
import clenchbook.jobs.charge.ChargeLine;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FiguresOf;
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
    return FiguresOf.rows(documents)
        .column("number", BilledDocument::number)
        .column("date", document -> document.date().toString())
        .column("due", document -> document.due().toString())
        .column("owner", BilledDocument::owner)
        .amount("net", BilledDocument::net)
        .amount("tax", BilledDocument::tax)
        .amount("gross", BilledDocument::gross)
        .column("state", document -> state(document))
        .column("kind", document -> document.invoice() ? "invoice" : "credit note")
        .column("corrects", BilledDocument::corrects)
        .column("open", document -> open(document))
        .named("invoices");
  }

  private String state(BilledDocument document) {
    Account account = accounts.get(Names.key(document.owner()));
    return (account == null ? PaidState.own(document) : PaidState.of(document, account)).word();
  }

  private String open(BilledDocument document) {
    Account account = accounts.get(Names.key(document.owner()));
    return account == null || !document.counts() || !document.invoice()
        ? Figures.money(document.net().subtract(document.net()))
        : Figures.money(account.open().getOrDefault(document.number(), document.gross()));
  }

  /** A line with the document it stands on and its place there, from 1. */
  private record NumberedLine(BilledDocument document, int number, DocumentLine line) {}

  FigureTable lines() {
    List<NumberedLine> rows = new ArrayList<>();
    for (BilledDocument document : documents) {
      int number = 1;
      for (DocumentLine line : document.lines()) {
        rows.add(new NumberedLine(document, number++, line));
      }
    }
    return FiguresOf.rows(rows)
        .column("number", row -> row.document().number())
        .count("line", row -> row.number())
        .count("row", row -> row.line().row())
        .column("date", row -> row.line().visit().date().toString())
        .column("horse", row -> row.line().horse())
        .column("work", row -> row.line().work())
        .column("description", row -> description(row.line()))
        .column("share", row -> Figures.plain(row.line().sharePercent()))
        .column("net", row -> Figures.money(row.line().net()))
        .column("tax_code", row -> row.line().tax().code())
        .column("tax_rate", row -> Figures.plain(row.line().tax().chargedPercent()))
        .column("amount", row -> Figures.money(row.line().amount()))
        .column("discount", row -> Figures.plain(row.line().discountPercent()))
        .column("sheet", row -> row.line().sheet())
        .named("invoice-lines");
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

  /** A tax total with the document it stands on. */
  private record TaxRow(BilledDocument document, TaxTotal total) {}

  FigureTable tax() {
    List<TaxRow> rows = new ArrayList<>();
    for (BilledDocument document : documents) {
      document.taxes().forEach(total -> rows.add(new TaxRow(document, total)));
    }
    return FiguresOf.rows(rows)
        .column("number", row -> row.document().number())
        .column("tax_code", row -> row.total().code())
        .column("rate", row -> Figures.plain(row.total().ratePercent()))
        .column("net", row -> Figures.money(row.total().net()))
        .column("tax", row -> Figures.money(row.total().tax()))
        .column("category", row -> row.total().category().name())
        .column("reason", row -> reason(row.total()))
        .named("tax");
  }

  /** The ground as the book gives it, else what the category itself says. */
  private static String reason(TaxTotal total) {
    if (!total.reason().isEmpty()) {
      return total.reason();
    }
    if (total.code().isEmpty()) {
      return "no tax code";
    }
    return switch (total.category()) {
      case AE -> "reverse charge";
      case O -> "outside the scope of tax";
      case S, Z, E -> "";
    };
  }

  static FigureTable balances(List<Account> accounts) {
    return FiguresOf.rows(accounts)
        .column("owner", Account::owner)
        .amount("brought_forward", Account::broughtForward)
        .amount("invoiced", Account::invoiced)
        .amount("paid", Account::paid)
        .amount("balance", Account::balance)
        .column("current", account -> Figures.money(account.ageing().current()))
        .column("past_due_1_30", account -> Figures.money(account.ageing().pastDue1To30()))
        .column("past_due_31_60", account -> Figures.money(account.ageing().pastDue31To60()))
        .column("past_due_over_60", account -> Figures.money(account.ageing().pastDueOver60()))
        .named("balances");
  }
}
