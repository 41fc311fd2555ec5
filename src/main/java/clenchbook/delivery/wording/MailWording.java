package clenchbook.delivery.wording;

import clenchbook.delivery.message.HeaderText;
import clenchbook.delivery.message.MailText;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The wording of mails in one language: an entry for each {@link WordingPart}, the farrier's own
 * where there is one.
 *
 * <p>A paragraph is left out of a mail that has no value for one of its placeholders, so one set of
 * entries serves mails with an invoice, a credit note, a statement or all three. The subject is the
 * first of the three that has all its values.
 */
public final class MailWording {
  private final String language;
  private final Map<WordingPart, WordingLine> lines;

  private MailWording(String language, Map<WordingPart, WordingLine> lines) {
    this.language = language;
    this.lines = lines;
  }

  /**
   * A complete wording.
   *
   * @param language its code, such as {@code nl}
   * @param entries a text for every part; an empty text leaves the paragraph out
   * @throws IllegalArgumentException where a part is missing or a placeholder is unknown
   */
  static MailWording of(String language, Map<WordingPart, String> entries) {
    Map<WordingPart, WordingLine> lines = new EnumMap<>(WordingPart.class);
    entries.forEach((part, text) -> lines.put(part, WordingLine.of(text)));
    for (WordingPart part : WordingPart.values()) {
      if (!lines.containsKey(part)) {
        throw new IllegalArgumentException("the wording " + language + " lacks " + part.key());
      }
    }
    return new MailWording(language, lines);
  }

  /** This wording with the given entries in place of its own. */
  MailWording with(Map<WordingPart, WordingLine> own) {
    Map<WordingPart, WordingLine> merged = new EnumMap<>(lines);
    merged.putAll(own);
    return new MailWording(language, merged);
  }

  /** The language's code. */
  public String language() {
    return language;
  }

  /**
   * The mail's text.
   *
   * @param values what is known of this mail; what has no value is left out of the map. Values are
   *     made fit for a header first ({@link HeaderText#clean}).
   */
  public MailText write(Map<MailWord, String> values) {
    Map<MailWord, String> clean = new EnumMap<>(MailWord.class);
    values.forEach((word, value) -> clean.put(word, HeaderText.clean(value)));
    return new MailText(language, subject(clean), paragraphs(clean));
  }

  private String subject(Map<MailWord, String> values) {
    for (WordingPart part : WordingPart.values()) {
      Optional<String> filled = part.isSubject() ? filled(part, values) : Optional.empty();
      if (filled.isPresent()) {
        return HeaderText.clean(filled.get());
      }
    }
    return values.getOrDefault(MailWord.MONTH, "");
  }

  private List<String> paragraphs(Map<MailWord, String> values) {
    List<String> paragraphs = new ArrayList<>();
    for (WordingPart part : WordingPart.values()) {
      if (!part.isSubject()) {
        filled(part, values).ifPresent(paragraphs::add);
      }
    }
    return paragraphs;
  }

  private Optional<String> filled(WordingPart part, Map<MailWord, String> values) {
    return Optional.ofNullable(lines.get(part)).flatMap(line -> line.filled(values));
  }
}
