package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clenchbook.cli.Clenchbook;
import clenchbook.commands.moving.BackupRequest;
import clenchbook.commands.moving.BackupRun;
import clenchbook.commands.moving.RestoreRun;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.register.Register;
import clenchbook.register.RegisterFault;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Told;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book with all that lies beside it moves to another computer, and goes on as if it had not. */
class MovingHouseTest {
  @TempDir Path folder;

  /** A book that has something of each kind beside it. */
  private SmallFolderBook fullBook() throws IOException {
    SmallFolderBook book =
        SmallFolderBook.in(folder.resolve("old"))
            .sheet(
                "Settings", SmallFolderBook.SETTINGS + "Logo,pictures/anvil.png\nTax regime,uk\n")
            .sheet("Besuche", "Tag,Kunde,Pferd,Arbeit\n2026-10-09,Ruth,Bess,Trim\n");
    Path old = folder.resolve("old");
    Files.writeString(
        old.resolve("book.headings.csv"),
        "Sheet,Mine,Means\nBesuche,,Visits\nBesuche,Tag,Date\nBesuche,Kunde,Owner\n");
    Path templates = Files.createDirectories(old.resolve("report-templates"));
    Files.copy(Path.of("report-templates/invoice.jrxml"), templates.resolve("invoice.jrxml"));
    Files.writeString(templates.resolve("mail.en.properties"), "greeting=Hello there,\n");
    Files.createDirectories(old.resolve("pictures"));
    ImageIO.write(
        new BufferedImage(40, 20, BufferedImage.TYPE_INT_RGB),
        "png",
        old.resolve("pictures/anvil.png").toFile());
    Path waiting = Files.createDirectories(book.reports().resolve("payments"));
    Files.writeString(
        waiting.resolve("payments-to-add.csv"),
        "Date,Owner,Amount,Invoice,Kind,How,Reference,sure,why,statement,entry\n"
            + "2026-10-20,Maeve,114.00,,payment,,,80,amount,bank.csv,1\n");
    return book;
  }

  private static BackupRun backup(Path book, Path to) {
    return new BackupRun(
        new BackupRequest(book, to, Optional.empty(), RegisterChoice.USUAL, Optional.empty()),
        SmallFolderBook.machine(),
        SmallFolderBook.silent());
  }

  private static void restore(Path from, Path to) {
    assertEquals(0, new RestoreRun(from, to, SmallFolderBook.silent()).run());
  }

  static SortedMap<String, String> tree(Path folder) throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(file).toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  @Test
  void month_end_writes_the_same_bytes_after_the_move() throws IOException {
    SmallFolderBook book = fullBook();
    book.monthEnd("2026-10");
    assertEquals(0, Clenchbook.execute("send", book.path().toString(), "--month=2026-10", "--yes"));
    Path zip = folder.resolve("moved.zip");
    assertEquals(0, backup(book.path(), zip).run());

    restore(zip, folder.resolve("new"));
    SortedMap<String, String> before = tree(folder.resolve("old"));
    before.keySet().removeIf(name -> name.startsWith("book reports/2026"));
    assertEquals(before.keySet(), tree(folder.resolve("new")).keySet());
    assertEquals(before, tree(folder.resolve("new")), "every file as it was");

    for (String month : List.of("2026-10", "2026-11")) {
      book.monthEnd(month);
    }
    SmallFolderBook moved = SmallFolderBook.at(folder.resolve("new/book"));
    for (String month : List.of("2026-10", "2026-11")) {
      moved.monthEnd(month);
    }
    SortedMap<String, String> here = book.files();
    here.keySet().removeIf(name -> name.startsWith("2026-10/outbox"));
    assertTrue(here.get("2026-10/index.html").contains("payments-to-add"), "what waits is counted");
    assertEquals(here.keySet(), moved.files().keySet());
    assertEquals(here, moved.files());
  }

  @Test
  void same_files_same_bytes_and_a_book_is_not_changed() throws IOException {
    SmallFolderBook book = fullBook();
    book.monthEnd("2026-10");
    SortedMap<String, String> before = tree(folder.resolve("old"));
    Path one = folder.resolve("one.zip");
    Path two = folder.resolve("two.zip");
    backup(book.path(), one).run();
    restore(one, folder.resolve("new"));
    backup(folder.resolve("new/book"), two).run();
    assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
    assertEquals(before, tree(folder.resolve("old")));
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(
          List.of("new", "old", "one.zip", "two.zip"),
          left.map(path -> path.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void files_named_on_the_command_line_are_found_without_being_named_after_the_move()
      throws IOException {
    SmallFolderBook book = SmallFolderBook.in(folder.resolve("old"));
    Path elsewhere = Files.createDirectories(folder.resolve("elsewhere/rates/uk"));
    Files.writeString(elsewhere.resolve("own.csv"), "name\n");
    Path words = folder.resolve("elsewhere/words.csv");
    Files.writeString(words, "Sheet,Mine,Means\n*,Kunde,Owner\n");
    Path register = folder.resolve("elsewhere/numbers.db");
    Register.open(register).close();
    Path zip = folder.resolve("moved.zip");
    assertEquals(
        0,
        Clenchbook.execute(
            "backup",
            book.path().toString(),
            "--to=" + zip,
            "--register=" + register,
            "--headings=" + words,
            "--rates=" + elsewhere.getParent()));
    restore(zip, folder.resolve("new"));
    assertTrue(
        tree(folder.resolve("new"))
            .keySet()
            .containsAll(List.of("book.register.db", "book.headings.csv", "rates/uk/own.csv")));
  }

  /** GNU coreutils and Info-ZIP as outside judges of the list and the zip. */
  @Test
  void other_programs_unpack_it_and_hold_it_against_its_list()
      throws IOException, InterruptedException {
    assumeTrue(
        System.getenv("CI") != null
            || (Files.exists(Path.of("/usr/bin/unzip"))
                && Files.exists(Path.of("/usr/bin/sha256sum"))));
    SmallFolderBook book = fullBook();
    book.monthEnd("2026-10");
    backup(book.path(), folder.resolve("moved.zip")).run();
    Path apart = Files.createDirectories(folder.resolve("apart"));
    assertEquals("", said(apart, 0, "unzip", "-q", "../moved.zip"));
    String checked = said(apart, 0, "sha256sum", "--check", "--strict", "backup.sha256");
    assertEquals(13, checked.lines().filter(line -> line.endsWith(": OK")).count(), checked);
    Files.writeString(apart.resolve("book/Work.csv"), "Work\n");
    assertTrue(
        said(apart, 1, "sha256sum", "--check", "backup.sha256").contains("Work.csv: FAILED"));
  }

  private static String said(Path at, int code, String... words)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(words)
            .directory(at.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(code, process.waitFor(), said);
    return said;
  }

  private static String refused(Runnable run) {
    RuntimeException fault = assertThrows(RuntimeException.class, run::run);
    assertTrue(fault instanceof RunFault || fault instanceof RegisterFault, fault::toString);
    String said = InEnglish.said(((Told) fault).message());
    assertFalse(said.contains("\n"), said);
    return said;
  }

  @Test
  void nothing_is_packed_while_a_run_has_the_register() throws IOException {
    SmallFolderBook book = fullBook();
    book.monthEnd("2026-10");
    Path zip = folder.resolve("moved.zip");
    try (Register held = Register.open(book.register())) {
      assertTrue(refused(() -> backup(book.path(), zip).run()).contains("in use by another run"));
      assertEquals(4, held.documents().size());
    }
    assertEquals(0, backup(book.path(), zip).run());
  }

  @Test
  void a_damaged_register_is_not_packed_and_none_is_begun() throws IOException {
    SmallFolderBook book = fullBook();
    Path zip = folder.resolve("moved.zip");
    assertEquals(0, backup(book.path(), zip).run());
    assertFalse(Files.exists(book.register()), "a book without a register has none afterwards");
    Files.delete(zip);
    Files.writeString(book.register(), "no register");
    assertTrue(refused(() -> backup(book.path(), zip).run()).contains("damaged"));
    assertFalse(Files.exists(zip));
  }

  @Test
  void nothing_that_is_there_is_overwritten() throws IOException {
    SmallFolderBook book = fullBook();
    Path zip = Files.writeString(folder.resolve("moved.zip"), "an older backup");
    assertTrue(refused(() -> backup(book.path(), zip).run()).contains("already there"));
    assertEquals("an older backup", Files.readString(zip));
    assertTrue(refused(() -> backup(book.path(), folder).run()).contains("is a folder"));
    Path nowhere = folder.resolve("stick/moved.zip");
    assertTrue(refused(() -> backup(book.path(), nowhere).run()).contains("no folder"));
    Files.delete(zip);
    backup(book.path(), zip).run();

    Path full = Files.createDirectories(folder.resolve("full"));
    Files.createDirectories(full.resolve("Book"));
    Files.writeString(full.resolve("BOOK.headings.csv"), "mine");
    Files.writeString(full.resolve("notes.txt"), "mine");
    SortedMap<String, String> before = tree(full);
    String why = refused(() -> new RestoreRun(zip, full, SmallFolderBook.silent()).run());
    assertTrue(why.contains("already holds BOOK.headings.csv, Book;"), why);
    assertEquals(before, tree(full));
    Path file = full.resolve("notes.txt");
    assertTrue(
        refused(() -> new RestoreRun(zip, file, SmallFolderBook.silent()).run())
            .contains("is no folder"));
    Files.delete(full.resolve("Book"));
    Files.delete(full.resolve("BOOK.headings.csv"));
    restore(zip, full);
    assertEquals("mine", Files.readString(full.resolve("notes.txt")));
    assertTrue(Files.exists(full.resolve("book/Visits.csv")));
  }

  @Test
  void a_run_that_was_killed_leaves_nothing_that_stops_the_next() throws IOException {
    SmallFolderBook book = fullBook();
    Path left = Files.createDirectories(folder.resolve(".moved.zip.being-written"));
    Files.writeString(left.resolve("zip"), "half");
    backup(book.path(), folder.resolve("moved.zip")).run();
    Files.writeString(
        Files.createDirectories(folder.resolve(".new.being-restored")).resolve("half"), "half");
    restore(folder.resolve("moved.zip"), folder.resolve("new"));
    assertFalse(Files.exists(folder.resolve("new/half")));
    assertFalse(Files.exists(folder.resolve(".new.being-restored")));
  }

  @Test
  void an_older_register_is_packed_as_it_is() throws IOException, java.sql.SQLException {
    SmallFolderBook book = fullBook();
    OlderRegister.make(book.register(), 1);
    byte[] before = Files.readAllBytes(book.register());
    backup(book.path(), folder.resolve("moved.zip")).run();
    assertArrayEquals(before, Files.readAllBytes(book.register()));
    restore(folder.resolve("moved.zip"), folder.resolve("new"));
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("new/book.register.db")));
  }
}
