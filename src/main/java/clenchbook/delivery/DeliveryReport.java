package clenchbook.delivery;

import clenchbook.delivery.DeliveryOutcome.Result;
import clenchbook.texts.Message;
import java.util.List;
import java.util.Optional;

/**
 * What became of all mails of a run.
 *
 * @param outcomes one for each mail, in the order they were given
 * @param stopped why the run ended before its last mail, in one line, if it did
 */
public record DeliveryReport(List<DeliveryOutcome> outcomes, Optional<Message> stopped) {
  /** Copies the list. */
  public DeliveryReport {
    outcomes = List.copyOf(outcomes);
  }

  /** How many mails ended so. */
  public long count(Result result) {
    return outcomes.stream().filter(outcome -> outcome.result() == result).count();
  }

  /** Whether every mail has reached the server, now or before. */
  public boolean isComplete() {
    return outcomes.stream().noneMatch(DeliveryOutcome::needsAttention);
  }
}
