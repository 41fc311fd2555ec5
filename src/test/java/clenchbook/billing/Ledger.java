package clenchbook.billing;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.WrittenDocument;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A register in memory, run month by month over changing books. */
public final class Ledger {
  private List<BilledDocument> documents = List.of();
  private BillingDecision last;
  private Jobs jobs;

  public Ledger run(WrittenBook book, String month) {
    return run(book, month, false, null, false);
  }

  public Ledger includingEarlier(WrittenBook book, String month) {
    return run(book, month, true, null, false);
  }

  public Ledger correcting(WrittenBook book, String month, String number) {
    return run(book, month, false, number, false);
  }

  public Ledger withRowsHeld(WrittenBook book, String month) {
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

  public Ledger send(String... numbers) {
    List<String> sent = List.of(numbers);
    documents =
        documents.stream()
            .map(d -> sent.contains(d.number()) ? d.in(DocumentState.ISSUED) : d)
            .toList();
    return this;
  }

  /** All drafts of a month. */
  public Ledger sendMonth(String month) {
    return send(
        documents.stream()
            .filter(d -> d.month().equals(YearMonth.parse(month)))
            .filter(d -> d.state() == DocumentState.DRAFT)
            .map(BilledDocument::number)
            .toArray(String[]::new));
  }

  /** As an older version left a register: without one of the documents. */
  public Ledger without(String number) {
    documents = documents.stream().filter(d -> !d.number().equals(number)).toList();
    return this;
  }

  /** As an older version left a register: with a draft made void. */
  public Ledger voiding(String number) {
    documents = documents.stream().map(d -> d.number().equals(number) ? d.voided() : d).toList();
    return this;
  }

  /** As an older version left a register: without the owner that the row named. */
  public Ledger withoutOwnersOfVisits() {
    documents = documents.stream().map(WrittenDocument::withoutOwnersOfVisits).toList();
    return this;
  }

  /**
   * Where the book no longer agrees with documents that are out, as {@code 2026-0001 TO_CORRECT:
   * DATE 2026-10-05>2026-10-07}.
   */
  public List<String> differences() {
    return last.differences().stream()
        .map(
            difference ->
                difference.number()
                    + " "
                    + difference.kind()
                    + ": "
                    + difference.changes().stream()
                        .map(change -> change.what() + " " + change.before() + ">" + change.after())
                        .collect(Collectors.joining("; ")))
        .toList();
  }

  public List<BilledDocument> issued() {
    return documents.stream().filter(d -> d.state().fixed()).toList();
  }

  public BillingDecision last() {
    return last;
  }

  /** Every document as the register holds it. */
  public List<BilledDocument> documentList() {
    return documents;
  }

  /** Every document as {@code number owner gross state}. */
  public List<String> documents() {
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

  public BilledDocument document(String number) {
    return documents.stream().filter(d -> d.number().equals(number)).findFirst().orElseThrow();
  }

  public Account account(String owner) {
    YearMonth month = last.month().isEmpty() ? null : last.month().get(0).month();
    return account(owner, month);
  }

  public Account account(String owner, YearMonth month) {
    return Accounts.of(jobs, last, month.atDay(1), month.atEndOfMonth()).stream()
        .filter(account -> account.owner().equals(owner))
        .findFirst()
        .orElseThrow();
  }

  public static String ages(Account account) {
    return ages(account.ageing());
  }

  /** What is not yet due, then what is 1 to 30, 31 to 60 and over 60 days past due. */
  public static String ages(Account.Ages ages) {
    return String.join(
        " ",
        List.of(ages.current(), ages.pastDue1To30(), ages.pastDue31To60(), ages.pastDueOver60())
            .stream()
            .map(BigDecimal::toPlainString)
            .toList());
  }

  /** Who has an account. */
  List<String> accounts(YearMonth month) {
    return Accounts.of(jobs, last, month.atDay(1), month.atEndOfMonth()).stream()
        .map(Account::owner)
        .toList();
  }
}
