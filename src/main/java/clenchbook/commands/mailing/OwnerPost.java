package clenchbook.commands.mailing;

import clenchbook.billing.mails.MailId;
import clenchbook.delivery.message.Attachment;
import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.StatementDocument;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that one owner gets for a month.
 *
 * @param owner the owner's name as the book has it
 * @param formerly names that the owner had earlier
 * @param email the cell of their mail address; empty where there is none
 * @param month the month
 * @param invoices the month's invoices, by number: mostly one
 * @param creditNotes the month's credit notes, by number
 * @param statement the statement of account
 * @param files the PDFs, in the order the owner sees them
 */
record OwnerPost(
    String owner,
    List<String> formerly,
    String email,
    YearMonth month,
    List<InvoiceDocument> invoices,
    List<CreditNoteDocument> creditNotes,
    Optional<StatementDocument> statement,
    List<Attachment> files) {
  OwnerPost {
    formerly = List.copyOf(formerly);
    invoices = List.copyOf(invoices);
    creditNotes = List.copyOf(creditNotes);
    files = List.copyOf(files);
    if (invoices.isEmpty() && creditNotes.isEmpty() && statement.isEmpty()) {
      throw new IllegalArgumentException("there is nothing to post to " + owner);
    }
  }

  /** Who writes to whom, in which language: the same on all of the post. */
  DocumentHead head() {
    return invoices.stream()
        .map(InvoiceDocument::head)
        .findFirst()
        .or(() -> statement.map(StatementDocument::head))
        .orElseGet(() -> creditNotes.get(0).head());
  }

  /** The numbers of the invoices and the credit notes, in the order they are attached. */
  List<String> numbers() {
    List<String> numbers = new ArrayList<>();
    invoices.forEach(document -> numbers.add(document.head().number()));
    creditNotes.forEach(note -> numbers.add(note.head().number()));
    return numbers;
  }

  /** What makes the mail the same in every run. */
  MailId id() {
    return new MailId(owner, month.toString(), String.join(" ", numbers()));
  }
}
