package clenchbook.stock.cutting;

import java.util.List;

/**
 * What is to be cut: pieces of given lengths from bars of one length.
 *
 * <p>Kerf rule: between two pieces of a bar the saw takes one kerf; the last piece needs a cut only
 * where something is left behind it. So n pieces fit a bar when their lengths and n - 1 kerfs do,
 * which is the same as adding the kerf to every piece and once to the bar.
 *
 * @param barLength length of a stock bar, in whole units above zero
 * @param kerf what one cut turns to dust, in the same units, zero or more
 * @param pieces the pieces, longest first, each length once
 */
public record CuttingOrder(long barLength, long kerf, List<Piece> pieces) {

  /**
   * One length and how many of it are wanted.
   *
   * @param length in the order's units, above zero
   * @param count how many, above zero
   */
  public record Piece(long length, int count) {
    /** Refuses a length or a count that is not above zero. */
    public Piece {
      if (length <= 0 || count <= 0) {
        throw new IllegalArgumentException("not a piece: " + length + " × " + count);
      }
    }
  }

  /** Refuses an unordered list, a repeated length and a piece longer than the bar. */
  public CuttingOrder {
    pieces = List.copyOf(pieces);
    if (barLength <= 0 || kerf < 0) {
      throw new IllegalArgumentException("not a bar: " + barLength + " with kerf " + kerf);
    }
    for (int i = 0; i < pieces.size(); i++) {
      boolean fits = pieces.get(i).length() <= barLength;
      boolean falls = i == 0 || pieces.get(i).length() < pieces.get(i - 1).length();
      if (!fits || !falls) {
        throw new IllegalArgumentException("piece out of order or too long: " + pieces.get(i));
      }
    }
  }

  /** Gives the sum of all piece lengths, without kerf. */
  public long totalLength() {
    return pieces.stream().mapToLong(piece -> piece.length() * piece.count()).sum();
  }

  /** Gives the bar's length in steps of what all pieces have in common: how much work a plan is. */
  public long steps() {
    return pieces.isEmpty() ? 0 : Sizes.of(this).capacity();
  }

  /** Gives the bar's length with one kerf added: what the enlarged pieces must fit. */
  long capacity() {
    return barLength + kerf;
  }

  /** Gives each piece's length with one kerf added, in the order of {@link #pieces}. */
  long[] sizes() {
    return pieces.stream().mapToLong(piece -> piece.length() + kerf).toArray();
  }

  int[] demand() {
    return pieces.stream().mapToInt(Piece::count).toArray();
  }
}
