package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Documents in memory: quick. A recording is cut short before it begins, or not at all. */
final class MemoryStore implements LifeStore {
  private final Map<String, String> bytes = new TreeMap<>();
  private List<BilledDocument> documents = List.of();
  private boolean dying;

  @Override
  public List<BilledDocument> documents() {
    return documents;
  }

  @Override
  public Map<String, String> bytes() {
    return Map.copyOf(bytes);
  }

  @Override
  public void record(List<BilledDocument> all, Map<String, String> drafts) {
    if (dying) {
      throw new Killed();
    }
    documents = List.copyOf(all);
    bytes.putAll(drafts);
  }

  @Override
  public void dieAt(int moment) {
    dying = moment % 2 == 0;
  }

  @Override
  public void liveOn() {
    dying = false;
  }
}
