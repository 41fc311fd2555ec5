package clenchbook.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
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
  void two_random_lives_are_as_sound_in_a_register_whose_recording_is_killed() {
    liveInRegister(2);
  }

  @Test
  @Tag("demand")
  void fifty_random_lives_are_as_sound_in_a_register_whose_recording_is_killed() {
    liveInRegister(Integer.getInteger("life.registers", 50));
  }

  /** The commands are killed more often than in other lives. */
  private void liveInRegister(int lives) {
    int kills = 0;
    for (int life = 0; life < lives; life++) {
      List<LifeEvent> events = new ArrayList<>();
      for (LifeEvent event : LifeEvent.sequence(SEED + life, LENGTH)) {
        events.addAll(event.killedFirst());
      }
      RegisterStore store = new RegisterStore(folder);
      Optional<String> fault = Life.fault(new CoreProgram(store), folder.resolve("book"), events);
      assertEquals(Optional.empty(), fault, "seed " + (SEED + life));
      kills += store.kills();
    }
    assertTrue(kills >= lives, "only " + kills + " recordings were killed");
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
    return Life.fault(new CoreProgram(new MemoryStore()), folder.resolve("book"), events);
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
