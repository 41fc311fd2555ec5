package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.register.Register;
import clenchbook.register.RegisterCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills month-end (SIGKILL) at random moments: by the clock, when the register is being written,
 * and when files are being brought to rest. The next run must end as if nothing had happened.
 */
class KilledMonthEndTest {
  private static final long SEED = Long.getLong("kill.seed", 20261031);

  @TempDir private Path folder;

  @Test
  void twenty_killed_runs_leave_nothing_that_the_next_run_does_not_mend() throws Exception {
    kill(20);
  }

  @Test
  @Tag("demand")
  void three_hundred_killed_runs_leave_nothing_that_the_next_run_does_not_mend() throws Exception {
    kill(Integer.getInteger("kill.runs", 300));
  }

  private void kill(int times) throws Exception {
    SmallFolderBook whole = SmallFolderBook.in(Files.createDirectories(folder.resolve("whole")));
    whole.monthEnd("2026-09");
    whole.monthEnd("2026-10");
    SortedMap<String, String> expected = whole.files();
    List<BilledDocument> documents = Register.read(whole.register());
    SplittableRandom random = new SplittableRandom(SEED);
    long length = lengthOfARun();
    int killed = 0;
    int duringTheRegister = 0;
    int duringTheFiles = 0;
    for (int time = 0; time < times; time++) {
      SmallFolderBook book =
          SmallFolderBook.in(Files.createDirectories(folder.resolve("run " + time)));
      book.monthEnd("2026-09");
      Process run = ChildRun.start("month-end", book);
      int way = random.nextInt(3);
      waitFor(run, way, random, book, length);
      duringTheRegister += sideFileOf(book) ? 1 : 0;
      duringTheFiles += halfWritten(book) ? 1 : 0;
      killed += run.isAlive() ? 1 : 0;
      run.destroyForcibly();
      assertTrue(run.waitFor(30, TimeUnit.SECONDS));
      noFileIsHalf(book, expected);
      book.monthEnd("2026-10");
      assertEquals(expected, book.files(), "kill " + time);
      assertEquals(documents, Register.read(book.register()), "kill " + time);
      assertTrue(RegisterCheck.faults(Register.read(book.register())).isEmpty());
      nothingRemains(book);
    }
    System.out.printf(
        "%d runs, %d killed alive, %d with the register's journal there, %d while files were"
            + " written (seed %d)%n",
        times, killed, duringTheRegister, duringTheFiles, SEED);
    assertTrue(killed > times / 3, "too few kills hit a living run: " + killed);
  }

  private long lengthOfARun() throws Exception {
    SmallFolderBook book = SmallFolderBook.in(Files.createDirectories(folder.resolve("length")));
    long start = System.nanoTime();
    assertEquals(0, ChildRun.start("month-end", book).waitFor());
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  private static void waitFor(
      Process run, int way, SplittableRandom random, SmallFolderBook book, long length)
      throws InterruptedException {
    if (way == 0) {
      run.waitFor(random.nextLong(length / 4, length + 1), TimeUnit.MILLISECONDS);
      return;
    }
    // The writing takes milliseconds; a kill by the clock would hardly ever meet it.
    while (run.isAlive() && !(way == 1 ? sideFileOf(book) : halfWritten(book))) {
      Thread.onSpinWait();
    }
    TimeUnit.MICROSECONDS.sleep(random.nextLong(0, way == 1 ? 4_000 : 30_000));
  }

  private static boolean sideFileOf(SmallFolderBook book) {
    return Files.exists(book.register().resolveSibling(book.register().getFileName() + "-journal"));
  }

  private static boolean halfWritten(SmallFolderBook book) {
    return Files.exists(book.reports().resolve(".2026-10.being-written"));
  }

  /** Whatever stands under its own name is whole. */
  private static void noFileIsHalf(SmallFolderBook book, SortedMap<String, String> expected)
      throws IOException {
    book.files()
        .forEach(
            (path, bytes) -> {
              if (!path.startsWith(".")) {
                assertEquals(expected.get(path), bytes, path + " is half-written");
              }
            });
  }

  private static void nothingRemains(SmallFolderBook book) throws IOException {
    try (Stream<Path> beside = Files.list(book.path().getParent())) {
      assertEquals(
          List.of("book", "book reports", "book.register.db"),
          beside.map(path -> path.getFileName().toString()).sorted().toList());
    }
  }
}
