package clenchbook.workload.outlook;

/** How the shoes are shaped: as now, or all steel ones in one way. */
public enum Mix {
  /** As in the past year. */
  TODAY("today's mix"),
  /** Every steel shoe that is shaped is a keg shoe shaped hot; aluminium stays as it is. */
  ALL_KEG_HOT("all steel keg hot"),
  /** Every steel shoe that is shaped is a keg shoe shaped cold; aluminium stays as it is. */
  ALL_KEG_COLD("all steel keg cold");

  private final String words;

  Mix(String words) {
    this.words = words;
  }

  /**
   * The mix in words.
   *
   * @return such as {@code all steel keg hot}
   */
  public String words() {
    return words;
  }
}
