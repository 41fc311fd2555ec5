package clenchbook.matching;

import clenchbook.matching.bank.AccountMask;
import clenchbook.matching.bank.BankEntry;
import java.util.List;

/**
 * What a row bears as Reference, so that a later run knows it again: the payer's name and the
 * bank's reference, else the payer's, else the beginning of the text; account numbers hidden.
 */
final class EntryReference {
  private static final int LONGEST_NAME = 40;
  private static final int LONGEST_REST = 40;

  private EntryReference() {}

  static String of(BankEntry entry, AccountMask mask) {
    String rest = entry.bankReference();
    rest = rest.isEmpty() ? entry.endToEnd() : rest;
    rest = rest.isEmpty() ? entry.text() : rest;
    List<String> accounts = List.of(entry.account());
    String who = cut(mask.hide(entry.who(), accounts), LONGEST_NAME);
    String more = cut(mask.hide(rest, accounts), LONGEST_REST);
    return who.isEmpty() || more.isEmpty() ? who + more : who + "; " + more;
  }

  /** The payer's name in a Reference that an earlier run proposed. */
  static String who(String reference) {
    int end = reference.indexOf(';');
    return end < 0 ? reference : reference.substring(0, end);
  }

  private static String cut(String text, int most) {
    return text.length() > most ? text.substring(0, most).strip() : text;
  }
}
