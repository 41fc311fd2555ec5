package clenchbook.billing.mails;

/**
 * What makes a mail the same mail in every run: whose it is, of which period, and the documents it
 * carries. An invoice that joins later makes another mail, so no document is left out because an
 * earlier mail of that month went off without it.
 *
 * @param owner the owner's name as the book has it
 * @param period such as {@code 2026-10}
 * @param documents the numbers of its invoice and credit notes, separated by blanks; empty for a
 *     statement alone
 */
public record MailId(String owner, String period, String documents) {
  /** One line for the terminal. */
  public String line() {
    return documents.isEmpty() ? owner + ", " + period : owner + ", " + period + ", " + documents;
  }
}
