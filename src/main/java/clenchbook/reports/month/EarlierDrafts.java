package clenchbook.reports.month;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * Documents of earlier months that were made and never sent. They count as owed, their owners don't
 * know of them, and a change in the book reaches them only when their own month is run again.
 *
 * @param documents the drafts, in the order of their numbers
 */
record EarlierDrafts(List<BilledDocument> documents) {
  private static final int MOST_MONTHS = 3;

  EarlierDrafts {
    documents = List.copyOf(documents);
  }

  static EarlierDrafts of(BillingDecision billing, YearMonth month) {
    return new EarlierDrafts(
        billing.documents().stream()
            .filter(document -> document.state() == DocumentState.DRAFT)
            .filter(document -> document.month().isBefore(month))
            .toList());
  }

  /** One sentence with what to do; empty when there are none. */
  Optional<String> sentence() {
    if (documents.isEmpty()) {
      return Optional.empty();
    }
    BilledDocument first = documents.get(0);
    boolean one = documents.size() == 1;
    List<YearMonth> months = months();
    return Optional.of(
        (one ? "1 document" : documents.size() + " documents")
            + " of "
            + inWords(months)
            + (one ? " was" : " were")
            + " made but never sent, and yet "
            + (one ? "counts" : "count")
            + " as owed ("
            + (one ? "" : "the first: ")
            + first.number()
            + " to "
            + first.owner()
            + "). Run send for "
            + (months.size() == 1 ? "that month" : "each of these months")
            + ", and month-end for it before that if its visits changed.");
  }

  private List<YearMonth> months() {
    return documents.stream().map(BilledDocument::month).distinct().sorted().toList();
  }

  private static String inWords(List<YearMonth> months) {
    if (months.size() > MOST_MONTHS) {
      return months.size()
          + " months from "
          + months.get(0)
          + " to "
          + months.get(months.size() - 1);
    }
    return String.join(", ", months.stream().map(YearMonth::toString).toList());
  }
}
