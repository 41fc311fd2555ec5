package clenchbook.reports.month;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.reports.blocks.FigureText;
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
  Optional<String> sentence(FigureText text) {
    if (documents.isEmpty()) {
      return Optional.empty();
    }
    BilledDocument first = documents.get(0);
    List<YearMonth> months = months();
    return Optional.of(
        text.say(
            "month.drafts.sentence",
            documents.size(),
            inWords(months, text),
            first.number(),
            first.owner(),
            months.size()));
  }

  private List<YearMonth> months() {
    return documents.stream().map(BilledDocument::month).distinct().sorted().toList();
  }

  private static String inWords(List<YearMonth> months, FigureText text) {
    return months.size() > MOST_MONTHS
        ? text.say(
            "month.drafts.months", months.size(), months.get(0), months.get(months.size() - 1))
        : text.say("month.drafts.theMonths", months);
  }
}
