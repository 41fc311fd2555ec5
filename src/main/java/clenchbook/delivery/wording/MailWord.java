package clenchbook.delivery.wording;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a wording may name in curly brackets; each mail fills in those it has a value for. */
public enum MailWord {
  /** The owner's name as the invoice has it. */
  OWNER,
  /** The farrier's business name, or the farrier's address where none is set. */
  BUSINESS,
  /** The month of the documents, such as October 2026. */
  MONTH,
  /** The invoice's number. */
  NUMBER,
  /** The invoice's total with tax and the currency. */
  TOTAL,
  /** What the owner has paid in the month; only where something is. */
  PAID,
  /** What is left to pay; only where something is. */
  OPEN,
  /** The day it is due; only where something is left to pay. */
  DUE,
  /** The numbers of the credit notes that go with the mail. */
  CREDIT,
  /** What the owner owes by the statement; only where one goes with the mail. */
  BALANCE,
  /** What the statement shows in the owner's favour, in place of the balance. */
  FAVOUR,
  /** The day the statement is drawn up at. */
  DATE,
  /** The address for paying online. */
  LINK,
  /** What a transfer shall say, where it is not the number itself. */
  REFERENCE,
  /** The business's telephone. */
  PHONE;

  /** The word as it stands between the brackets: {@code number}. */
  public String placeholder() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The word of that name, or empty; case does not matter. */
  static Optional<MailWord> find(String placeholder) {
    return Arrays.stream(values())
        .filter(word -> word.placeholder().equalsIgnoreCase(placeholder.strip()))
        .findFirst();
  }
}
