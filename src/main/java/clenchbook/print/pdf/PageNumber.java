package clenchbook.print.pdf;

import clenchbook.print.invoice.LetterWording;
import clenchbook.reports.blocks.Report;
import clenchbook.texts.Texts;

/**
 * A page's number and how many there are, such as {@code Page 1 of 3}, in two pieces: how many
 * there are is known only once the last page is filled, so it stands in a field of its own.
 *
 * @param number what stands before it, with the name of the library's number in it
 * @param total the name of the library's number, with what stands behind it
 */
record PageNumber(String number, String total) {
  private static final String NUMBER = "$V{PAGE_NUMBER}";

  /** Stands for how many pages there are while the sentence is cut there. */
  private static final char CUT = '\uE001';

  static PageNumber of(Report report) {
    Texts texts = report.texts();
    if (!texts.spoken().equals(report.language())) {
      // Its language has no texts yet, but letters have a word for it.
      return new PageNumber(
          LetterWording.of(report.language()).page() + " " + NUMBER + " /", NUMBER);
    }
    String sentence = texts.say("print.report.page", NUMBER, String.valueOf(CUT));
    int cut = sentence.indexOf(CUT);
    return new PageNumber(
        sentence.substring(0, cut).stripTrailing(), NUMBER + sentence.substring(cut + 1));
  }

  /** The longest that stands before how many there are, to see how wide it is. */
  String longest() {
    return number.replace(NUMBER, "000");
  }
}
