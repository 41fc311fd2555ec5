package clenchbook.billing;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.numbering.NumberPattern;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Gives out numbers without gap or repeat, after those that the register holds. */
final class Numbering {
  private final NumberPattern pattern;
  private final int first;
  private final Map<String, Integer> last = new HashMap<>();
  private final Set<String> taken = new HashSet<>();

  /** A number given out. */
  record Given(String number, String series, int sequence) {}

  Numbering(NumberPattern pattern, int first, Collection<BilledDocument> documents) {
    this.pattern = pattern;
    this.first = first;
    for (BilledDocument document : documents) {
      last.merge(document.series(), document.sequence(), Math::max);
      taken.add(document.number());
    }
  }

  Given next(LocalDate date) {
    String series = pattern.series(date);
    int start = last.isEmpty() || series.isEmpty() ? first : 1;
    int sequence = last.containsKey(series) ? last.get(series) + 1 : start;
    while (!taken.add(pattern.number(date, sequence))) {
      sequence++;
    }
    last.put(series, sequence);
    return new Given(pattern.number(date, sequence), series, sequence);
  }
}
