package clenchbook.print.invoice;

import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.InvoiceDocument;
import java.util.ArrayList;
import java.util.List;

/** Says which other documents belong to one, so that neither is read without the other. */
final class Remarks {
  private Remarks() {}

  /** Of an invoice: what stands beside it and what it replaces. */
  static List<String> of(InvoiceDocument invoice, LetterWording wording) {
    List<String> remarks = new ArrayList<>();
    invoice.beside().forEach(number -> remarks.add(wording.say("remark.beside", number)));
    invoice
        .replaces()
        .forEach(
            each -> remarks.add(wording.say("remark.replaces", each.creditNote(), each.invoice())));
    return remarks;
  }

  /** Of a credit note: where its visits are billed anew. */
  static List<String> of(CreditNoteDocument note, LetterWording wording) {
    return note.replacedOn().stream()
        .map(number -> wording.say("remark.replacedOn", number))
        .toList();
  }
}
