package clenchbook.delivery;

import clenchbook.billing.mails.MailId;
import clenchbook.billing.mails.MailLedger;
import clenchbook.billing.mails.MailState;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** A ledger that forgets everything with the test. */
class MailLedgerInMemory implements MailLedger {
  private final Map<MailId, MailState> states = new HashMap<>();

  @Override
  public void together(Runnable steps) {
    steps.run();
  }

  @Override
  public Optional<MailState> find(MailId id) {
    return Optional.ofNullable(states.get(id));
  }

  @Override
  public boolean intend(MailId id, boolean again) {
    MailState before = states.getOrDefault(id, MailState.INTENDED);
    if (!again && !before.isSafeToSend()) {
      return false;
    }
    states.put(id, MailState.INTENDED);
    return true;
  }

  @Override
  public void handedOver(MailId id) {
    states.put(id, MailState.HANDED_OVER);
  }

  @Override
  public void delivered(MailId id) {
    states.put(id, MailState.DELIVERED);
  }

  @Override
  public void refused(MailId id, String reason) {
    states.put(id, MailState.REFUSED);
  }

  @Override
  public void putOff(MailId id, String reason) {
    states.put(id, MailState.INTENDED);
  }

  @Override
  public void unsure(MailId id, String reason) {
    states.put(id, MailState.UNSURE);
  }
}
