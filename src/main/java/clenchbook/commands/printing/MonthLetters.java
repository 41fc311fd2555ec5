package clenchbook.commands.printing;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Names;
import clenchbook.print.files.SafeFileNames;
import clenchbook.print.invoice.LetterWords;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.month.BilledMonth;
import clenchbook.reports.month.Letters;
import clenchbook.reports.month.NextVisits;
import clenchbook.reports.month.Statements;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;

/** The letters of a month: invoices, credit notes and statements. */
public final class MonthLetters {
  private final BilledMonth month;
  private final PdfDocuments documents;
  private final Letters letters;
  private final MonthEInvoices eInvoices;
  private final Map<String, Account> accounts = new HashMap<>();
  private final Map<String, BilledDocument> byNumber = new HashMap<>();

  MonthLetters(BilledMonth month, PdfDocuments documents) {
    this.month = month;
    this.documents = documents;
    letters = new Letters(month.jobs().index(), new NextVisits(month), month.references());
    eInvoices = new MonthEInvoices(month);
    month.accounts().forEach(account -> accounts.put(Names.key(account.owner()), account));
    month.billing().documents().forEach(each -> byNumber.put(each.number(), each));
  }

  /** The letters still to be printed, by number: drafts, and issued ones without stored bytes. */
  Map<String, Callable<byte[]>> letters(Map<String, byte[]> stored) {
    Map<String, Callable<byte[]>> work = new LinkedHashMap<>();
    for (BilledDocument document : month.billing().month()) {
      boolean kept = document.state().fixed() && stored.containsKey(document.number());
      if (document.counts() && !kept) {
        work.put(document.number(), () -> letter(document));
      }
    }
    return work;
  }

  private byte[] letter(BilledDocument document) {
    if (document.invoice()) {
      InvoiceDocument letter = invoice(document);
      return documents.invoice(letter, inside(document, LetterWords.of(letter)));
    }
    CreditNoteDocument letter = creditNote(document);
    return documents.creditNote(letter, inside(document, LetterWords.of(letter)));
  }

  private Optional<byte[]> inside(BilledDocument document, LetterWords words) {
    return eInvoices.inside(document)
        ? Optional.of(eInvoices.xml(document, words))
        : Optional.empty();
  }

  /**
   * Structured invoices that are files of their own, of those letters that are printed, by number.
   */
  Map<String, Callable<byte[]>> eInvoices(Set<String> printed) {
    Map<String, Callable<byte[]>> work = new LinkedHashMap<>();
    for (String number : eInvoices.apart()) {
      BilledDocument document = Optional.ofNullable(byNumber.get(number)).orElseThrow();
      if (printed.contains(number)) {
        work.put(number, () -> eInvoices.xml(document, words(document)));
      }
    }
    return work;
  }

  private LetterWords words(BilledDocument document) {
    return document.invoice()
        ? LetterWords.of(invoice(document))
        : LetterWords.of(creditNote(document));
  }

  private InvoiceDocument invoice(BilledDocument document) {
    return letters.invoice(document, account(document.owner()), month.billing());
  }

  private CreditNoteDocument creditNote(BilledDocument document) {
    LocalDate invoiceDate = byNumber.getOrDefault(document.corrects(), document).date();
    return letters.creditNote(document, invoiceDate, month.billing());
  }

  private Account account(String owner) {
    return Optional.ofNullable(accounts.get(Names.key(owner))).orElseThrow();
  }

  /** Statements, by their path. */
  Map<String, Callable<byte[]>> statements() {
    Map<String, String> paths = statementPaths(month.accounts());
    Map<String, Callable<byte[]>> work = new LinkedHashMap<>();
    for (Account account : Statements.due(month.accounts())) {
      work.put(
          paths.getOrDefault(account.owner(), ""),
          () -> documents.statement(letters.statement(account, first(), last())));
    }
    return work;
  }

  /** The path of each statement, by owner, in the order of the accounts. */
  public static Map<String, String> statementPaths(List<Account> accounts) {
    SafeFileNames names = new SafeFileNames();
    Map<String, String> paths = new LinkedHashMap<>();
    for (Account account : Statements.due(accounts)) {
      paths.put(account.owner(), "statements/" + names.name(account.owner(), ".pdf"));
    }
    return paths;
  }

  private LocalDate first() {
    return month.month().atDay(1);
  }

  private LocalDate last() {
    return month.month().atEndOfMonth();
  }

  /** Invoices and credit notes under their file names. */
  Map<String, byte[]> named(Map<String, byte[]> byNumber) {
    Map<String, byte[]> files = new TreeMap<>();
    names().forEach((number, path) -> files.put(path, byNumber.get(number)));
    return files;
  }

  /** Structured invoices under their file names, beside the letters' own. */
  Map<String, byte[]> eInvoicesNamed(Map<String, byte[]> byNumber) {
    Map<String, byte[]> files = new TreeMap<>();
    names()
        .forEach(
            (number, path) -> {
              byte[] xml = byNumber.get(number);
              if (xml != null) {
                files.put(DocumentNames.eInvoice(path), xml);
              }
            });
    return files;
  }

  /** The path of each document that has one, by number. */
  Map<String, String> names() {
    return DocumentNames.of(month.billing().month());
  }
}
