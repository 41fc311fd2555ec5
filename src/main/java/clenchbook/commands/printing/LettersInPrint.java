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

/**
 * A month's letters while they are being printed: issued ones with the bytes they went out with.
 */
public final class LettersInPrint {
  private final MonthLetters letters;
  private final Map<String, byte[]> stored;
  private final Printing.Sheets drafts;
  private final Printing.Sheets statements;

  private LettersInPrint(
      MonthLetters letters,
      Map<String, byte[]> stored,
      Printing.Sheets drafts,
      Printing.Sheets statements) {
    this.letters = letters;
    this.stored = stored;
    this.drafts = drafts;
    this.statements = statements;
  }

  /**
   * Begins to print what is not kept.
   *
   * @param register where the bytes of issued documents are; empty where there is no register yet
   */
  public static LettersInPrint begin(
      BilledMonth month, Optional<Register> register, PdfDocuments documents, Printing printing) {
    MonthLetters letters = new MonthLetters(month, documents);
    Map<String, byte[]> stored = stored(month, register);
    return new LettersInPrint(
        letters,
        stored,
        printing.begin(letters.letters(stored)),
        printing.begin(letters.statements()));
  }

  private static Map<String, byte[]> stored(BilledMonth month, Optional<Register> register) {
    Map<String, byte[]> stored = new HashMap<>();
    for (BilledDocument document : month.billing().month()) {
      if (document.state().fixed()) {
        register
            .flatMap(open -> open.pdf(document.number()))
            .ifPresent(pdf -> stored.put(document.number(), pdf));
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
    return paths;
  }

  /** Waits, and gives what was printed now, statements left out, by number. */
  public Map<String, byte[]> printed(Terminal terminal) {
    return drafts.done(terminal);
  }

  /** Waits, and gives all letters by their path. */
  public Map<String, byte[]> files(Terminal terminal) {
    Map<String, byte[]> byNumber = new HashMap<>(stored);
    byNumber.putAll(printed(terminal));
    Map<String, byte[]> files = new HashMap<>(letters.named(byNumber));
    files.putAll(statements.done(terminal));
    return files;
  }
}
