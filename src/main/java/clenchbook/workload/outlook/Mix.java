package clenchbook.workload.outlook;

import clenchbook.workload.hours.Phrase;

/** How the shoes are shaped: as now, or all steel ones in one way. */
public enum Mix {
  /** As in the past year. */
  TODAY(Phrase.of("today's mix", "workload.mix.today")),
  /** Every steel shoe that is shaped is a keg shoe shaped hot; aluminium stays as it is. */
  ALL_KEG_HOT(Phrase.of("all steel keg hot", "workload.mix.allKegHot")),
  /** Every steel shoe that is shaped is a keg shoe shaped cold; aluminium stays as it is. */
  ALL_KEG_COLD(Phrase.of("all steel keg cold", "workload.mix.allKegCold"));

  private final Phrase words;

  Mix(Phrase words) {
    this.words = words;
  }

  /**
   * The mix in words.
   *
   * @return such as {@code all steel keg hot}
   */
  public Phrase words() {
    return words;
  }
}
