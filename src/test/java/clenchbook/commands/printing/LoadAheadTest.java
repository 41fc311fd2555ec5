package clenchbook.commands.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** What loads ahead of the work neither speaks for itself nor outlives the run. */
class LoadAheadTest {
  @Test
  void an_error_of_the_machine_is_kept_for_the_place_where_it_matters() {
    List<Throwable> told = new ArrayList<>();
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    AtomicBoolean next = new AtomicBoolean();
    try {
      Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> told.add(fault));
      LoadAhead ahead =
          LoadAhead.begin(
              List.of(
                  () -> {
                    throw new InternalError("the font files are gone");
                  },
                  () -> next.set(true)));
      while (!next.get()) {
        Thread.onSpinWait();
      }
      ahead.finish();
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
    }
    assertEquals(List.of(), told);
  }

  @Test
  void what_has_begun_is_waited_for_and_nothing_more_begins() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch released = new CountDownLatch(1);
    AtomicBoolean done = new AtomicBoolean();
    AtomicBoolean next = new AtomicBoolean();
    LoadAhead ahead =
        LoadAhead.begin(
            List.of(
                () -> {
                  begun.countDown();
                  await(released);
                  done.set(true);
                },
                () -> next.set(true)));
    begun.await();
    Thread release =
        new Thread(
            () -> {
              while (!ahead.isFinishing()) {
                Thread.onSpinWait();
              }
              released.countDown();
            });
    release.start();
    ahead.finish();
    assertTrue(done.get());
    assertEquals(false, next.get());
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
