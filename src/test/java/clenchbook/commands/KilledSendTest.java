package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.register.Register;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills send (SIGKILL) while it writes the month, the outbox, the register. All documents are
 * issued or none, nothing is issued that does not lie there, and the next send ends as if nothing
 * had happened.
 */
class KilledSendTest {
  private static final long SEED = Long.getLong("kill.seed", 20261102);

  private static final int WAYS = 5;

  @TempDir private Path folder;

  @Test
  void five_killed_sends_leave_nothing_that_the_next_does_not_mend() throws Exception {
    kill(5);
  }

  @Test
  @Tag("demand")
  void two_hundred_killed_sends_leave_nothing_that_the_next_does_not_mend() throws Exception {
    kill(Integer.getInteger("kill.runs", 200));
  }

  private void kill(int times) throws Exception {
    SmallFolderBook whole = laidDown("whole");
    assertEquals(0, ChildRun.start("send", whole).waitFor());
    SortedMap<String, String> expected = whole.files();
    List<BilledDocument> documents = Register.read(whole.register());
    SplittableRandom random = new SplittableRandom(SEED);
    int killed = 0;
    int issued = 0;
    for (int time = 0; time < times; time++) {
      SmallFolderBook book = laidDown("run " + time);
      Process run = ChildRun.start("send", book);
      Path sign = sign(book, time % WAYS);
      while (run.isAlive() && !Files.exists(sign)) {
        Thread.onSpinWait();
      }
      // The last way waits for the register's commit: its journal is gone again.
      while (time % WAYS == WAYS - 1 && run.isAlive() && Files.exists(sign)) {
        Thread.onSpinWait();
      }
      TimeUnit.MICROSECONDS.sleep(random.nextLong(0, 15_000));
      killed += run.isAlive() ? 1 : 0;
      run.destroyForcibly();
      assertTrue(run.waitFor(30, TimeUnit.SECONDS));

      issued += allOrNone(book, expected) ? 1 : 0;
      assertEquals(0, ChildRun.start("send", book).waitFor());
      assertEquals(expected, book.files(), "kill " + time);
      assertEquals(documents, Register.read(book.register()), "kill " + time);
    }
    System.out.printf(
        "%d sends, %d killed alive, %d of them with all issued (seed %d)%n",
        times, killed, issued, SEED);
    assertTrue(killed > times / 3, "too few kills hit a living run: " + killed);
    assertTrue(issued > 0 && issued < times, "killed before and after the documents were issued");
  }

  /** What the run makes right before the moment to kill it in. */
  private static Path sign(SmallFolderBook book, int way) {
    Path month = book.reports().resolve("2026-10");
    return switch (way) {
      case 0 -> book.reports().resolve(".2026-10.being-written");
      case 1 -> month.resolve(".outbox.being-written");
      case 2 -> month.resolve("outbox/run.json");
      default -> book.register().resolveSibling(book.register().getFileName() + "-journal");
    };
  }

  /** Issued documents lie there, and so does the outbox. */
  private static boolean allOrNone(SmallFolderBook book, SortedMap<String, String> expected)
      throws IOException {
    Set<DocumentState> states =
        Register.read(book.register()).stream()
            .map(BilledDocument::state)
            .collect(Collectors.toSet());
    assertEquals(1, states.size(), states.toString());
    boolean issued = states.contains(DocumentState.ISSUED);
    if (issued) {
      SortedMap<String, String> files = book.files();
      expected.forEach(
          (path, bytes) -> {
            if (path.contains("/invoices/") || path.contains("/outbox/")) {
              assertEquals(bytes, files.get(path), path);
            }
          });
    }
    return issued;
  }

  private SmallFolderBook laidDown(String name) throws IOException {
    SmallFolderBook book =
        SmallFolderBook.in(Files.createDirectories(folder.resolve(name)))
            .sheet("Settings", SmallFolderBook.SETTINGS + "From address,me@anvil.example\n")
            .sheet("Owners", "Owner,Email\nAdam,adam@stable.example\nRuth,ruth@stable.example\n");
    book.monthEnd("2026-10");
    return book;
  }
}
