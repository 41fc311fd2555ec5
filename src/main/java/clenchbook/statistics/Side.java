package clenchbook.statistics;

/** The two sides of a comparison; a difference is always A less B. */
public enum Side {
  /** The side that is compared. */
  A,
  /** The side that it is compared with. */
  B
}
