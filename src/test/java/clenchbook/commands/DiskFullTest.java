package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.reading.texts.TextFiles;
import clenchbook.register.Register;
import clenchbook.register.RegisterFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full, as a small file system in memory; only a machine's root can mount one. */
class DiskFullTest {
  @TempDir private Path folder;
  private Path small;

  @BeforeEach
  void mount() throws IOException, InterruptedException {
    small = Files.createDirectories(folder.resolve("small"));
    assumeTrue("root".equals(System.getProperty("user.name")), "only root can mount");
    assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=160k", "tmpfs", small.toString()) == 0);
  }

  @AfterEach
  void unmount() throws IOException, InterruptedException {
    run("umount", small.toString());
  }

  @Test
  void reports_that_do_not_fit_cost_nothing_and_the_next_run_writes_them() throws Exception {
    SmallFolderBook book = SmallFolderBook.in(folder);
    RunFault fault =
        assertThrows(
            RunFault.class, () -> monthEnd(book, small.resolve("reports"), book.register()));
    assertTrue(fault.getMessage().contains("nothing is lost"), fault.getMessage());
    assertEquals(1, fault.getMessage().lines().count());
    assertEquals(0, run("mount", "-o", "remount,size=20m", small.toString()));
    monthEnd(book, small.resolve("reports"), book.register());
    assertTrue(Files.exists(small.resolve("reports/2026-10/index.html")));
    assertEquals(4, Register.read(book.register()).size(), "no number was used up");
  }

  @Test
  void a_register_that_does_not_fit_stays_as_it_was() throws Exception {
    SmallFolderBook book = SmallFolderBook.in(folder);
    Path register = small.resolve("book.register.db");
    Register.open(register).close();
    RegisterFault fault =
        assertThrows(
            RegisterFault.class, () -> monthEnd(book, folder.resolve("reports"), register));
    String said = TextFiles.in("en", "").say(fault.message());
    assertTrue(said.contains("make room"), said);
    assertTrue(Register.read(register).isEmpty());
    assertTrue(Files.notExists(folder.resolve("reports/2026-10")), "nothing without its record");
    assertEquals(0, run("mount", "-o", "remount,size=20m", small.toString()));
    monthEnd(book, folder.resolve("reports"), register);
    assertEquals(4, Register.read(register).size());
  }

  private static void monthEnd(SmallFolderBook book, Path out, Path register) {
    new MonthEndRun(
            new MonthEndRequest(
                book.path(),
                YearMonth.of(2026, 10),
                Optional.of(out),
                new RegisterChoice(Optional.of(register), false, false),
                false,
                Optional.empty(),
                Optional.empty()),
            SmallFolderBook.machine(),
            SmallFolderBook.silent())
        .run();
  }

  private static int run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(List.of(command)).inheritIO().start().waitFor();
  }
}
