package clenchbook.comparison.questions;

/** Why a job of the period does not enter a comparison. */
public enum Exclusion {
  /** A trim, or other work without shoes. */
  NO_SHOES("no shoes were nailed on"),
  /** Shoes of several kinds in one job. */
  MIXED_KINDS("shoes of more than one kind"),
  /** Aluminium can only be worked cold. */
  ALUMINIUM("aluminium, which can only be worked cold"),
  /** Nothing says keg or handmade. */
  KIND_UNKNOWN("the book does not say whether the shoes are keg or handmade"),
  /** Neither hot nor cold. */
  NOT_SHAPED("neither hot nor cold"),
  /** A call for a lost shoe. */
  LOST_SHOE_CALL("a call for a lost shoe"),
  /** Old shoes nailed on again. */
  RESET("old shoes were set again"),
  /** Shape min blank. */
  SHAPE_NOT_MEASURED("Shape min was not written down"),
  /** The time was not measured, or only in part. */
  NOT_MEASURED("the time was not measured, or only in part"),
  /** A slip of the pen: no day holds so many. */
  IMPOSSIBLE_MINUTES("more minutes than a day has"),
  /** Nothing of the same sort on the other side. */
  NO_COUNTERPART("fewer than two jobs of the same sort on one of the sides");

  private final String words;

  Exclusion(String words) {
    this.words = words;
  }

  /** The reason in words. */
  public String words() {
    return words;
  }
}
