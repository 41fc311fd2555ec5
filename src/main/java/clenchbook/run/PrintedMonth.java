package clenchbook.run;

import clenchbook.billing.BilledDocument;
import clenchbook.month.MonthFindings;
import clenchbook.register.Register;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A month's letters as PDF: issued ones with the bytes they went out with, the rest printed now.
 *
 * @param month the month
 * @param drafts what was printed now, by number
 * @param files all letters, by their path among the month's files
 */
record PrintedMonth(MonthFindings month, Map<String, byte[]> drafts, Map<String, byte[]> files) {
  /**
   * Prints what is not kept.
   *
   * @param register where the bytes of issued documents are; empty where there is no register yet
   */
  static PrintedMonth of(
      MonthFindings month, MonthFiles letters, Optional<Register> register, Terminal terminal) {
    Map<String, byte[]> byNumber = new HashMap<>();
    for (BilledDocument document : month.billing().month()) {
      if (document.state().fixed()) {
        register
            .flatMap(open -> open.pdf(document.number()))
            .ifPresent(pdf -> byNumber.put(document.number(), pdf));
      }
    }
    try (Printing printing = new Printing()) {
      Map<String, byte[]> drafts = printing.all(letters.letters(byNumber), terminal);
      byNumber.putAll(drafts);
      Map<String, byte[]> files = new HashMap<>(letters.named(byNumber));
      files.putAll(printing.all(letters.statements(), terminal));
      return new PrintedMonth(month, drafts, files);
    }
  }
}
