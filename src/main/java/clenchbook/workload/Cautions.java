package clenchbook.workload;

/** What stands on every page about the body. */
final class Cautions {

  /** At the foot of each page. */
  static final String FOOT =
      "An aid to planning, not a medical opinion. Pain, numbness or weakness: see a clinician or an"
          + " occupational-health professional. Local law on work exposure comes first. None of"
          + " these methods was validated on farriers.";

  private Cautions() {}
}
