package clenchbook.reports.month;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.accounts.PaidState;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.FigureTable;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.FiguresOf;
import clenchbook.reports.blocks.TableOf;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which invoices are open at the month's end, and since when. */
final class OpenInvoices {
  private final List<Open> open = new ArrayList<>();
  private final LocalDate last;

  /** An invoice of which something is open. */
  private record Open(BilledDocument document, BigDecimal amount, PaidState state) {}

  OpenInvoices(MonthFindings month) {
    last = month.month().atEndOfMonth();
    Map<String, Account> accounts = new HashMap<>();
    month.accounts().forEach(account -> accounts.put(Names.key(account.owner()), account));
    for (BilledDocument document : month.billing().documents()) {
      String owner = month.jobs().index().ownerName(document.owner());
      Optional<Account> account = Optional.ofNullable(accounts.get(Names.key(owner)));
      boolean asked = document.counts() && document.invoice() && !document.date().isAfter(last);
      account.filter(unused -> asked).ifPresent(found -> add(document, found));
    }
    open.sort(
        Comparator.comparing((Open each) -> each.document().date())
            .thenComparing(each -> each.document().series())
            .thenComparing(each -> each.document().sequence()));
  }

  private void add(BilledDocument document, Account account) {
    BigDecimal amount = account.open().getOrDefault(document.number(), BigDecimal.ZERO);
    if (amount.signum() > 0) {
      open.add(new Open(document, amount, PaidState.of(document, account)));
    }
  }

  int count() {
    return open.size();
  }

  /** What is open on all of them; without decimals for none. */
  BigDecimal sum() {
    return open.stream().map(Open::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private long daysPastDue(Open each) {
    return Math.max(0, ChronoUnit.DAYS.between(each.document().due(), last));
  }

  /** The table {@code open-invoices}. */
  FigureTable table() {
    return FiguresOf.rows(open)
        .column("number", each -> each.document().number())
        .column("owner", each -> each.document().owner())
        .column("date", each -> each.document().date().toString())
        .column("due", each -> each.document().due().toString())
        .amount("gross", each -> each.document().gross())
        .amount("open", Open::amount)
        .count("days_past_due", this::daysPastDue)
        .column("state", each -> each.state().word())
        .named("open-invoices");
  }

  /** The oldest first, folded under their count and the day of the oldest; nothing for none. */
  List<Block> blocks(FigureText text) {
    if (open.isEmpty()) {
      return List.of();
    }
    String since = text.date(open.get(0).document().date());
    String summary = text.say("month.open.summary", open.size(), since);
    return List.of(
        new Block.Folded(
            summary,
            List.of(
                TableOf.rows(open)
                    .words(text.say("month.column.owner"), 8, each -> each.document().owner())
                    .number(text.say("month.column.open"), 4, each -> text.money(each.amount()))
                    .words(text.say("month.column.number"), 4, each -> each.document().number())
                    .words(
                        text.say("month.column.since"),
                        4,
                        each -> text.date(each.document().date()))
                    .number(
                        text.say("month.column.daysPastDue"),
                        4,
                        each -> text.count(daysPastDue(each)))
                    .total(text.say("month.all"), text.money(sum()), "", "", "")
                    .plain())));
  }
}
