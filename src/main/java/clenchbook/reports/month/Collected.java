package clenchbook.reports.month;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.matching.WaitingPayments;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.reports.blocks.FigureTable;
import java.math.BigDecimal;
import java.util.List;

/**
 * The sums on the month's page.
 *
 * @param drafts documents not yet sent
 * @param toSend what they come to, credit notes taken off
 * @param owing owners with something to pay
 * @param toCollect what those owe
 * @param late owners past due
 * @param pastDue what is past due
 * @param problems problems of the whole book
 * @param held problems that hold a row back
 * @param open invoices of which something is open
 * @param openSum what is open on them
 * @param waiting rows that wait to be pasted into Payments
 */
record Collected(
    int drafts,
    BigDecimal toSend,
    int owing,
    BigDecimal toCollect,
    int late,
    BigDecimal pastDue,
    int problems,
    int held,
    int open,
    BigDecimal openSum,
    WaitingPayments waiting) {

  static Collected of(MonthFindings month) {
    List<BilledDocument> drafts =
        month.billing().month().stream()
            .filter(document -> document.state() == DocumentState.DRAFT)
            .toList();
    List<Account> owing =
        month.accounts().stream().filter(account -> account.balance().signum() > 0).toList();
    List<Account> late =
        month.accounts().stream().filter(account -> pastDue(account).signum() > 0).toList();
    OpenInvoices open = new OpenInvoices(month);
    BigDecimal zero = month.jobs().index().book().settings().minorUnit().zero();
    return new Collected(
        drafts.size(),
        drafts.stream().map(BilledDocument::gross).reduce(zero, BigDecimal::add),
        owing.size(),
        owing.stream().map(Account::balance).reduce(zero, BigDecimal::add),
        late.size(),
        late.stream().map(Collected::pastDue).reduce(zero, BigDecimal::add),
        month.problems().size(),
        (int) month.problems().stream().filter(Collected::isHeld).count(),
        open.count(),
        zero.add(open.sum()),
        month.waiting());
  }

  static BigDecimal pastDue(Account account) {
    Account.Ages ages = account.ageing();
    return ages.pastDue1To30().add(ages.pastDue31To60()).add(ages.pastDueOver60());
  }

  private static boolean isHeld(Problem problem) {
    return problem.severity() == Severity.HELD;
  }

  /**
   * The table {@code month-summary}.
   *
   * @param all every owner's account
   */
  FigureTable table(List<Account> all) {
    return FigureTable.of(
        "month-summary",
        "figure,value",
        List.of(
            List.of("documents to send", Integer.toString(drafts)),
            List.of("to send", toSend.toPlainString()),
            List.of("owners with something to pay", Integer.toString(owing)),
            List.of("open balances", toCollect.toPlainString()),
            List.of(
                "all balances, credit taken off",
                all.stream()
                    .map(Account::balance)
                    .reduce(toCollect.subtract(toCollect), BigDecimal::add)
                    .toPlainString()),
            List.of("owners past due", Integer.toString(late)),
            List.of("past due", pastDue.toPlainString()),
            List.of("problems", Integer.toString(problems)),
            List.of("problems that hold a row back", Integer.toString(held)),
            List.of("open invoices", Integer.toString(open)),
            List.of("payments to be pasted", Integer.toString(waiting.count())),
            List.of("payments to be pasted, sure", Integer.toString(waiting.sure())),
            List.of(
                "payments to be pasted, in all",
                toCollect.subtract(toCollect).add(waiting.sum()).toPlainString()),
            List.of("open invoices, in all", openSum.toPlainString())));
  }
}
