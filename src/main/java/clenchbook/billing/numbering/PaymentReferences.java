package clenchbook.billing.numbering;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.texts.Message;
import clenchbook.values.CreditorReference;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a transfer shall say: a document's number, or where the setting asks for it a creditor
 * reference made of the number. Where one number has no reference, or two would share one, none
 * has: an owner's bank could not tell them apart.
 */
public final class PaymentReferences {
  private final boolean structured;
  private final Optional<Message> refusal;

  private PaymentReferences(boolean structured, Optional<Message> refusal) {
    this.structured = structured;
    this.refusal = refusal;
  }

  /**
   * The references of a run.
   *
   * @param settings the settings
   * @param numbers the numbers of all documents after the run
   * @return the references
   */
  public static PaymentReferences of(Settings settings, Collection<String> numbers) {
    boolean asked = settings.text(Setting.PAYMENT_REFERENCE).equals("rf");
    Optional<Message> refusal = asked ? refusal(numbers) : Optional.empty();
    return new PaymentReferences(asked && refusal.isEmpty(), refusal);
  }

  private static Optional<Message> refusal(Collection<String> numbers) {
    Map<String, String> seen = new HashMap<>();
    for (String number : numbers) {
      if (CreditorReference.of(number).isEmpty()) {
        return Optional.of(Message.of("billing.reference.noneOfNumber", number));
      }
      String earlier = seen.putIfAbsent(CreditorReference.body(number), number);
      if (earlier != null && !earlier.equals(number)) {
        return Optional.of(Message.of("billing.reference.sameOfTwo", earlier, number));
      }
    }
    return Optional.empty();
  }

  /**
   * Why no references are made although the setting asks for them.
   *
   * @return what is wrong, with what stands instead; empty where they are made or not asked for
   */
  public Optional<Message> refusal() {
    return refusal;
  }

  /**
   * A document's reference.
   *
   * @param number its number
   * @return the reference; empty where the number itself is what a transfer shall say
   */
  public Optional<CreditorReference> of(String number) {
    return structured ? CreditorReference.of(number) : Optional.empty();
  }
}
