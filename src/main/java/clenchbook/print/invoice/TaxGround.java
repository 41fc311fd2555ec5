package clenchbook.print.invoice;

import clenchbook.book.TaxCategory;
import clenchbook.reports.letters.PrintedTax;
import clenchbook.reports.letters.PrintedTotals;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Says why no tax is charged, in the words that the law of the language wants where it wants any.
 *
 * <p>Source: Directive 2006/112/EC, article 226 (11) and (11a), in the wordings of its five
 * language versions.
 */
public final class TaxGround {
  private TaxGround() {}

  /**
   * What a category says by itself.
   *
   * @param category how the tax is treated
   * @param wording the words of the document's language
   * @return the words; empty where tax is charged or zero-rated
   */
  public static String of(TaxCategory category, LetterWording wording) {
    return switch (category) {
      case S, Z -> "";
      case E -> wording.say("ground.untaxed");
      case AE -> wording.say("ground.reverseCharge");
      case O -> wording.say("ground.outsideScope");
    };
  }

  /**
   * The ground of a tax line.
   *
   * @param category how the tax is treated
   * @param reason what the book says; may be empty
   * @param wording the words of the document's language
   * @return the book's reason, after the words of the law where it wants them; empty where tax is
   *     charged or zero-rated
   */
  public static String of(TaxCategory category, String reason, LetterWording wording) {
    String own = of(category, wording);
    if (own.isEmpty() || reason.isEmpty() || reason.equals(own)) {
      return own;
    }
    return category == TaxCategory.E ? reason : own + ": " + reason;
  }

  /** What an invoice or credit note says of it beneath its sums, each ground once. */
  static List<String> remarks(PrintedTotals totals, LetterWording wording) {
    Set<String> remarks = new LinkedHashSet<>();
    if (totals.linesExempt()) {
      remarks.add(wording.say("ground.exempt"));
    }
    for (PrintedTax tax : totals.taxes()) {
      if (tax.category() == TaxCategory.E && !tax.reason().isEmpty()) {
        remarks.add(wording.say("ground.exemptBecause", tax.reason()));
      } else if (tax.category() == TaxCategory.AE || tax.category() == TaxCategory.O) {
        remarks.add(of(tax.category(), tax.reason(), wording));
      }
    }
    return List.copyOf(remarks);
  }
}
