package clenchbook.billing.corrections;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.VisitKey;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Which visits are billed, and where: for each visit the invoices whose lines of it no credit note
 * has taken back.
 *
 * <p>Only documents that count as issued bill or take back. A draft of another month reserves the
 * visits that it names: whatever it says of them is settled when its own month is run or sent.
 */
public final class BilledVisits {
  private final Map<VisitKey, List<Bearing>> issued = new LinkedHashMap<>();
  private final Map<VisitKey, List<Bearing>> reserved = new LinkedHashMap<>();

  /**
   * A visit's lines on one invoice.
   *
   * @param visit the visit
   * @param invoice the invoice, or a draft of another month
   * @param lines its lines of the visit, at least one
   */
  public record Bearing(VisitKey visit, BilledDocument invoice, List<DocumentLine> lines) {
    /** Copies its list. */
    public Bearing {
      lines = List.copyOf(lines);
    }

    private boolean was(VisitKey other) {
      return lines.stream().anyMatch(line -> line.formerly().equals(other.line()));
    }
  }

  private BilledVisits(List<BilledDocument> documents, Predicate<BilledDocument> counts) {
    Map<String, Set<VisitKey>> takenBack = new LinkedHashMap<>();
    for (BilledDocument document : documents) {
      if (!document.invoice() && counts.test(document)) {
        takenBack
            .computeIfAbsent(document.corrects(), unused -> new HashSet<>())
            .addAll(visits(document).keySet());
      }
    }
    for (BilledDocument document : documents) {
      Set<VisitKey> gone = takenBack.getOrDefault(document.number(), Set.of());
      if (!counts.test(document)) {
        reserve(document);
      } else if (document.invoice()) {
        issue(document, gone);
      }
    }
  }

  /**
   * What is out: issued documents bill, drafts only reserve.
   *
   * @param documents in the order of their dates; none void
   * @return the visits on them
   */
  public static BilledVisits issued(List<BilledDocument> documents) {
    return new BilledVisits(documents, document -> document.state().fixed());
  }

  /**
   * What the books show: drafts bill and take back like all others.
   *
   * @param documents in the order of their dates; none void
   * @return the visits on them
   */
  public static BilledVisits withDrafts(List<BilledDocument> documents) {
    return new BilledVisits(documents, document -> true);
  }

  private static Map<VisitKey, List<DocumentLine>> visits(BilledDocument document) {
    Map<VisitKey, List<DocumentLine>> visits = new LinkedHashMap<>();
    for (DocumentLine line : document.lines()) {
      visits.computeIfAbsent(line.visit(), unused -> new ArrayList<>()).add(line);
    }
    return visits;
  }

  private void issue(BilledDocument invoice, Set<VisitKey> gone) {
    visits(invoice)
        .forEach(
            (visit, lines) -> {
              if (!gone.contains(visit)) {
                issued
                    .computeIfAbsent(visit, unused -> new ArrayList<>())
                    .add(new Bearing(visit, invoice, lines));
              }
            });
  }

  private void reserve(BilledDocument draft) {
    visits(draft)
        .forEach(
            (visit, lines) ->
                reserved
                    .computeIfAbsent(visit, unused -> new ArrayList<>())
                    .add(new Bearing(visit, draft, lines)));
  }

  /**
   * The invoices that bill a visit now.
   *
   * @param visit the visit
   * @return in the order of their dates; usually one for each payer
   */
  public List<Bearing> of(VisitKey visit) {
    return issued.getOrDefault(visit, List.of());
  }

  /** The drafts of other months that name a visit; their own month settles what they say of it. */
  List<Bearing> reserved(VisitKey visit) {
    return reserved.getOrDefault(visit, List.of());
  }

  /**
   * What a billed visit has become by the drafts of another month: they take it back and bill its
   * row under another key.
   */
  Optional<VisitKey> redrafted(VisitKey visit) {
    if (reserved(visit).isEmpty()) {
      return Optional.empty();
    }
    return reserved.entrySet().stream()
        .filter(each -> each.getValue().stream().anyMatch(draft -> draft.was(visit)))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** Every visit that is billed or reserved, in the order first met. */
  Set<VisitKey> visits() {
    Set<VisitKey> visits = new LinkedHashSet<>(issued.keySet());
    visits.addAll(reserved.keySet());
    return visits;
  }

  /** What documents say of a visit: those that bill it first, then those that reserve it. */
  List<Bearing> all(VisitKey visit) {
    List<Bearing> all = new ArrayList<>(of(visit));
    all.addAll(reserved(visit));
    return all;
  }
}
