package clenchbook.billing;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Names;
import clenchbook.book.Payment;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Drafts that are out because a payment names them: that shows that the owner has them. With such a
 * draft goes every draft of its month that shares a visit with it, so that no sharer's part and no
 * credit note of a correction is left behind.
 */
final class NamedByPayments {
  private final Map<YearMonth, List<BilledDocument>> drafts = new TreeMap<>();
  private final Set<String> issued = new HashSet<>();

  private NamedByPayments(List<BilledDocument> documents) {
    documents.stream()
        .filter(document -> document.state() == DocumentState.DRAFT)
        .forEach(
            draft -> drafts.computeIfAbsent(draft.month(), unused -> new ArrayList<>()).add(draft));
  }

  /**
   * The documents with the drafts issued that payments name.
   *
   * @param payments the rows of Payments
   * @param documents all documents
   * @return in the same order
   */
  static List<BilledDocument> issue(List<Payment> payments, List<BilledDocument> documents) {
    Set<String> named =
        payments.stream().map(payment -> Names.key(payment.invoice())).collect(Collectors.toSet());
    NamedByPayments out = new NamedByPayments(documents);
    out.drafts.values().stream()
        .flatMap(List::stream)
        .filter(draft -> named.contains(Names.key(draft.number())))
        .forEach(out::named);
    return documents.stream()
        .map(
            document ->
                out.issued.contains(document.number())
                    ? document.in(DocumentState.ISSUED)
                    : document)
        .toList();
  }

  private void named(BilledDocument draft) {
    List<BilledDocument> with = new ArrayList<>(List.of(draft));
    ofItsMonth(draft).filter(other -> goTogether(draft, other)).forEach(with::add);
    with.forEach(this::withCorrections);
  }

  /** An owner's invoice and the credit notes of what it bills anew are never parted. */
  private void withCorrections(BilledDocument draft) {
    if (issued.add(draft.number())) {
      ofItsMonth(draft)
          .filter(other -> other.owner().equals(draft.owner()) && goTogether(draft, other))
          .forEach(this::withCorrections);
    }
  }

  private Stream<BilledDocument> ofItsMonth(BilledDocument draft) {
    return drafts.getOrDefault(draft.month(), List.of()).stream();
  }

  private static boolean goTogether(BilledDocument one, BilledDocument other) {
    return !one.number().equals(other.number())
        && visits(one).stream().anyMatch(visits(other)::contains);
  }

  private static Set<String> visits(BilledDocument document) {
    Set<String> visits = new HashSet<>();
    for (DocumentLine line : document.lines()) {
      visits.add(line.visit().line());
      if (!line.formerly().isEmpty()) {
        visits.add(line.formerly());
      }
    }
    return visits;
  }
}
