package clenchbook.problem;

import clenchbook.texts.Message;
import java.util.Locale;

/** How much a problem matters. */
public enum Severity {
  /** The row is held back: neither billed nor counted until it is put right. */
  HELD,
  /** The row is used, but the farrier should look. */
  WARNING,
  /** Something worth knowing; nothing to put right in a cell. */
  NOTE;

  /**
   * The word that stands in files.
   *
   * @return {@code held}, {@code warning} or {@code note}
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The word that the farrier reads. */
  public Message inWords() {
    return switch (this) {
      case HELD -> Message.of("problem.severity.held");
      case WARNING -> Message.of("problem.severity.warning");
      case NOTE -> Message.of("problem.severity.note");
    };
  }
}
