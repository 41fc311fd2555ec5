package clenchbook.billing;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A document of a month that would go out otherwise than it was last prepared and could be looked
 * at.
 *
 * @param now the document as the book makes it now; void when nothing is left on it
 * @param before as it was prepared; empty when it is new
 */
public record Unprepared(BilledDocument now, Optional<BilledDocument> before) {
  /**
   * Compares a month with what the register holds of it.
   *
   * @param register the documents as last prepared
   * @param decision the month as the book makes it now
   * @return in the order of their numbers; empty when all drafts are as prepared
   */
  public static List<Unprepared> of(List<BilledDocument> register, BillingDecision decision) {
    Map<String, BilledDocument> prepared = new HashMap<>();
    register.forEach(document -> prepared.put(document.number(), document));
    List<Unprepared> all = new ArrayList<>();
    for (BilledDocument now : decision.month()) {
      Optional<BilledDocument> before = Optional.ofNullable(prepared.get(now.number()));
      boolean out = before.filter(document -> document.state().fixed()).isPresent();
      boolean gone =
          now.state() == DocumentState.VOID
              && before.filter(document -> document.state() == DocumentState.DRAFT).isPresent();
      // A payment may already name what was never laid down.
      boolean same = before.filter(now::saysTheSame).isPresent();
      if (gone || (now.counts() && !out && !same)) {
        all.add(new Unprepared(now, before.filter(BilledDocument::counts)));
      }
    }
    return all;
  }
}
