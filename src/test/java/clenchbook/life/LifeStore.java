package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import java.util.List;
import java.util.Map;

/** Where documents are kept between two commands. */
interface LifeStore {
  /** The run was cut short. */
  final class Killed extends Error {
    private static final long serialVersionUID = 1L;

    Killed() {
      super("killed", null, false, false);
    }
  }

  /** All documents. */
  List<BilledDocument> documents();

  /** The bytes kept of each document, as text. */
  Map<String, String> bytes();

  /** Keeps the documents, and the bytes of those that were not out yet. */
  void record(List<BilledDocument> documents, Map<String, String> bytes);

  /** Whether the next recording is cut short, and when; any number means some moment or none. */
  void dieAt(int moment);

  /** The run is over: what is recorded next is not cut short. */
  void liveOn();
}
