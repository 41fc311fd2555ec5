package clenchbook.delivery.wording;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One sentence or two of a mail that the farrier can word anew, in the order they are read. */
public enum WordingPart {
  /** The subject of a mail with an invoice and a credit note. */
  SUBJECT_BOTH,
  /** The subject of a mail with an invoice. */
  SUBJECT_INVOICE,
  /** The subject of a mail with a credit note and no invoice. */
  SUBJECT_CREDIT,
  /** The subject of a mail with a statement alone. */
  SUBJECT_STATEMENT,
  /** How the owner is addressed. */
  GREETING,
  /** That an invoice is attached, and its total. */
  INVOICE,
  /** What was received in the month. */
  PAID,
  /** What is left, and by when. */
  DUE,
  /** That a credit note is attached. */
  CREDIT,
  /** That a statement is attached, and the balance. */
  STATEMENT,
  /** That a statement is attached, with a balance in the owner's favour. */
  FAVOUR,
  /** Where to pay online. */
  LINK,
  /** What a transfer shall say. */
  REFERENCE,
  /** Whom to ask. */
  QUESTION,
  /** The telephone. */
  PHONE,
  /** The farewell. */
  FAREWELL;

  private static final List<WordingPart> SUBJECTS =
      List.of(SUBJECT_BOTH, SUBJECT_INVOICE, SUBJECT_CREDIT, SUBJECT_STATEMENT);

  /** The name in the wording's file: {@code subject.invoice}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '.');
  }

  boolean isSubject() {
    return SUBJECTS.contains(this);
  }

  static Optional<WordingPart> find(String key) {
    return Arrays.stream(values()).filter(part -> part.key().equals(key)).findFirst();
  }
}
