package clenchbook.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clenchbook.billing.BillingDecision;
import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegisterTest {
  @TempDir private Path folder;

  private Path file() {
    return folder.resolve("book.register.db");
  }

  private static List<BilledDocument> month(String currency, String charge) {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.CURRENCY, currency)
            .tax("Code: S, Rate %: 20")
            .work("Work: Trim, Tax: S")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: " + charge);
    BillingDecision decision =
        MonthBilling.decide(
            book.jobs(),
            List.of(),
            new BillingOptions(YearMonth.of(2026, 10), false, Optional.empty(), false));
    return decision.documents();
  }

  private static Map<String, byte[]> pdf(String words) {
    return Map.of("2026-0001", words.getBytes(StandardCharsets.UTF_8));
  }

  /** ISO 4217 minor units: JPY 0, GBP 2, BHD 3 (List One, from memory; the JDK carries a copy). */
  @ParameterizedTest
  @CsvSource({"JPY, 4000, 4000, 800", "GBP, 40, 40.00, 8.00", "BHD, 40.5, 40.500, 8.100"})
  void documents_are_read_back_as_they_were_recorded(
      String currency, String charge, String net, String tax) {
    List<BilledDocument> documents = month(currency, charge);
    try (Register register = Register.open(file())) {
      register.record(documents, pdf("one"), List.of());
    }
    try (Register register = Register.open(file())) {
      assertEquals(documents, register.documents());
      assertEquals(net, register.documents().get(0).net().toPlainString());
      assertEquals(tax, register.documents().get(0).tax().toPlainString());
      assertEquals(
          "one", new String(register.pdf("2026-0001").orElseThrow(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void an_issued_document_keeps_its_lines_and_bytes() {
    try (Register register = Register.open(file())) {
      register.record(month("GBP", "40"), pdf("one"), List.of());
      register.move(List.of("2026-0001"), DocumentState.ISSUED);
      register.record(month("GBP", "99"), pdf("two"), List.of());
      assertEquals("40.00", register.documents().get(0).net().toPlainString());
      assertEquals(
          "one", new String(register.pdf("2026-0001").orElseThrow(), StandardCharsets.UTF_8));
      register.move(List.of("2026-0001"), DocumentState.DELIVERED);
      register.move(List.of("2026-0001"), DocumentState.ISSUED);
      assertEquals(DocumentState.DELIVERED, register.documents().get(0).state(), "never back");
    }
  }

  @Test
  void nothing_is_deleted_when_a_draft_is_replaced() throws SQLException {
    try (Register register = Register.open(file())) {
      register.record(month("GBP", "40"), pdf("one"), List.of());
      register.record(month("GBP", "99"), pdf("two"), List.of());
    }
    assertEquals("40.00", ask("SELECT net FROM line WHERE version = 1"));
    assertEquals("99.00", ask("SELECT net FROM line WHERE version = 2"));
  }

  @Test
  void the_same_content_again_writes_nothing_new() throws SQLException {
    for (int time = 0; time < 3; time++) {
      try (Register register = Register.open(file())) {
        register.record(month("GBP", "40"), pdf("one"), List.of());
      }
    }
    assertEquals("1", ask("SELECT count(*) FROM line"));
    assertEquals("1", ask("SELECT count(*) FROM state_change"));
  }

  @Test
  void a_second_run_is_told_that_the_register_is_in_use() {
    try (Register first = Register.open(file())) {
      RegisterFault fault = assertThrows(RegisterFault.class, () -> Register.open(file()));
      assertTrue(
          InEnglish.said(fault.message()).contains("in use by another run"), fault.toString());
      assertTrue(first.documents().isEmpty());
    }
  }

  @Test
  void a_damaged_register_is_refused_and_left_as_it_is() throws IOException {
    byte[] rubbish =
        "this is no database, but somebody's letter".repeat(200).getBytes(StandardCharsets.UTF_8);
    Files.write(file(), rubbish);
    RegisterFault fault = assertThrows(RegisterFault.class, () -> Register.open(file()));
    assertTrue(InEnglish.said(fault.message()).contains("damaged"), fault.toString());
    assertEquals(-1, java.util.Arrays.mismatch(rubbish, Files.readAllBytes(file())));
  }

  @Test
  void a_register_cut_to_nothing_is_not_taken_for_a_new_one() throws IOException {
    Files.createFile(file());
    assertThrows(RegisterFault.class, () -> Register.open(file()));
  }

  @Test
  void a_register_of_a_newer_version_is_refused() throws SQLException {
    Register.open(file()).close();
    change("PRAGMA user_version = 99");
    RegisterFault fault = assertThrows(RegisterFault.class, () -> Register.open(file()));
    assertTrue(InEnglish.said(fault.message()).contains("newer version"), fault.toString());
  }

  @Test
  void another_programs_database_is_refused() throws SQLException {
    change("CREATE TABLE shopping (item TEXT)");
    RegisterFault fault = assertThrows(RegisterFault.class, () -> Register.open(file()));
    assertTrue(InEnglish.said(fault.message()).contains("no register"), fault.toString());
  }

  @Test
  void an_older_register_is_copied_and_brought_up_to_date() throws SQLException, IOException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file())) {
      RegisterSchema.create(connection, 1);
    }
    try (Register register = Register.open(file())) {
      register.record(month("GBP", "40"), pdf("one"), List.of());
      assertEquals(1, register.dump("mail").size(), "the header alone");
    }
    assertEquals(Integer.toString(RegisterSchema.VERSION), ask("PRAGMA user_version"));
    try (var files = Files.list(folder)) {
      assertEquals(
          List.of("book.register.db", "book.register.db.version-1-copy"),
          files.map(path -> path.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void after_a_run_no_side_file_remains() throws IOException {
    try (Register register = Register.open(file())) {
      register.record(month("GBP", "40"), pdf("one"), List.of());
    }
    try (var files = Files.list(folder)) {
      assertEquals(List.of(file()), files.toList());
    }
  }

  @Test
  void only_its_owner_can_read_it() throws IOException {
    Register.open(file()).close();
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
  }

  @Test
  void it_lies_beside_the_book_under_its_name() throws IOException {
    Register.open(file()).close();
    assertEquals(file(), RegisterFile.beside(folder.resolve("book.xlsx")));
    assertEquals(
        List.of("book.register.db"), RegisterFile.inTheFolderOf(folder.resolve("renamed.xlsx")));
  }

  /** The second client is the sqlite3 shell of the machine (Debian package sqlite3). */
  @Test
  void a_second_sql_client_reads_the_same() throws IOException, InterruptedException {
    assumeTrue(System.getenv("CI") != null || Files.exists(Path.of("/usr/bin/sqlite3")));
    try (Register register = Register.open(file())) {
      register.record(month("GBP", "40"), pdf("one"), List.of());
    }
    Process shell =
        new ProcessBuilder(
                "sqlite3",
                file().toString(),
                "SELECT number, owner, gross FROM document; PRAGMA integrity_check;")
            .start();
    String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, shell.waitFor());
    assertEquals("2026-0001|Ruth|48.00\nok\n", said);
  }

  @Test
  void the_check_finds_a_gap_and_sums_that_do_not_agree() throws SQLException {
    try (Register register = Register.open(file())) {
      register.record(month("GBP", "40"), pdf("one"), List.of());
      assertTrue(RegisterCheck.faults(register.documents()).isEmpty());
    }
    change(
        "INSERT INTO document SELECT '2026-0003', series, 3, kind, owner, month, date, due,"
            + " corrects, state, '41.00', tax, gross, version, pdf, digest FROM document");
    RegisterFault fault = assertThrows(RegisterFault.class, () -> Register.open(file()));
    assertTrue(InEnglish.said(fault.message()).contains("gap before 3"), fault.toString());
    assertTrue(InEnglish.said(fault.message()).contains("do not add"), fault.toString());
    assertFalse(InEnglish.said(fault.message()).contains("2026-0001"), fault.toString());
  }

  private String ask(String query) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
        Statement statement = connection.createStatement();
        var result = statement.executeQuery(query)) {
      return result.getString(1);
    }
  }

  private void change(String command) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
        Statement statement = connection.createStatement()) {
      statement.execute(command);
    }
  }
}
