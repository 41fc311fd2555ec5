package clenchbook.reading.proposal;

import clenchbook.texts.Message;

/**
 * A row of the file of headings.
 *
 * @param sheet the sheet's own name
 * @param mine the farrier's heading; empty where the row says what the sheet itself is
 * @param means one of the program's headings or sheets; empty where it is not known well enough
 * @param sure in per cent, 0 to 99; that of the likeliest meaning where {@code means} is empty
 * @param why what speaks for it
 */
public record Proposal(String sheet, String mine, String means, int sure, Message why) {
  /** Below this a meaning is left open. */
  public static final int LEAST = 60;
}
