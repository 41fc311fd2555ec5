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
