package clenchbook.commands.mailing;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.book.Owner;
import clenchbook.commands.printing.DocumentNames;
import clenchbook.commands.printing.MonthLetters;
import clenchbook.delivery.message.Attachment;
import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.StatementDocument;
import clenchbook.reports.month.BilledMonth;
import clenchbook.reports.month.Letters;
import clenchbook.reports.month.NextVisits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Gathers a month's documents by the owner who gets them. */
public final class MonthPost {
  private final BilledMonth month;
  private final Letters letters;
  private final Map<String, Account> accounts = new HashMap<>();
  private final Map<String, BilledDocument> byNumber = new HashMap<>();

  /** The letters of this month, ready to be put into mails. */
  public MonthPost(BilledMonth month) {
    this.month = month;
    letters = new Letters(month.jobs().index(), new NextVisits(month), month.references());
    month.accounts().forEach(account -> accounts.put(Names.key(account.owner()), account));
    month.billing().documents().forEach(each -> byNumber.put(each.number(), each));
  }

  /**
   * Everything that goes out.
   *
   * @param pdfs the PDF of each document by its path among the month's files
   * @return in the order of the owners' names
   */
  public List<OwnerPost> posts(Map<String, byte[]> pdfs) {
    Map<String, List<BilledDocument>> byOwner = new TreeMap<>(Names.ORDER);
    for (BilledDocument document : month.billing().month()) {
      if (document.counts()) {
        byOwner.computeIfAbsent(document.owner(), unused -> new ArrayList<>()).add(document);
      }
    }
    Map<String, String> statements = MonthLetters.statementPaths(month.accounts());
    statements.keySet().forEach(owner -> byOwner.putIfAbsent(owner, new ArrayList<>()));
    Map<String, String> documents = DocumentNames.of(month.billing().month());
    List<OwnerPost> posts = new ArrayList<>();
    byOwner.forEach(
        (owner, own) -> {
          Map<String, byte[]> files = new LinkedHashMap<>();
          invoicesFirst(own)
              .forEach(each -> document(files, documents.getOrDefault(each.number(), ""), pdfs));
          Optional<String> statement = Optional.ofNullable(statements.get(owner));
          statement.ifPresent(path -> put(files, path, pdfs));
          posts.add(post(owner, own, statement.isPresent(), files));
        });
    return posts;
  }

  /** A document, and the structured invoice that goes with it. */
  private static void document(
      Map<String, byte[]> files, String path, Map<String, byte[]> printed) {
    put(files, path, printed);
    if (printed.containsKey(DocumentNames.eInvoice(path))) {
      put(files, DocumentNames.eInvoice(path), printed);
    }
  }

  /** In the order in which the mail and the print list name them. */
  private static List<BilledDocument> invoicesFirst(List<BilledDocument> documents) {
    return documents.stream().sorted(Comparator.comparing(each -> !each.invoice())).toList();
  }

  /** A file by the name that it bears in its folder of the month, so that it can be found there. */
  private static void put(Map<String, byte[]> files, String path, Map<String, byte[]> pdfs) {
    byte[] pdf = pdfs.get(path);
    if (pdf == null) {
      throw new IllegalStateException("nothing was printed as " + path);
    }
    files.put(path.substring(path.indexOf('/') + 1), pdf);
  }

  private OwnerPost post(
      String owner, List<BilledDocument> own, boolean statement, Map<String, byte[]> files) {
    return new OwnerPost(
        owner,
        month.jobs().index().owner(owner).map(Owner::formerly).orElse(List.of()),
        month.jobs().index().owner(owner).map(Owner::email).orElse(""),
        month.month(),
        own.stream()
            .filter(BilledDocument::invoice)
            .map(each -> letters.invoice(each, account(owner), month.billing()))
            .toList(),
        own.stream().filter(each -> !each.invoice()).map(this::creditNote).toList(),
        statement ? Optional.of(statement(account(owner))) : Optional.empty(),
        files.entrySet().stream()
            .map(file -> Attachment.of(file.getKey(), file.getValue()))
            .toList());
  }

  private Account account(String owner) {
    return Optional.ofNullable(accounts.get(Names.key(owner))).orElseThrow();
  }

  private CreditNoteDocument creditNote(BilledDocument document) {
    return letters.creditNote(
        document, byNumber.getOrDefault(document.corrects(), document).date(), month.billing());
  }

  private StatementDocument statement(Account account) {
    return letters.statement(account, month.month().atDay(1), month.month().atEndOfMonth());
  }
}
