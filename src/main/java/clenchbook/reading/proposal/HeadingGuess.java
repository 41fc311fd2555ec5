package clenchbook.reading.proposal;

import clenchbook.texts.Message;

/**
 * What a heading most likely means.
 *
 * @param column its column
 * @param meaning one of the program's headings; empty where none is likely
 * @param sure in per cent
 * @param why what speaks for it
 */
record HeadingGuess(Column column, String meaning, int sure, Message why) {
  /** The same, no surer than the sheet. */
  HeadingGuess within(int most) {
    return new HeadingGuess(column, meaning, Math.min(most, sure), why);
  }
}
