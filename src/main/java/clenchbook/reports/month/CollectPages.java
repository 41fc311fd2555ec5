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
                figure(text.say("month.collect.toSend", sums.drafts()), sums.toSend()),
                figure(text.say("month.collect.open", sums.owing()), sums.toCollect()),
                figure(text.say("month.collect.pastDue", sums.late()), sums.pastDue()))));
    blocks.addAll(waiting);
    if (!outbox.isEmpty()) {
      blocks.add(new Block.Answers(List.of(mails(outbox))));
    }
    if (documents.isEmpty()) {
      blocks.add(new Paragraph(text.say("month.collect.noInvoice")));
    } else {
      blocks.add(
          new Block.Folded(
              text.say("month.collect.documents", documents.size()),
              List.of(documentTable(files))));
    }
    blocks.addAll(open.blocks(text));
    List<Account> balances =
        accounts.stream().filter(account -> account.balance().signum() != 0).toList();
    if (!balances.isEmpty()) {
      blocks.add(
          new Block.Folded(
              allBalances(balances),
              List.of(
                  TableOf.rows(balances)
                      .words(text.say("month.column.owner"), 8, Account::owner)
                      .number(
                          text.say("month.column.balance"),
                          4,
                          account -> text.money(account.balance()))
                      .total(text.say("month.all"), text.money(sum(balances)))
                      .plain())));
    }
    return blocks;
  }

  private Block.Answered mails(List<String> outbox) {
    long mails = outbox.stream().filter(file -> file.endsWith(".eml")).count();
    return new Block.Answered(
        text.say("month.collect.outbox"), "outbox/", text.say("month.collect.mails", mails));
  }

  /** What makes the balances less than what is to be collected. */
  private String allBalances(List<Account> open) {
    BigDecimal credit = sums.toCollect().subtract(sum(open));
    return credit.signum() == 0
        ? text.say("month.collect.balances", open.size())
        : text.say("month.collect.balancesCredit", open.size(), text.money(credit));
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
      return List.of(new Paragraph(text.say("month.collect.noneLate")));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        TableOf.rows(late.stream().limit(MOST_OVERDUE).toList())
            .words(text.say("month.column.owner"), 8, Account::owner)
            .number(
                text.say("month.column.pastDue"),
                4,
                account -> text.money(Collected.pastDue(account)))
            .words(text.say("month.column.oldest"), 5, this::oldest)
            .plain());
    int more = late.size() - MOST_OVERDUE;
    if (more > 0) {
      blocks.add(new Paragraph(text.say("month.collect.moreLate", more)));
    }
    return blocks;
  }

  private String oldest(Account account) {
    if (account.ageing().pastDueOver60().signum() > 0) {
      return text.say("month.collect.over60");
    }
    return account.ageing().pastDue31To60().signum() > 0
        ? text.say("month.collect.from31")
        : text.say("month.collect.from1");
  }

  private KeyFigure figure(String label, BigDecimal amount) {
    return new KeyFigure(label, text.money(amount), Optional.empty());
  }

  private Block documentTable(Map<String, String> files) {
    BigDecimal all =
        documents.stream().map(BilledDocument::gross).reduce(BigDecimal.ZERO, BigDecimal::add);
    return TableOf.rows(documents)
        .linked(
            text.say("month.column.owner"),
            8,
            document ->
                Cell.of(document.owner()).linkedTo(files.getOrDefault(document.number(), "")))
        .number(text.say("month.column.total"), 4, document -> text.money(document.gross()))
        .words(text.say("month.column.number"), 4, BilledDocument::number)
        .words(text.say("month.column.state"), 4, document -> state(document))
        .total(text.say("month.all"), text.money(all), "", "")
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
