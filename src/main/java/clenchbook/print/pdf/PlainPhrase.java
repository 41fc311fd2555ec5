package clenchbook.print.pdf;

import com.lowagie.text.Phrase;
import net.sf.jasperreports.pdf.classic.ClassicPdfProducer;
import net.sf.jasperreports.pdf.classic.ClassicPhrase;
import net.sf.jasperreports.pdf.common.PdfTextAlignment;
import net.sf.jasperreports.pdf.common.TextDirection;

/**
 * A text on a page. One whose letters all run from left to right is written as it stands; only
 * others are put through the analysis of mixed directions, which costs a twentieth of an invoice.
 */
final class PlainPhrase extends ClassicPhrase {
  /** Hebrew is the first script that runs from right to left. */
  private static final char FIRST_FROM_THE_RIGHT = '\u0590';

  private final Phrase phrase;

  PlainPhrase(ClassicPdfProducer producer, Phrase phrase) {
    super(producer, phrase);
    this.phrase = phrase;
  }

  @Override
  public float go(
      float left,
      float low,
      float right,
      float high,
      float fixedLeading,
      float leading,
      PdfTextAlignment alignment,
      TextDirection direction) {
    boolean plain =
        direction == TextDirection.LTR
            && phrase.getContent().chars().allMatch(c -> c < FIRST_FROM_THE_RIGHT);
    return super.go(
        left,
        low,
        right,
        high,
        fixedLeading,
        leading,
        alignment,
        plain ? TextDirection.DEFAULT : direction);
  }
}
