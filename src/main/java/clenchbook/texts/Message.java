package clenchbook.texts;

import java.math.BigDecimal;
import java.time.Month;
import java.time.temporal.Temporal;
import java.util.Comparator;
import java.util.List;

/**
 * Something to say, before it is known in which language: the key of a text, and what fills the
 * text's gaps. {@link Texts#say(Message)} makes the sentence.
 *
 * <p>A gap is filled by a text (words of the book, or a figure already written for people), a whole
 * number, a {@link BigDecimal}, a day or a month of a year (written as files have them), a month's
 * name, a {@link BookName}, another message, or a list of these.
 *
 * <p>Messages are in order by key and then by what fills them, so that what is sorted by them lies
 * alike in every language.
 *
 * @param key the key, such as {@code month.toSend}; blank for words that stand as they are
 * @param gaps what fills {@code {0}}, {@code {1}} and so on; without a key, the words themselves
 */
public record Message(String key, List<Object> gaps) implements Comparable<Message> {
  /** Nothing to say. */
  public static final Message NONE = new Message("", List.of(""));

  private static final Comparator<Message> ORDER =
      Comparator.comparing(Message::key).thenComparing(message -> message.gaps().toString());

  /**
   * Copies its list.
   *
   * @throws IllegalArgumentException where something fills a gap that no language can write
   */
  public Message {
    gaps = List.copyOf(gaps);
    gaps.forEach(Message::check);
  }

  private static void check(Object gap) {
    if (gap instanceof List<?> several) {
      several.forEach(Message::check);
    } else if (!(gap instanceof String
        || gap instanceof Integer
        || gap instanceof Long
        || gap instanceof BigDecimal
        || gap instanceof Temporal
        || gap instanceof Month
        || gap instanceof BookName
        || gap instanceof Message)) {
      throw new IllegalArgumentException("no language writes a " + gap.getClass());
    }
  }

  /**
   * A text with its gaps filled.
   *
   * @param key the key, written out where it is used so that it can be found
   * @param gaps what fills the gaps, in order
   * @return the message
   */
  public static Message of(String key, Object... gaps) {
    return new Message(key, List.of(gaps));
  }

  /**
   * Words that are the same in every language: the book's own, a file's name.
   *
   * <p>English sentences that have not been moved into the texts yet stand here too; a test counts
   * them by room.
   *
   * @param words the words
   * @return the message
   */
  public static Message literal(String words) {
    return new Message("", List.of(words));
  }

  /**
   * Messages one after another.
   *
   * @param between what stands between two of them, such as {@code "; "}: signs, no words
   * @param messages the messages, in order
   * @return all of them; {@link #NONE} of none
   */
  public static Message joined(String between, List<Message> messages) {
    return messages.isEmpty()
        ? NONE
        : messages.stream()
            .reduce((one, next) -> new Message("", List.of(one, between, next)))
            .orElseThrow();
  }

  /**
   * Several things in turn, each put to those before it by a text such as {@code {0} or {1}}.
   *
   * @param key the text that joins two
   * @param parts what fills a gap, in order
   * @return all of them; {@link #NONE} of none
   */
  public static Message inTurn(String key, List<?> parts) {
    return parts.stream()
        .map(part -> part instanceof Message message ? message : new Message("", List.of(part)))
        .reduce((before, next) -> of(key, before, next))
        .orElse(NONE);
  }

  /** Whether there is nothing to say. */
  public boolean isEmpty() {
    return equals(NONE);
  }

  @Override
  public int compareTo(Message other) {
    return ORDER.compare(this, other);
  }
}
