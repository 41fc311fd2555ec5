package clenchbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.SmallFolderBook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is meant where nothing was named is said first, and what comes next is said last. */
class WhatNextTest {
  @TempDir Path folder;
  private SmallFolderBook book;
  private PrintStream before;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  @BeforeEach
  void listen() throws IOException {
    book = SmallFolderBook.in(folder);
    before = System.out;
    System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void stop() {
    System.setOut(before);
  }

  private List<String> lines(String command, Path file, String... more) {
    said.reset();
    List<String> all = new ArrayList<>(List.of(command, file.toString()));
    all.addAll(List.of(more));
    int code = Clenchbook.execute(all.toArray(String[]::new));
    assertTrue(code <= 1, command + " ended with " + code);
    return said.toString(StandardCharsets.UTF_8).lines().toList();
  }

  private String last(String command, String... more) {
    List<String> lines = lines(command, book.path(), more);
    String last = lines.get(lines.size() - 1);
    assertTrue(last.startsWith("Next: "), lines::toString);
    return last;
  }

  @Test
  void each_command_ends_with_what_to_do_next() throws IOException {
    String day = "--today=2026-11-02";
    assertTrue(last("check", day).endsWith(" month-end " + book.path()));
    String month = last("month-end", day);
    assertTrue(month.contains("index.html; if it is right, "), month);
    assertTrue(month.endsWith(" send " + book.path() + " --month 2026-10"), month);
    assertTrue(last("send", day, "--preview").contains("if they are right, "));
    last("send", day, "--yes");
    last("year-end", day);
    last("compare", day);
    Path bank =
        Files.writeString(
            folder.resolve("bank.csv"),
            "Date,Name,Text,Amount\n03/11/2026,Adam,2026-0001,120.00\n");
    assertTrue(
        last("payments", day, "--statement", bank.toString()).contains("paste the rows"),
        said::toString);
    assertTrue(last("month-end", day).contains("paste payments/payments-to-add.csv"));
  }

  private String next(String command, String... more) {
    String last = last(command, more);
    return last.substring("Next: ".length());
  }

  @Test
  void a_book_that_begins_this_month_is_led_to_its_month() throws IOException {
    book.sheet("Visits", "Date,Owner,Horse,Work\n2026-11-20,Ruth,Bess,Trim\n");
    String day = "--today=2026-11-27";
    String monthEnd = "clenchbook month-end " + book.path() + " --month 2026-11";
    assertEquals(monthEnd, next("check", day));
    assertEquals(
        "2026-10 has no visits; run the month of the last ones, " + monthEnd,
        next("month-end", day));
    assertTrue(
        next("month-end", day, "--month=2026-11")
            .endsWith(" send " + book.path() + " --month 2026-11"));
    assertEquals(
        "look at the letters that outbox/print-list.csv names; if they are right, clenchbook send "
            + book.path()
            + " --month 2026-11",
        next("send", day, "--month=2026-11", "--preview"));
  }

  @Test
  void rows_held_back_come_before_all_else() throws IOException {
    book.sheet("Visits", "Date,Owner,Horse,Work\n2026-10-20,Ruth,Bess,Trim\nsoon,Ruth,Bess,Trim\n");
    String day = "--today=2026-11-02";
    String monthEnd = "clenchbook month-end " + book.path();
    assertEquals("put the rows right that are held back; then " + monthEnd, next("check", day));
    assertEquals(
        "put the rows right that are held back, marked-copy.xlsx shows them; then "
            + monthEnd
            + " --month 2026-10",
        next("month-end", day));
    assertEquals(
        "put the rows right that are held back; then " + monthEnd + " --month 2026-10",
        next("send", day, "--preview"));
    assertEquals(
        "print what outbox/print-list.csv names; put the rows right that are held back, then "
            + monthEnd
            + " --month 2026-10",
        next("send", day, "--yes"));
    assertTrue(next("compare", day).startsWith("put the rows right that are held back"));
    assertTrue(next("year-end", day).startsWith("put right what is named above"));
  }

  @Test
  void mails_letters_and_a_mail_server_each_have_their_step() throws IOException {
    String day = "--today=2026-11-02";
    book.sheet("Settings", SmallFolderBook.SETTINGS + "From address,office@anvil.example\n");
    book.sheet("Owners", "Owner,Email\nRuth,ruth@stable.example\n");
    next("month-end", day);
    String send = "clenchbook send " + book.path() + " --month 2026-10";
    assertEquals(
        "look at the mails and the letters that outbox/print-list.csv names; if they are right, "
            + send,
        next("send", day, "--preview"));
    assertEquals(
        "send the mails in the folder outbox yourself (with an SMTP host in Settings, --deliver"
            + " does it); print what outbox/print-list.csv names",
        next("send", day, "--yes"));
    book.sheet(
        "Settings",
        SmallFolderBook.SETTINGS + "From address,office@anvil.example\nSMTP host,mail.example\n");
    assertEquals(
        "send the mails in the folder outbox yourself, or let "
            + send
            + " --deliver do it; print what outbox/print-list.csv names",
        next("send", day, "--yes"));
    assertTrue(next("month-end", day).endsWith("index.html; nothing is left to send"));
    assertEquals(
        "nothing is left to issue; when money comes in, clenchbook payments "
            + book.path()
            + " --statement FILE",
        next("send", day, "--preview"));
  }

  @Test
  void the_next_command_is_typed_with_the_same_places() throws IOException {
    Path register = folder.resolve("my numbers.db");
    Path out = folder.resolve("papers");
    Path words =
        Files.writeString(folder.resolve("words.csv"), "Sheet,Mine,Means\n*,Kunde,Owner\n");
    String[] places = {"--out=" + out, "--register=" + register, "--headings=" + words};
    String typed = " --out " + out + " --register \"" + register + "\" --headings " + words;
    String day = "--today=2026-11-02";
    assertTrue(
        next("month-end", day, places[0], places[1], places[2])
            .endsWith(" --month 2026-10" + typed));
    assertTrue(
        next("send", day, "--preview", places[0], places[1], places[2])
            .endsWith(" --month 2026-10" + typed));
  }

  @Test
  void a_backup_and_its_return_say_what_comes_next() {
    Path zip = folder.resolve("book.zip");
    assertTrue(last("backup", "--to=" + zip).endsWith("restore " + zip + " DIR puts it back"));
    Path there = folder.resolve("there");
    List<String> lines = lines("restore", zip, there.toString());
    assertTrue(
        lines.get(lines.size() - 1).endsWith(": clenchbook month-end " + there.resolve("book")),
        lines::toString);
  }

  @Test
  void a_new_book_ends_with_what_to_do_with_it() {
    Path file = folder.resolve("my book.xlsx");
    List<String> lines = lines("new", file);
    assertEquals(
        "Next: open it, write your own rows over the examples, save it; then clenchbook check \""
            + file
            + "\"",
        lines.get(lines.size() - 1));
  }

  @Test
  void the_last_full_month_is_meant_and_said_first() {
    List<String> lines = lines("month-end", book.path(), "--today=2026-10-01");
    assertEquals(
        "September 2026, the last full month before 2026-10-01 (--month YYYY-MM takes another)",
        lines.get(0));
    assertTrue(Files.exists(book.reports().resolve("2026-09/index.html")));
  }

  /** The British tax year runs from 6 April: gov.uk, "Self Assessment tax returns: deadlines". */
  @Test
  void the_last_tax_year_that_is_over_is_meant_and_said_first() throws IOException {
    book.sheet("Settings", SmallFolderBook.SETTINGS + "Tax regime,uk\n");
    assertEquals(
        "The tax year 2025-26 (2025-04-06 to 2026-04-05), the last one over before 2026-04-06"
            + " (--year YYYY takes another)",
        lines("year-end", book.path(), "--today=2026-04-06").get(0));
    assertEquals(
        "The tax year 2024-25 (2024-04-06 to 2025-04-05), the last one over before 2026-04-05"
            + " (--year YYYY takes another)",
        lines("year-end", book.path(), "--today=2026-04-05").get(0));
    assertTrue(
        lines("year-end", book.path(), "--today=2026-08-01", "--quarter=1")
            .get(0)
            .startsWith("The tax year 2026-27, quarter 1 (2026-04-06 to 2026-07-05)"));
  }

  @Test
  void without_a_book_and_none_in_the_folder_that_is_wrong_usage() {
    assertEquals(Clenchbook.WRONG_USAGE, Clenchbook.execute("month-end"));
  }
}
