package clenchbook.commands;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.List;

/**
 * Documents counted and summed, for the terminal.
 *
 * @param currency the book's currency
 * @param documents the documents
 */
record MonthSum(String currency, List<BilledDocument> documents) {
  MonthSum {
    documents = List.copyOf(documents);
  }

  /** An amount with the currency's code before it. */
  String amount(BigDecimal amount) {
    return currency + " " + amount.toPlainString();
  }

  /** One document: its number, owner and amount. */
  Message line(BilledDocument document) {
    return Message.of(
        "commands.document", document.number(), document.owner(), amount(document.gross()));
  }

  /** How many they are and what they come to, in a few words. */
  Message inWords() {
    long invoices = documents.stream().filter(BilledDocument::invoice).count();
    long credits = documents.size() - invoices;
    BigDecimal sum =
        documents.stream().map(BilledDocument::gross).reduce(BigDecimal.ZERO, BigDecimal::add);
    if (credits == 0) {
      return Message.of("commands.sum.invoices", invoices, amount(sum));
    }
    return invoices == 0
        ? Message.of("commands.sum.credits", credits, amount(sum))
        : Message.of("commands.sum.both", invoices, credits, amount(sum));
  }
}
