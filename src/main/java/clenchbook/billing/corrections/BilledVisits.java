package clenchbook.billing.corrections;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.VisitKey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which visits are on documents, net of credits: for each visit and owner, the lines of the latest
 * invoice that no credit note has taken back.
 */
public final class BilledVisits {
  private final Map<VisitKey, Map<String, Entry>> visits = new LinkedHashMap<>();

  private static final class Entry {
    private final List<BilledDocument> invoices = new ArrayList<>();
    private int credits;
  }

  /** A visit's lines on one invoice. */
  record Live(VisitKey visit, BilledDocument invoice, List<DocumentLine> lines) {}

  /** Takes documents in the order of their dates and numbers. */
  public BilledVisits(List<BilledDocument> documents) {
    for (BilledDocument document : documents) {
      document.lines().stream()
          .map(DocumentLine::visit)
          .distinct()
          .forEach(visit -> add(visit, document));
    }
  }

  private void add(VisitKey visit, BilledDocument document) {
    Entry entry =
        visits
            .computeIfAbsent(visit, unused -> new LinkedHashMap<>())
            .computeIfAbsent(document.owner(), unused -> new Entry());
    if (document.invoice()) {
      entry.invoices.add(document);
    } else {
      entry.credits++;
    }
  }

  public boolean bears(VisitKey visit) {
    return !live(visit).isEmpty();
  }

  /** The live lines of a visit, one entry per invoice that bears it. */
  List<Live> live(VisitKey visit) {
    List<Live> live = new ArrayList<>();
    for (Entry entry : visits.getOrDefault(visit, Map.of()).values()) {
      if (entry.invoices.size() > entry.credits) {
        BilledDocument invoice = entry.invoices.get(entry.invoices.size() - 1);
        live.add(
            new Live(
                visit,
                invoice,
                invoice.lines().stream().filter(line -> line.visit().equals(visit)).toList()));
      }
    }
    return live;
  }

  /** All visits on documents, in the order first met. */
  List<VisitKey> visits() {
    return List.copyOf(visits.keySet());
  }
}
