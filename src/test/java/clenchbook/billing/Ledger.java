package clenchbook.billing;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/** A register in memory, run month by month over changing books. */
final class Ledger {
  private List<BilledDocument> documents = List.of();
  private BillingDecision last;
  private Jobs jobs;

  Ledger run(WrittenBook book, String month) {
    return run(book, month, false, null, false);
  }

  Ledger includingEarlier(WrittenBook book, String month) {
    return run(book, month, true, null, false);
  }

  Ledger correcting(WrittenBook book, String month, String number) {
    return run(book, month, false, number, false);
  }

  Ledger withRowsHeld(WrittenBook book, String month) {
    return run(book, month, false, null, true);
  }

  private Ledger run(
      WrittenBook book, String month, boolean earlier, String correct, boolean held) {
    jobs = book.jobs();
    last =
        MonthBilling.decide(
            jobs,
            documents,
            new BillingOptions(
                YearMonth.parse(month), earlier, Optional.ofNullable(correct), held));
    documents = last.documents();
    return this;
  }

  Ledger send(String... numbers) {
    List<String> sent = List.of(numbers);
    documents =
        documents.stream()
            .map(d -> sent.contains(d.number()) ? d.in(DocumentState.ISSUED) : d)
            .toList();
    return this;
  }

  /** All drafts of a month. */
  Ledger sendMonth(String month) {
    return send(
        documents.stream()
            .filter(d -> d.month().equals(YearMonth.parse(month)))
            .filter(d -> d.state() == DocumentState.DRAFT)
            .map(BilledDocument::number)
            .toArray(String[]::new));
  }

  /** As an older version left a register: without one of the documents. */
  Ledger without(String number) {
    documents = documents.stream().filter(d -> !d.number().equals(number)).toList();
    return this;
  }

  /** As an older version left a register: with a draft made void. */
  Ledger voiding(String number) {
    documents = documents.stream().map(d -> d.number().equals(number) ? d.voided() : d).toList();
    return this;
  }

  List<BilledDocument> issued() {
    return documents.stream().filter(d -> d.state().fixed()).toList();
  }

  BillingDecision last() {
    return last;
  }

  /** Every document as {@code number owner gross state}. */
  List<String> documents() {
    return documents.stream()
        .map(
            d ->
                d.number()
                    + " "
                    + d.owner()
                    + " "
                    + d.gross().toPlainString()
                    + " "
                    + d.state().word())
        .toList();
  }

  BilledDocument document(String number) {
    return documents.stream().filter(d -> d.number().equals(number)).findFirst().orElseThrow();
  }

  Account account(String owner) {
    YearMonth month = last.month().isEmpty() ? null : last.month().get(0).month();
    return account(owner, month);
  }

  Account account(String owner, YearMonth month) {
    return Accounts.of(jobs, last, month.atDay(1), month.atEndOfMonth()).stream()
        .filter(account -> account.owner().equals(owner))
        .findFirst()
        .orElseThrow();
  }

  static String ages(Account account) {
    Account.Ages ages = account.ageing();
    return String.join(
        " ",
        List.of(ages.current(), ages.pastDue1To30(), ages.pastDue31To60(), ages.pastDueOver60())
            .stream()
            .map(BigDecimal::toPlainString)
            .toList());
  }
}
