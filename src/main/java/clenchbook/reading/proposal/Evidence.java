package clenchbook.reading.proposal;

import clenchbook.reading.proposal.KnownValues.Of;

/**
 * What is known of a column beside its heading.
 *
 * @param profile what its cells look like
 * @param known what the rest of the book names
 * @param rows how many rows the table has
 * @param sum whether its numbers are made of two other columns
 * @param base whether another column is the same with a fixed share added, such as a tax
 * @param running whether its numbers run on from row to row
 * @param settles how many other columns of names follow from this one: a horse's name gives its
 */
record Evidence(
    ColumnProfile profile,
    KnownValues known,
    int rows,
    boolean sum,
    boolean base,
    boolean running,
    int settles,
    int settled,
    boolean leads) {
  int share(Trait trait) {
    return profile.share(trait);
  }

  /** Whether it holds words for the most part. */
  boolean isWords() {
    return share(Trait.TEXT) + share(Trait.PHONE) + share(Trait.SIZE) >= 60;
  }

  /** Whether it holds numbers for the most part, and no lengths of time, days or percentages. */
  boolean isNumbers() {
    return share(Trait.NUMBER) >= 85 && share(Trait.PERCENT) < 30;
  }

  /** Of a hundred rows, how many hold something. */
  int filled() {
    return rows == 0 ? 0 : Math.min(100, profile.filled() * 100 / rows);
  }

  /** Of a hundred cells, how many the book names elsewhere; -1 where it names none at all. */
  int recurs(Of of) {
    return known.has(of) ? known.share(of, profile) : -1;
  }

  /** How many different values the book names elsewhere. */
  int shared(Of of) {
    return known.shared(of, profile);
  }
}
