package clenchbook.billing.mails;

import java.util.Arrays;
import java.util.Locale;

/** How far a mail has come; each step is on disk before the next is taken. */
public enum MailState {
  /** It is to be sent; the server has nothing of it. Safe to send. */
  INTENDED,
  /**
   * Its end was about to be told to the server, and no answer is on record. A run that finds this
   * state was interrupted at the one moment that cannot be told apart: the mail may have gone off.
   */
  HANDED_OVER,
  /** The server took it. */
  DELIVERED,
  /** The server refused it for good. Safe to send once the cause is put right. */
  REFUSED,
  /** Nobody knows whether the server took it; only the farrier may say that it goes again. */
  UNSURE;

  /** The state in plain words, as the register keeps it: {@code handed over}. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The state of these words.
   *
   * @throws IllegalArgumentException where there is none
   */
  public static MailState of(String words) {
    return Arrays.stream(values())
        .filter(state -> state.words().equals(words))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no state of a mail: " + words));
  }

  /** Whether a mail in this state may be sent without being asked for by name. */
  public boolean isSafeToSend() {
    return this == INTENDED || this == REFUSED;
  }
}
