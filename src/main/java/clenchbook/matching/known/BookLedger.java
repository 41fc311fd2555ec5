package clenchbook.matching.known;

import clenchbook.billing.Accounts;
import clenchbook.billing.BillingDecision;
import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Owner;
import clenchbook.book.Setting;
import clenchbook.jobs.Jobs;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws a ledger from the book and the register's documents, by the accounts of month-end. */
public final class BookLedger {
  private BookLedger() {}

  /**
   * The ledger as at a day.
   *
   * @param jobs the book's jobs
   * @param documents all documents of the register
   * @param last the last day that counts: that of the latest document, payment or entry
   * @return open amounts by the payments entered up to that day
   */
  public static Ledger of(Jobs jobs, List<BilledDocument> documents, LocalDate last) {
    Optional<LocalDate> given = jobs.index().book().settings().findDate(Setting.OPENING_DATE);
    LocalDate opening = given.orElseGet(() -> first(documents, last));
    BillingDecision billing =
        new BillingDecision(List.of(), documents, List.of(), List.of(), List.of(), opening);
    List<Account> accounts = Accounts.of(jobs, billing, last.withDayOfMonth(1), last);
    return new Ledger(
        jobs.index().book().settings().currency(),
        owners(jobs, accounts),
        documents(jobs, documents, accounts),
        jobs.index().book().payments(),
        given);
  }

  private static LocalDate first(List<BilledDocument> documents, LocalDate last) {
    return documents.stream()
        .map(document -> document.month().atDay(1))
        .min(LocalDate::compareTo)
        .orElse(last.withDayOfMonth(1));
  }

  private static List<KnownOwner> owners(Jobs jobs, List<Account> accounts) {
    List<KnownOwner> owners = new ArrayList<>();
    for (Account account : accounts) {
      List<String> others = new ArrayList<>();
      Optional<Owner> row = jobs.index().owner(account.owner());
      row.map(Owner::invoiceName).ifPresent(others::add);
      row.map(Owner::formerly).ifPresent(others::addAll);
      owners.add(new KnownOwner(account.owner(), others, account.balance()));
    }
    return owners;
  }

  private static List<KnownDocument> documents(
      Jobs jobs, List<BilledDocument> documents, List<Account> accounts) {
    MinorUnit unit = jobs.index().book().settings().minorUnit();
    Map<String, BigDecimal> open = new HashMap<>();
    accounts.forEach(account -> open.putAll(account.open()));
    return documents.stream()
        .filter(BilledDocument::counts)
        .map(
            document ->
                new KnownDocument(
                    document.number(),
                    jobs.index().ownerName(document.owner()),
                    document.date(),
                    document.gross(),
                    open.getOrDefault(document.number(), unit.zero())))
        .toList();
  }
}
