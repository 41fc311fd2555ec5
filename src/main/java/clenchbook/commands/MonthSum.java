package clenchbook.commands;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.commands.opening.Count;
import java.math.BigDecimal;
import java.util.ArrayList;
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
  String line(BilledDocument document) {
    return document.number() + " to " + document.owner() + ": " + amount(document.gross());
  }

  /** How many they are and what they come to, in a few words. */
  String inWords() {
    long invoices = documents.stream().filter(BilledDocument::invoice).count();
    long credits = documents.size() - invoices;
    BigDecimal sum =
        documents.stream().map(BilledDocument::gross).reduce(BigDecimal.ZERO, BigDecimal::add);
    List<String> kinds = new ArrayList<>();
    if (invoices > 0 || credits == 0) {
      kinds.add(Count.of(invoices, "invoice"));
    }
    if (credits > 0) {
      kinds.add(Count.of(credits, "credit note"));
    }
    return String.join(" and ", kinds) + ", " + amount(sum) + " in all";
  }
}
