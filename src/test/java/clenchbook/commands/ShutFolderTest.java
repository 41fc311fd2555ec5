package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.reading.texts.TextFiles;
import clenchbook.register.Register;
import clenchbook.register.RegisterFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders in which nothing may be written: said in one line, and made whole by the next run. */
class ShutFolderTest {
  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);
  private static final List<String> NUMBERS =
      List.of("2026-0001", "2026-0002", "2026-0003", "2026-0004");

  @TempDir private Path folder;
  private SmallFolderBook book;
  private Path register;

  @BeforeEach
  void write() throws IOException {
    book = SmallFolderBook.in(folder);
    register = Files.createDirectories(folder.resolve("numbers")).resolve("book.register.db");
  }

  @Test
  void reports_in_a_shut_folder_cost_nothing() throws Throwable {
    Files.createDirectories(book.reports());
    ShutFolder.during(
        book.reports(),
        () -> {
          says(assertThrows(RunFault.class, this::monthEnd), book.reports(), "nothing is lost");
        });
    everythingIsWhole();
  }

  @Test
  void a_month_in_a_shut_folder_stays_as_it_was() throws Throwable {
    monthEnd();
    SortedMap<String, String> before = book.files();
    book.sheet("Visits", SmallFolderBook.VISITS + "2026-10-20,Vera,Kit,Trim,,\n");
    Path month = book.reports().resolve("2026-10");
    ShutFolder.during(
        month,
        () -> {
          says(assertThrows(RunFault.class, this::monthEnd), month, "nothing is lost");
          assertEquals(before, book.files());
        });
    monthEnd();
    assertTrue(book.files().containsKey("2026-10/invoices/2026-0005 Vera.pdf"));
    assertEquals(
        List.of("2026-0001", "2026-0002", "2026-0003", "2026-0004", "2026-0005"), numbers());
  }

  @Test
  void a_register_that_can_not_be_made_leaves_nothing_behind() throws Throwable {
    ShutFolder.during(
        register.getParent(),
        () -> {
          says(
              assertThrows(RuntimeException.class, this::monthEnd),
              register.getFileName(),
              "mend the folder's rights");
          assertTrue(Files.notExists(book.reports()), "nothing without its record");
        });
    everythingIsWhole();
  }

  @Test
  void a_register_that_can_not_be_written_keeps_its_numbers() throws Throwable {
    monthEnd();
    book.sheet("Visits", SmallFolderBook.VISITS + "2026-10-20,Vera,Kit,Trim,,\n");
    SortedMap<String, String> before = book.files();
    ShutFolder.during(
        register.getParent(),
        () -> {
          says(
              assertThrows(RuntimeException.class, this::monthEnd),
              register.getFileName(),
              "mend the rights");
          assertEquals(before, book.files());
        });
    assertEquals(NUMBERS, numbers());
    book.sheet("Visits", SmallFolderBook.VISITS);
    everythingIsWhole();
  }

  @Test
  void mails_in_a_shut_folder_mark_nothing() throws Throwable {
    monthEnd();
    Path month = book.reports().resolve("2026-10");
    ShutFolder.during(
        month,
        () -> {
          says(assertThrows(RunFault.class, this::send), month, "nothing was sent");
          assertTrue(documents().stream().allMatch(each -> each.state() == DocumentState.DRAFT));
        });
    send();
    assertTrue(documents().stream().allMatch(each -> each.state() == DocumentState.ISSUED));
    assertEquals(NUMBERS, numbers());
  }

  private static void says(RuntimeException fault, Path where, String then) {
    String said =
        fault instanceof RegisterFault register
            ? TextFiles.in("en", "").say(register.message())
            : String.valueOf(fault.getMessage());
    assertEquals(1, said.lines().count(), said);
    assertTrue(said.contains(where.toString()), said);
    assertTrue(said.contains(then), said);
  }

  /** As a first run that nothing hindered. */
  private void everythingIsWhole() throws IOException {
    assertEquals(0, monthEnd());
    SortedMap<String, String> late = book.files();
    assertEquals(NUMBERS, numbers());
    SmallFolderBook other =
        SmallFolderBook.in(Files.createDirectories(folder.resolve("unhindered")));
    other.monthEnd("2026-10");
    assertEquals(other.files(), late);
  }

  private List<BilledDocument> documents() {
    return Register.read(register);
  }

  private List<String> numbers() {
    return documents().stream().map(BilledDocument::number).sorted().toList();
  }

  private int monthEnd() {
    return new MonthEndRun(
            new MonthEndRequest(
                book.path(),
                OCTOBER,
                Optional.empty(),
                new RegisterChoice(Optional.of(register), false, false),
                false,
                Optional.empty(),
                Optional.empty()),
            SmallFolderBook.machine(),
            SmallFolderBook.silent())
        .run();
  }

  private void send() {
    new SendRun(
            new SendRequest(
                book.path(),
                OCTOBER,
                Optional.empty(),
                new RegisterChoice(Optional.of(register), false, false),
                false,
                false,
                true,
                Set.of(),
                Protection.CHECKED,
                Duration.ZERO),
            SmallFolderBook.machine(),
            new CredentialReader(Map.of(), folder.resolve("none")),
            SmallFolderBook.silent())
        .run();
  }
}
