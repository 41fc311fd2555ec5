package clenchbook.comparison.questions;

import clenchbook.texts.Message;

/** Why a job of the period does not enter a comparison. */
public enum Exclusion {
  /** A trim, or other work without shoes. */
  NO_SHOES("no shoes were nailed on", "comparison.out.noShoes"),
  /** Shoes of several kinds in one job. */
  MIXED_KINDS("shoes of more than one kind", "comparison.out.mixedKinds"),
  /** Aluminium can only be worked cold. */
  ALUMINIUM("aluminium, which can only be worked cold", "comparison.out.aluminium"),
  /** Nothing says keg or handmade. */
  KIND_UNKNOWN(
      "the book does not say whether the shoes are keg or handmade", "comparison.out.kindUnknown"),
  /** Neither hot nor cold. */
  NOT_SHAPED("neither hot nor cold", "comparison.out.notShaped"),
  /** A call for a lost shoe. */
  LOST_SHOE_CALL("a call for a lost shoe", "comparison.out.lostShoeCall"),
  /** Old shoes nailed on again. */
  RESET("old shoes were set again", "comparison.out.reset"),
  /** Shape min blank. */
  SHAPE_NOT_MEASURED("Shape min was not written down", "comparison.out.shapeNotMeasured"),
  /** The time was not measured, or only in part. */
  NOT_MEASURED("the time was not measured, or only in part", "comparison.out.notMeasured"),
  /** A slip of the pen: no day holds so many. */
  IMPOSSIBLE_MINUTES("more minutes than a day has", "comparison.out.impossibleMinutes"),
  /** Nothing of the same sort on the other side. */
  NO_COUNTERPART(
      "fewer than two jobs of the same sort on one of the sides", "comparison.out.noCounterpart");

  private final String words;
  private final String key;

  Exclusion(String words, String key) {
    this.words = words;
    this.key = key;
  }

  /** The reason for people. */
  public Message told() {
    return Message.of(key);
  }

  /** The reason as files have it. */
  public String words() {
    return words;
  }
}
