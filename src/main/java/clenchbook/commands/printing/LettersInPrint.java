package clenchbook.commands.printing;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.commands.opening.Terminal;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.register.Register;
import clenchbook.reports.month.BilledMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Function;

/**
 * A month's letters while they are being printed: issued ones with the bytes they went out with.
 */
public final class LettersInPrint {
  private final MonthLetters letters;
  private final Map<String, byte[]> stored;
  private final Printing.Sheets drafts;
  private final Printing.Sheets statements;
  private final Map<String, byte[]> storedEInvoices;
  private final Printing.Sheets eInvoices;

  private LettersInPrint(
      MonthLetters letters,
      Map<String, byte[]> stored,
      Printing.Sheets drafts,
      Printing.Sheets statements,
      Map<String, byte[]> storedEInvoices,
      Printing.Sheets eInvoices) {
    this.letters = letters;
    this.stored = stored;
    this.drafts = drafts;
    this.statements = statements;
    this.storedEInvoices = storedEInvoices;
    this.eInvoices = eInvoices;
  }

  /**
   * Begins to print what is not kept.
   *
   * @param register where the bytes of issued documents are; empty where there is no register yet
   */
  public static LettersInPrint begin(
      BilledMonth month, Optional<Register> register, PdfDocuments documents, Printing printing) {
    MonthLetters letters = new MonthLetters(month, documents);
    Map<String, byte[]> stored = stored(month, number -> register.flatMap(r -> r.pdf(number)));
    Map<String, Callable<byte[]>> work = letters.letters(stored);
    return new LettersInPrint(
        letters,
        stored,
        printing.begin(work),
        printing.begin(letters.statements()),
        stored(month, number -> register.flatMap(r -> r.eInvoice(number))),
        printing.begin(letters.eInvoices(work.keySet())));
  }

  private static Map<String, byte[]> stored(
      BilledMonth month, Function<String, Optional<byte[]>> find) {
    Map<String, byte[]> stored = new HashMap<>();
    for (BilledDocument document : month.billing().month()) {
      if (document.state().fixed()) {
        find.apply(document.number()).ifPresent(bytes -> stored.put(document.number(), bytes));
      }
    }
    return stored;
  }

  /** The path of each document that has one, by number. */
  public Map<String, String> names() {
    return letters.names();
  }

  /** The paths of all letters. */
  public Set<String> paths() {
    Set<String> paths = new TreeSet<>(names().values());
    paths.addAll(statements.names());
    Set<String> apart = new TreeSet<>(storedEInvoices.keySet());
    apart.addAll(eInvoices.names());
    apart.forEach(number -> paths.add(DocumentNames.eInvoice(names().getOrDefault(number, ""))));
    return paths;
  }

  /** Waits, and gives what was printed now, statements left out, by number. */
  public Map<String, byte[]> printed(Terminal terminal) {
    return drafts.done(terminal);
  }

  /** Waits, and gives the structured invoices made now that are files of their own, by number. */
  public Map<String, byte[]> eInvoices(Terminal terminal) {
    return eInvoices.done(terminal);
  }

  /** Waits, and gives all letters by their path. */
  public Map<String, byte[]> files(Terminal terminal) {
    Map<String, byte[]> byNumber = new HashMap<>(stored);
    byNumber.putAll(printed(terminal));
    Map<String, byte[]> files = new HashMap<>(letters.named(byNumber));
    files.putAll(statements.done(terminal));
    Map<String, byte[]> apart = new HashMap<>(storedEInvoices);
    apart.putAll(eInvoices(terminal));
    files.putAll(letters.eInvoicesNamed(apart));
    return files;
  }
}
