package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.VisitKey;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What documents say, by plain addition: visits that are out and that no credit note took back. */
final class LiveVisits {
  private LiveVisits() {}

  /**
   * What one document asks of one owner for one visit.
   *
   * @param own what in the row decided the charge: a typed amount in cents, less for the list price
   */
  record Part(String number, String owner, VisitKey visit, String horse, int own, int cents) {
    LifeRow.Group group() {
      return LifeRow.Group.of(visit.date(), horse, visit.work(), owner);
    }
  }

  static int cents(BigDecimal amount) {
    return amount.movePointRight(2).intValueExact();
  }

  /** The parts of one document, each visit's lines added. */
  static List<Part> parts(BilledDocument document) {
    Map<VisitKey, Part> parts = new LinkedHashMap<>();
    for (DocumentLine line : document.lines()) {
      parts.merge(
          line.visit(),
          new Part(
              document.number(),
              document.owner(),
              line.visit(),
              line.horse(),
              own(line),
              cents(line.amount())),
          (one, other) ->
              new Part(
                  one.number(),
                  one.owner(),
                  one.visit(),
                  one.horse(),
                  one.own(),
                  one.cents() + other.cents()));
    }
    return List.copyOf(parts.values());
  }

  private static int own(DocumentLine line) {
    return line.own().startsWith("charge=")
        ? cents(new BigDecimal(line.own().substring("charge=".length())))
        : -1;
  }

  /**
   * The visits that issued documents bill.
   *
   * @param faults where a credit note takes back something else than its invoice's lines, or twice
   */
  static Map<VisitKey, List<Part>> of(List<BilledDocument> documents, List<String> faults) {
    Map<String, Part> out = new LinkedHashMap<>();
    List<BilledDocument> issued =
        documents.stream().filter(document -> document.state().fixed()).toList();
    for (BilledDocument document : issued) {
      if (document.invoice()) {
        parts(document).forEach(part -> out.put(document.number() + part.visit(), part));
      }
    }
    for (BilledDocument document : issued) {
      if (!document.invoice()) {
        for (Part back : parts(document)) {
          Part part = out.remove(document.corrects() + back.visit());
          if (part == null || part.cents() != -back.cents()) {
            faults.add(document.number() + " takes back what does not stand: " + back);
          }
        }
      }
    }
    Map<VisitKey, List<Part>> live = new HashMap<>();
    out.values()
        .forEach(part -> live.computeIfAbsent(part.visit(), unused -> new ArrayList<>()).add(part));
    return live;
  }
}
