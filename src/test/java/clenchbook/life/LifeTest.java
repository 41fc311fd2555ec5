package clenchbook.life;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book's whole life in random order, against plain addition; see docs/decisions.md. */
class LifeTest {
  private static final long SEED = Long.getLong("life.seed", 20261016);
  private static final int LENGTH = Integer.getInteger("life.length", 30);
  private static final int MOST_FAULTS = 5;

  @TempDir private Path folder;

  @Test
  void fifty_random_lives_bill_no_visit_twice_and_lose_none() {
    live(50);
  }

  @Test
  @Tag("demand")
  void a_thousand_random_lives_bill_no_visit_twice_and_lose_none() {
    live(Integer.getInteger("life.count", 1000));
  }

  private void live(int lives) {
    List<Long> seeds = new ArrayList<>();
    for (int life = 0; life < lives && seeds.size() < MOST_FAULTS; life++) {
      if (fault(LifeEvent.sequence(SEED + life, LENGTH)).isPresent()) {
        seeds.add(SEED + life);
      }
    }
    if (!seeds.isEmpty()) {
      List<LifeEvent> shortest = shrunk(LifeEvent.sequence(seeds.get(0), LENGTH));
      fail("seeds " + seeds + "; the first one shrunk: " + fault(shortest).orElseThrow());
    }
  }

  private Optional<String> fault(List<LifeEvent> events) {
    return Life.fault(new CoreProgram(), folder.resolve("book"), events);
  }

  /** Leaves out one event after another as long as something still goes wrong. */
  private List<LifeEvent> shrunk(List<LifeEvent> events) {
    List<LifeEvent> rest = new ArrayList<>(events);
    boolean smaller = true;
    while (smaller) {
      smaller = false;
      for (int place = rest.size() - 1; place >= 0; place--) {
        List<LifeEvent> without = new ArrayList<>(rest);
        without.remove(place);
        if (fault(without).isPresent()) {
          rest = without;
          smaller = true;
        }
      }
    }
    return rest;
  }
}
