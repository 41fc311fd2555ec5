package clenchbook.reports.month;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.PaidState;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Cell;
import clenchbook.reports.blocks.Block.KeyFigure;
import clenchbook.reports.blocks.Block.Paragraph;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.TableOf;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to send and what to collect, for the month's page. */
final class CollectPages {
  private static final int MOST_OVERDUE = 10;

  private final List<BilledDocument> documents;
  private final List<Account> accounts;
  private final Collected sums;
  private final OpenInvoices open;
  private final List<Block> waiting;
  private final FigureText text;

  CollectPages(MonthFindings month, FigureText text) {
    this.documents = month.billing().month().stream().filter(BilledDocument::counts).toList();
    this.accounts = month.accounts();
    this.sums = Collected.of(month);
    this.open = new OpenInvoices(month);
    this.waiting = WaitingWords.of(month, text);
    this.text = text;
  }

  /**
   * The few sums that say most, with every document and balance folded below.
   *
   * @param files the file of each document, by number
   * @param outbox the files of the outbox; empty where no mails were written
   */
  List<Block> sendAndCollect(Map<String, String> files, List<String> outbox) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.KeyFigures(
            List.of(
                figure("To send: " + documents(sums.drafts()), sums.toSend()),
                figure("Open balances: " + owners(sums.owing()), sums.toCollect()),
                figure("Of it past due: " + owners(sums.late()), sums.pastDue()))));
    blocks.addAll(waiting);
    if (!outbox.isEmpty()) {
      blocks.add(new Block.Answers(List.of(mails(outbox))));
    }
    if (documents.isEmpty()) {
      blocks.add(new Paragraph("No invoice in this month."));
    } else {
      blocks.add(
          new Block.Folded(
              "All documents of the month: " + documents(documents.size()),
              List.of(documentTable(files))));
    }
    blocks.addAll(open.blocks(text));
    List<Account> balances =
        accounts.stream().filter(account -> account.balance().signum() != 0).toList();
    if (!balances.isEmpty()) {
      blocks.add(
          new Block.Folded(
              "All balances: " + owners(balances.size()) + credit(balances),
              List.of(
                  TableOf.rows(balances)
                      .words("Owner", 8, Account::owner)
                      .number("Balance", 4, account -> text.money(account.balance()))
                      .total("All", text.money(sum(balances)))
                      .plain())));
    }
    return blocks;
  }

  private Block.Answered mails(List<String> outbox) {
    long mails = outbox.stream().filter(file -> file.endsWith(".eml")).count();
    return new Block.Answered(
        "The outbox",
        "outbox/",
        (mails == 1 ? "1 mail lies there" : text.count(mails) + " mails lie there")
            + " as a file, and the list of those whose post is to be printed.");
  }

  /** What makes the balances less than what is to be collected. */
  private String credit(List<Account> open) {
    BigDecimal credit = sums.toCollect().subtract(sum(open));
    return credit.signum() == 0 ? "" : ", %s of credit taken off".formatted(text.money(credit));
  }

  /** Who is past due, the most first. */
  List<Block> overdueOwners() {
    List<Account> late =
        accounts.stream()
            .filter(account -> Collected.pastDue(account).signum() > 0)
            .sorted(
                Comparator.comparing((Account account) -> Collected.pastDue(account))
                    .reversed()
                    .thenComparing(Account::owner, Names.ORDER))
            .toList();
    if (late.isEmpty()) {
      return List.of(new Paragraph("No owner is past due."));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        TableOf.rows(late.stream().limit(MOST_OVERDUE).toList())
            .words("Owner", 8, Account::owner)
            .number("Past due", 4, account -> text.money(Collected.pastDue(account)))
            .words("Oldest part", 5, CollectPages::oldest)
            .plain());
    int more = late.size() - MOST_OVERDUE;
    if (more > 0) {
      blocks.add(
          new Paragraph(
              (more == 1
                      ? "1 more owner is past due; figures/balances.csv names everyone."
                      : "%s more owners are past due; figures/balances.csv names everyone.")
                  .formatted(text.count(more))));
    }
    return blocks;
  }

  private static String oldest(Account account) {
    if (account.ageing().pastDueOver60().signum() > 0) {
      return "over 60 days";
    }
    return account.ageing().pastDue31To60().signum() > 0 ? "31 to 60 days" : "1 to 30 days";
  }

  private KeyFigure figure(String label, BigDecimal amount) {
    return new KeyFigure(label, text.money(amount), Optional.empty());
  }

  private String documents(int count) {
    return count == 1 ? "1 document" : text.count(count) + " documents";
  }

  private String owners(int count) {
    return count == 1 ? "1 owner" : text.count(count) + " owners";
  }

  private Block documentTable(Map<String, String> files) {
    BigDecimal all =
        documents.stream().map(BilledDocument::gross).reduce(BigDecimal.ZERO, BigDecimal::add);
    return TableOf.rows(documents)
        .linked(
            "Owner",
            8,
            document ->
                Cell.of(document.owner()).linkedTo(files.getOrDefault(document.number(), "")))
        .number("Total", 4, document -> text.money(document.gross()))
        .words("Number", 4, BilledDocument::number)
        .words("State", 4, document -> state(document))
        .total("All", text.money(all), "", "")
        .plain();
  }

  private String state(BilledDocument document) {
    return text.texts().say(PaidState.of(document, account(document.owner())).message());
  }

  private Account account(String owner) {
    return accounts.stream()
        .filter(account -> Names.same(account.owner(), owner))
        .findFirst()
        .orElseThrow();
  }

  private static BigDecimal sum(List<Account> some) {
    return some.stream().map(Account::balance).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
