package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the month's page says of open invoices and of money that waits to be entered. */
class MonthWithBankTest {
  @TempDir Path folder;
  private SmallFolderBook book;

  /**
   * October's drafts: Adam 2026-0001 (120.00), Maeve 2026-0003 (114.00), Ruth 2026-0004 (48.00).
   */
  @BeforeEach
  void month() throws IOException {
    book = SmallFolderBook.in(folder);
    book.monthEnd("2026-10");
  }

  private void bank(String... rows) throws IOException {
    Path statement =
        Files.writeString(
            folder.resolve("bank.csv"),
            "Date,Name,Description,Amount\n" + String.join("\n", rows) + "\n");
    PrintStream told = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    new PaymentsRun(
            book.path(),
            List.of(statement),
            Optional.empty(),
            RegisterChoice.USUAL,
            SmallFolderBook.machine(),
            new Terminal(told, told, false))
        .run();
  }

  private String file(String path) throws IOException {
    return Files.readString(book.reports().resolve(path));
  }

  private void paste() throws IOException {
    StringBuilder rows = new StringBuilder("Date,Owner,Amount,Invoice,Kind,How,Reference\n");
    for (String row : file("payments/payments-to-add.csv").lines().skip(1).toList()) {
      rows.append(String.join(",", List.of(row.split(",")).subList(0, 7))).append('\n');
    }
    book.sheet("Payments", rows.toString());
  }

  @Test
  void open_invoices_are_named_with_the_day_since_which_they_are() throws IOException {
    book.monthEnd("2026-11");
    assertEquals(
        List.of(
            "number,owner,date,due,gross,open,days_past_due,state",
            "2026-0001,Adam,2026-10-31,2026-11-14,120.00,120.00,16,draft",
            "2026-0003,Maeve,2026-10-31,2026-11-14,114.00,114.00,16,draft",
            "2026-0004,Ruth,2026-10-31,2026-11-14,48.00,48.00,16,draft"),
        file("2026-11/figures/open-invoices.csv").lines().toList());
    String page = file("2026-11/index.html");
    assertTrue(page.contains("Open invoices: 3, the oldest of 31 October 2026"), page);
    assertTrue(file("2026-11/figures/month-summary.csv").contains("open invoices,3"), page);
  }

  @Test
  void payments_that_wait_are_counted_until_they_are_pasted() throws IOException {
    bank("03/11/2026,Adam,invoice 2026-0001,120.00", "04/11/2026,Ruth,for the trim,20.00");
    book.monthEnd("2026-10");
    String page = file("2026-10/index.html");
    assertTrue(
        page.contains(
            "2 payments wait, £140.00 in all: 1 sure, 1 to look at. Until they stand in Payments"),
        page);
    assertTrue(page.contains("href=\"./../payments/payments-to-add.csv\""), page);
    String summary = file("2026-10/figures/month-summary.csv");
    assertTrue(summary.contains("payments to be pasted,2"), summary);
    assertTrue(summary.contains("\"payments to be pasted, in all\",140.00"), summary);

    paste();
    book.monthEnd("2026-10");
    assertFalse(file("2026-10/index.html").contains("to be pasted"));
    assertTrue(file("2026-10/figures/month-summary.csv").contains("payments to be pasted,0"));
  }

  @Test
  void whoever_a_statement_would_press_although_their_money_waits_is_named() throws IOException {
    book.payments("2026-12-05,Maeve,114,2026-0003,\n");
    bank("20/11/2026,Adam,invoice 2026-0001,120.00");
    book.monthEnd("2026-12");
    String page = file("2026-12/index.html");
    assertTrue(page.contains("they press Adam, whose money is among it"), page);
    assertFalse(page.contains("press Adam, Ruth"), page);
  }

  @Test
  void a_file_that_is_no_proposal_is_passed_over() throws IOException {
    Files.createDirectories(book.reports().resolve("payments"));
    Files.writeString(book.reports().resolve("payments/payments-to-add.csv"), "a,b\n1,2\n");
    assertEquals(0, book.monthEnd("2026-10"));
    assertFalse(file("2026-10/index.html").contains("to be pasted"));
  }
}
