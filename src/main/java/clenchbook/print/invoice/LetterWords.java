package clenchbook.print.invoice;

import clenchbook.book.TaxCategory;
import clenchbook.einvoice.EInvoiceWords;
import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.PrintedLine;
import clenchbook.reports.letters.PrintedTotals;
import java.util.ArrayList;
import java.util.List;

/** The words of an invoice's or credit note's page, for the structured invoice beside it. */
public final class LetterWords implements EInvoiceWords {
  private final LetterWording wording;
  private final PrintFormats formats;
  private final List<PrintedLine> lines;
  private final List<String> notes;

  private LetterWords(DocumentHead head, List<PrintedLine> lines, PrintedTotals totals) {
    wording = LetterWording.of(head.locale().language());
    formats = new PrintFormats(head.locale(), head.currency());
    this.lines = lines;
    notes = new ArrayList<>(TaxGround.remarks(totals, wording));
  }

  /**
   * The words of an invoice.
   *
   * @param invoice the invoice
   * @return its words
   */
  public static LetterWords of(InvoiceDocument invoice) {
    LetterWords words = new LetterWords(invoice.head(), invoice.lines(), invoice.totals());
    words.notes.addAll(Remarks.of(invoice, words.wording));
    return words;
  }

  /**
   * The words of a credit note.
   *
   * @param note the credit note
   * @return its words
   */
  public static LetterWords of(CreditNoteDocument note) {
    LetterWords words = new LetterWords(note.head(), note.lines(), note.totals());
    words.notes.addAll(Remarks.of(note, words.wording));
    return words;
  }

  @Override
  public List<String> details(int line) {
    return LineNotes.alone(lines.get(line), wording, formats);
  }

  @Override
  public String ground(TaxCategory category, String reason) {
    return TaxGround.of(category, reason, wording);
  }

  @Override
  public List<String> notes() {
    return List.copyOf(notes);
  }
}
