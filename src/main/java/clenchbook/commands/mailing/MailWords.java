package clenchbook.commands.mailing;

import clenchbook.delivery.wording.MailWord;
import clenchbook.print.invoice.PrintFormats;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.Settlement;
import clenchbook.reports.letters.StatementDocument;
import clenchbook.values.CreditorReference;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What of an owner's post the wording of the mail can name, written as on the documents. */
final class MailWords {
  private final OwnerPost post;
  private final PrintFormats formats;
  private final Map<MailWord, String> words = new EnumMap<>(MailWord.class);

  private MailWords(OwnerPost post) {
    this.post = post;
    this.formats = new PrintFormats(post.head().locale(), post.head().currency());
  }

  /** The words of a post; one that it has no value for is left out. */
  static Map<MailWord, String> of(OwnerPost post) {
    MailWords words = new MailWords(post);
    words.always();
    if (!post.invoices().isEmpty()) {
      words.invoices(post.invoices());
    }
    post.statement().ifPresent(words::statement);
    return words.words;
  }

  private void always() {
    words.put(MailWord.OWNER, post.head().to().name());
    words.put(MailWord.BUSINESS, post.head().from().name());
    words.put(MailWord.MONTH, formats.month(post.month()));
    post.head().from().phone().ifPresent(phone -> words.put(MailWord.PHONE, phone));
    if (!post.creditNotes().isEmpty()) {
      words.put(
          MailWord.CREDIT,
          post.creditNotes().stream()
              .map(note -> note.head().number())
              .collect(Collectors.joining(", ")));
    }
  }

  /**
   * What was paid and what is left is the whole account's, and the same on each invoice of a month.
   */
  private void invoices(List<InvoiceDocument> invoices) {
    words.put(MailWord.NUMBER, joined(invoices, each -> each.head().number()));
    words.put(
        MailWord.TOTAL,
        formats.money(
            invoices.stream()
                .map(each -> each.totals().total())
                .reduce(BigDecimal.ZERO, BigDecimal::add)));
    InvoiceDocument invoice = invoices.get(0);
    BigDecimal paid = paid(invoice);
    if (paid.signum() > 0) {
      words.put(MailWord.PAID, formats.money(paid));
    }
    if (invoice.amountDue().signum() > 0) {
      words.put(MailWord.OPEN, formats.money(invoice.amountDue()));
      words.put(MailWord.DUE, formats.longDate(invoice.due()));
      invoice.pay().link().ifPresent(link -> words.put(MailWord.LINK, link));
      if (invoice.pay().iban().isPresent() && invoice.pay().reference().isPresent()) {
        words.put(
            MailWord.REFERENCE,
            joined(
                invoices,
                each -> each.pay().reference().map(CreditorReference::inFours).orElse("")));
      }
    }
  }

  private static String joined(
      List<InvoiceDocument> invoices, Function<InvoiceDocument, String> text) {
    return invoices.stream().map(text).collect(Collectors.joining(", "));
  }

  private static BigDecimal paid(InvoiceDocument invoice) {
    return invoice.settlements().stream()
        .filter(settlement -> settlement.kind() != Settlement.Kind.BROUGHT_FORWARD)
        .map(settlement -> settlement.amount().negate())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private void statement(StatementDocument statement) {
    boolean owed = statement.balance().signum() >= 0;
    words.put(owed ? MailWord.BALANCE : MailWord.FAVOUR, formats.money(statement.balance().abs()));
    words.put(MailWord.DATE, formats.longDate(statement.head().date()));
    if (statement.balance().signum() > 0) {
      statement.pay().link().ifPresent(link -> words.put(MailWord.LINK, link));
    }
  }
}
