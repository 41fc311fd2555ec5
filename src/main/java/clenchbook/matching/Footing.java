package clenchbook.matching;

import clenchbook.matching.known.KnownDocument;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How sure each entry's likeliest reading is on its own footing. Weighing all at once may make a
 * reading likely only because another entry seems to settle what it could pay as well; that counts
 * here only where the other entry is itself sure. From entries that are sure by themselves on to
 * those that become sure once these have settled theirs, until no more do.
 */
final class Footing {
  private final List<List<Candidate>> readings;
  private final double[][] likely;
  private final int[] best;
  private final int[] percent;
  private final Set<KnownDocument> gone = new HashSet<>();

  private Footing(List<List<Candidate>> readings, double[][] likely) {
    this.readings = readings;
    this.likely = likely;
    best = new int[readings.size()];
    percent = new int[readings.size()];
  }

  /**
   * The most that each entry's likeliest reading may be sure of.
   *
   * @param readings the readings of each entry
   * @param likely how likely each is, all weighed at once
   * @return whole per cent, the cap of the reading's evidence included; 0 for an entry without any
   */
  static int[] of(List<List<Candidate>> readings, double[][] likely) {
    Footing footing = new Footing(readings, likely);
    footing.run();
    return footing.percent;
  }

  private void run() {
    for (int entry = 0; entry < best.length; entry++) {
      for (int at = 1; at < likely[entry].length; at++) {
        best[entry] = likely[entry][at] > likely[entry][best[entry]] ? at : best[entry];
      }
    }
    boolean more = true;
    while (more) {
      more = false;
      for (int entry = 0; entry < best.length; entry++) {
        if (likely[entry].length > 0 && percent[entry] < Proposal.SURE_ENOUGH) {
          percent[entry] = percent(entry);
          more |= percent[entry] >= Proposal.SURE_ENOUGH;
        }
      }
    }
  }

  private int percent(int entry) {
    List<Candidate> candidates = readings.get(entry);
    Candidate chosen = candidates.get(best[entry]);
    double all = 1;
    for (int at = 0; at < candidates.size(); at++) {
      boolean open = at == best[entry] || !isGone(candidates.get(at));
      all += open ? candidates.get(at).weight() : 0;
    }
    double chance = Math.min(chosen.weight() / all, likely[entry][best[entry]]);
    int sure = Math.min(chosen.cap(), (int) Math.floor(chance * 100));
    if (sure >= Proposal.SURE_ENOUGH && chosen.settles()) {
      chosen.shares().forEach(share -> gone.add(share.document()));
    }
    return sure;
  }

  private boolean isGone(Candidate candidate) {
    return candidate.settles()
        && candidate.shares().stream().anyMatch(share -> gone.contains(share.document()));
  }
}
