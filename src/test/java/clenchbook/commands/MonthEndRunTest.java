package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.register.Register;
import clenchbook.register.RegisterFault;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.time.YearMonth;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Month-end as the farrier uses it: again, after a change, after sending. */
class MonthEndRunTest {
  @TempDir private Path folder;

  private SmallFolderBook book() throws IOException {
    return SmallFolderBook.in(folder);
  }

  private static void send(SmallFolderBook book, String... numbers) {
    try (Register register = Register.open(book.register())) {
      register.move(List.of(numbers), DocumentState.ISSUED);
    }
  }

  private static String table(SmallFolderBook book, String month, String name) throws IOException {
    return Files.readString(book.reports().resolve(month).resolve("figures/" + name + ".csv"));
  }

  @Test
  void every_file_of_the_list_is_there() throws IOException {
    SmallFolderBook book = book();
    assertEquals(0, book.monthEnd("2026-10"));
    List<String> wanted =
        List.of(
            "index.html",
            "margins.pdf",
            "comparisons.pdf",
            "workload.pdf",
            "stock.pdf",
            "due.ics",
            "problems.csv",
            "run.json",
            "figures/jobs.csv",
            "figures/invoices.csv",
            "figures/invoice-lines.csv",
            "figures/tax.csv",
            "figures/balances.csv",
            "figures/comparisons.csv",
            "figures/break-even.csv",
            "figures/workload.csv",
            "figures/stock.csv",
            "figures/due.csv",
            "figures/horses.csv",
            "figures/control.csv");
    SortedMap<String, String> files = book.files();
    wanted.forEach(file -> assertTrue(files.containsKey("2026-10/" + file), file));
    assertTrue(book.files().containsKey("2026-10/invoices/2026-0001 Adam.pdf"));
  }

  @Test
  void the_same_run_again_gives_the_same_bytes() throws IOException {
    SmallFolderBook book = book();
    book.monthEnd("2026-10");
    SortedMap<String, String> first = book.files();
    book.monthEnd("2026-10");
    assertEquals(first, book.files());
  }

  @Test
  void the_workbook_is_never_written() throws Exception {
    SmallFolderBook book = book();
    String before = hash(book.path());
    book.monthEnd("2026-10");
    assertEquals(before, hash(book.path()));
  }

  @Test
  void an_issued_invoice_is_written_again_from_its_stored_bytes() throws IOException {
    SmallFolderBook book = book();
    book.monthEnd("2026-10");
    String sent = book.files().get("2026-10/invoices/2026-0001 Adam.pdf");
    send(book, "2026-0001", "2026-0002", "2026-0003", "2026-0004");
    book.sheet(
        "Visits",
        SmallFolderBook.VISITS.replace(
            "2026-10-06,Adam,Jet,Full set,,", "2026-10-06,Adam,Jet,Full set,70,"));
    book.monthEnd("2026-10");
    assertEquals(sent, book.files().get("2026-10/invoices/2026-0001 Adam.pdf"));
    assertTrue(table(book, "2026-10", "differences").contains("to correct,2026-0001"));
  }

  @Test
  void drafts_of_an_earlier_month_are_told_of_until_they_are_sent() throws IOException {
    SmallFolderBook book = book();
    book.monthEnd("2026-09");
    assertFalse(table(book, "2026-09", "differences").contains("not sent"));
    book.monthEnd("2026-10");
    assertTrue(
        table(book, "2026-10", "differences")
            .endsWith(
                "not sent,2026-0001,Adam,2026-09-30,,,100.00,,\r\n"
                    + "not sent,2026-0002,Ruth,2026-09-30,,,40.00,,\r\n"));
    String told =
        "2 documents of 2026-09 were made but never sent, and yet count as owed (the first:"
            + " 2026-0001 to Adam). Run send for that month, and month-end for it before that if"
            + " its visits changed.";
    assertTrue(page(book).contains(told), page(book));
    assertFalse(
        Files.readString(book.reports().resolve("2026-10/problems.csv")).contains("never sent"),
        "the book has no fault");
    send(book, "2026-0001");
    book.monthEnd("2026-10");
    assertTrue(
        page(book).contains("1 document of 2026-09 was made but never sent, and yet counts"));
    send(book, "2026-0002");
    book.monthEnd("2026-10");
    assertFalse(page(book).contains("never sent"));
  }

  @Test
  void the_terminal_says_what_came_of_it_and_where_to_look() throws IOException {
    SmallFolderBook book = book();
    // 40, 100, 95 and a free trim, with 20 % on top.
    assertEquals(
        "Assumed, because Settings do not say: Units metric; Distance unit km; Date order none: a"
            + " day typed as text is read where it can mean only one day, with dots day first\n"
            + "a register is begun: book.register.db; its first number is 2026-0001\n"
            + "2026-10: 4 invoices, GBP 282.00 in all; open "
            + book.reports().resolve("2026-10/index.html")
            + "\nNext: look at "
            + book.reports().resolve("2026-10/index.html")
            + "; if it is right, ",
        upTo("; if it is right, ", said(book)));
  }

  /** How the program is started depends on who starts it; what stands before does not. */
  private static String upTo(String end, String said) {
    assertTrue(said.contains(end), said);
    assertTrue(said.endsWith(" --month 2026-10"), said);
    return said.substring(0, said.indexOf(end) + end.length());
  }

  @Test
  void a_mended_payment_is_told_of_once_and_a_lost_one_each_time() throws IOException {
    SmallFolderBook book = book();
    book.payments("2026-10-10,Rutt,30,,\n2026-10-11,Adam,120,,\n");
    said(book);
    book.payments("2026-10-10,Ruth,30,,\n");
    String lost = "a payment of 120 by Adam on 2026-10-11 was in the book once and is not any more";
    String told = said(book);
    assertTrue(
        told.contains(
            "a payment of 30 by Rutt on 2026-10-10 now reads 30 by Ruth on" + " 2026-10-10"),
        told);
    assertTrue(told.contains(lost), told);
    String again = said(book);
    assertFalse(again.contains("Rutt"), again);
    assertTrue(again.contains(lost), again);
    book.payments("2026-10-10,Ruth,30,,\n2026-10-11,Adam,120,,\n");
    assertFalse(said(book).contains("a payment of"), "back again");
  }

  private static String said(SmallFolderBook book) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    MonthEndRequest request =
        new MonthEndRequest(
            book.path(),
            YearMonth.of(2026, 10),
            Optional.empty(),
            RegisterChoice.USUAL,
            false,
            Optional.empty(),
            Optional.empty());
    new MonthEndRun(request, SmallFolderBook.machine(), new Terminal(out, out, false)).run();
    return said.toString(StandardCharsets.UTF_8).strip();
  }

  private static String page(SmallFolderBook book) throws IOException {
    return Files.readString(book.reports().resolve("2026-10/index.html"));
  }

  @Test
  void the_next_month_takes_a_changed_line_back_with_a_credit_note() throws IOException {
    SmallFolderBook book = book();
    book.monthEnd("2026-10");
    send(book, "2026-0001", "2026-0002", "2026-0003", "2026-0004");
    book.sheet(
        "Visits",
        SmallFolderBook.VISITS.replace(
            "2026-10-06,Adam,Jet,Full set,,", "2026-10-06,Adam,Jet,Full set,70,"));
    book.monthEnd("2026-11");
    String invoices = table(book, "2026-11", "invoices");
    assertTrue(
        invoices.contains("2026-0005,2026-11-30,2026-12-14,Adam,70.00,14.00,84.00,draft"),
        invoices);
    assertTrue(
        invoices.contains(
            "2026-0006,2026-11-30,2026-11-30,Adam,-100.00,-20.00,-120.00,draft,credit"
                + " note,2026-0001"),
        invoices);
    assertTrue(book.files().containsKey("2026-11/invoices/2026-0006 Adam.pdf"));
  }

  @Test
  void files_of_an_owner_who_left_are_removed_and_the_farriers_own_stay() throws IOException {
    SmallFolderBook book = book();
    book.monthEnd("2026-10");
    Path own = book.reports().resolve("2026-10/invoices/my own note.txt");
    Files.writeString(own, "mine");
    book.sheet("Visits", SmallFolderBook.VISITS.replace("2026-10-05,Ruth,Bess,Trim,,\n", ""));
    book.monthEnd("2026-10");
    assertFalse(book.files().containsKey("2026-10/invoices/2026-0004 Ruth.pdf"));
    assertTrue(Files.exists(own));
    assertTrue(
        table(book, "2026-10", "invoices")
            .contains("2026-0004,2026-10-31,2026-11-14,Ruth,0.00,0.00,0.00,void"));
  }

  @Test
  void a_statement_goes_to_those_with_something_older() throws IOException {
    SmallFolderBook book = book();
    book.monthEnd("2026-09");
    book.payments("2026-10-20,Ruth,20,,\n");
    book.monthEnd("2026-10");
    assertTrue(book.files().containsKey("2026-10/statements/Ruth.pdf"));
    assertFalse(book.files().containsKey("2026-10/statements/Maeve.pdf"), "nothing older");
    assertFalse(book.files().containsKey("2026-10/statements/Adam.pdf"), "paid at the truck");
  }

  @Test
  void reports_that_cannot_be_written_lose_nothing() throws IOException {
    SmallFolderBook book = book();
    Files.writeString(book.reports(), "a file stands where the folder should be");
    RunFault fault = assertThrows(RunFault.class, () -> book.monthEnd("2026-10"));
    assertTrue(fault.getMessage().contains("nothing is lost"), fault.getMessage());
    Files.delete(book.reports());
    assertEquals(0, book.monthEnd("2026-10"));
    assertTrue(table(book, "2026-10", "invoices").startsWith("number,"));
    assertEquals(4, Register.read(book.register()).size(), "no number was used up");
  }

  @Test
  void a_register_in_use_stops_the_run_before_anything_is_written() throws IOException {
    SmallFolderBook book = book();
    try (Register other = Register.open(book.register())) {
      assertThrows(RegisterFault.class, () -> book.monthEnd("2026-10"));
      assertTrue(other.documents().isEmpty());
    }
    assertFalse(Files.exists(book.reports()));
  }

  @Test
  void a_book_without_visits_could_not_run_and_says_so_in_one_line() throws IOException {
    SmallFolderBook book = book();
    Files.delete(book.path().resolve("Visits.csv"));
    RunFault fault = assertThrows(RunFault.class, () -> book.monthEnd("2026-10"));
    assertTrue(fault.getMessage().contains("no sheet of visits"), fault.getMessage());
    assertEquals(1, fault.getMessage().lines().count());
    assertFalse(Files.exists(book.register()), "no register was made");
  }

  @Test
  void register_and_reports_are_readable_by_their_owner_only() throws IOException {
    SmallFolderBook book = book();
    book.monthEnd("2026-10");
    try (Stream<Path> all = Files.walk(book.reports())) {
      for (Path path : all.toList()) {
        String rights = PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
        assertTrue(rights.endsWith("------"), path + " " + rights);
      }
    }
  }

  private static String hash(Path folder) throws Exception {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        digest.update(file.getFileName().toString().getBytes(StandardCharsets.UTF_8));
        digest.update(Files.readAllBytes(file));
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
