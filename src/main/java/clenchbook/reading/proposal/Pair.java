package clenchbook.reading.proposal;

import java.util.Optional;

/**
 * What speaks for one meaning of one column.
 *
 * @param meaning the program's heading
 * @param contents what such a column holds
 * @param name the points of the heading's likeness
 * @param word the known word that it is most like
 * @param fit the points of the cells
 * @param points all points together
 * @param needed those of them that it has because a sheet of the kind must have the column
 * @param most the most per cent that such evidence is worth
 */
record Pair(
    String meaning,
    Contents contents,
    int name,
    Optional<String> word,
    int fit,
    int points,
    int needed,
    int most) {
  /** A likeness worth telling. */
  static final int LIKE = 14;

  /** A name that is hardly another word. */
  static final int STRONG = 26;
}
