package clenchbook.matching;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.known.KnownDocument;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Open invoices by amount, and how often each amount comes in. */
final class Amounts {
  private static final int FEWEST = 50;

  private final Map<BigDecimal, List<KnownDocument>> open = new HashMap<>();
  private final Map<BigDecimal, Integer> seen = new HashMap<>();
  private int all;

  Amounts(List<KnownDocument> documents, List<BankEntry> entries) {
    for (KnownDocument document : documents) {
      if (document.isOpen()) {
        open.computeIfAbsent(key(document.open()), unused -> new ArrayList<>(1)).add(document);
      }
    }
    for (BankEntry entry : entries) {
      if (entry.moneyIn()) {
        all++;
        seen.merge(key(entry.amount()), 1, Integer::sum);
      }
    }
  }

  static BigDecimal key(BigDecimal amount) {
    return amount.stripTrailingZeros();
  }

  /** The invoices with just this much open. */
  List<KnownDocument> open(BigDecimal amount) {
    return open.getOrDefault(key(amount), List.of());
  }

  /** Which share of all money in has this amount, beyond the one that is looked at. */
  double frequency(BigDecimal amount) {
    return (seen.getOrDefault(key(amount), 1) - 1) / (double) Math.max(FEWEST, all);
  }
}
