package clenchbook.register;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.MonthBilling;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.billing.documents.WrittenDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is changed in a register behind the program's back is named, and nothing goes on. */
class DamagedRegisterTest {
  @TempDir private Path folder;

  private Path file() {
    return folder.resolve("book.register.db");
  }

  @BeforeEach
  void three_documents() {
    try (Register register = Register.open(file())) {
      register.record(
          documents(), pdfs(), Map.of("2026-0002", bytes("<two/>")), List.of(), Map.of());
      register.move(List.of("2026-0001", "2026-0002"), DocumentState.ISSUED);
    }
  }

  private static List<BilledDocument> documents() {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .visit("Date: 2026-10-05, Horse: Jet, Owner: Adam, Work: Trim, Charge: 30")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Trim, Charge: 40")
            .visit("Date: 2026-10-05, Horse: Dot, Owner: Zoe, Work: Trim, Charge: 0");
    return october(book);
  }

  private static List<BilledDocument> october(WrittenBook book) {
    return MonthBilling.decide(
            book.jobs(),
            List.of(),
            new BillingOptions(YearMonth.of(2026, 10), false, Optional.empty(), false))
        .documents();
  }

  private static Map<String, byte[]> pdfs() {
    return Map.of("2026-0001", bytes("one"), "2026-0002", bytes("two"), "2026-0003", bytes("3"));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "UPDATE document SET pdf = x'6f6e66' WHERE number = '2026-0001' | 2026-0001 is not as",
        "UPDATE document SET pdf = NULL WHERE number = '2026-0001' | 2026-0001 is not as",
        "UPDATE e_invoice SET xml = x'3c736978' WHERE number = '2026-0002' | 2026-0002 is not as",
        "DELETE FROM e_invoice WHERE number = '2026-0002' | 2026-0002 is not as",
        "INSERT INTO e_invoice VALUES ('2026-0001', x'3c78') | 2026-0001 is not as",
        "UPDATE line SET tax_kind = 'ZERO' WHERE number = '2026-0002' | 2026-0002 is not as",
        "UPDATE line SET tax_reason = 'VATEX' WHERE number = '2026-0002' | 2026-0002 is not as",
        "UPDATE document SET gross = '41.00' WHERE number = '2026-0002' | 2026-0002: net and tax",
        "UPDATE document SET owner = 'Rut' WHERE number = '2026-0002' | 2026-0002 is not as",
        "DELETE FROM line WHERE number = '2026-0002' | 2026-0002: its lines do not add",
        "DELETE FROM line WHERE number = '2026-0003' | 2026-0003 is not as",
        "DELETE FROM document WHERE number = '2026-0002' | 2026-0002 is missing",
        "DELETE FROM document WHERE number = '2026-0003' | 2026-0003 is missing",
        "UPDATE document SET state = 'DRAFT' WHERE number = '2026-0001' | a state that no run",
        "DELETE FROM state_change WHERE number = '2026-0003' | changes of state are missing",
        "UPDATE document SET net = 'forty' WHERE number = '2026-0002' | is damaged",
        "UPDATE document SET month = 'October' WHERE number = '2026-0002' | is damaged",
      })
  void what_is_damaged_is_named_at_each_opening(String damage, String named)
      throws SQLException, IOException {
    change(damage);
    byte[] before = Files.readAllBytes(file());

    for (RegisterFault fault :
        List.of(
            assertThrows(RegisterFault.class, () -> Register.open(file())),
            assertThrows(RegisterFault.class, () -> Register.read(file())))) {
      assertTrue(InEnglish.said(fault.message()).contains(named), fault.toString());
      assertTrue(InEnglish.said(fault.message()).contains("put back a copy"), fault.toString());
      assertEquals(1, InEnglish.said(fault.message()).lines().count());
    }

    assertArrayEquals(before, Files.readAllBytes(file()));
    nothingBeside();
  }

  private void nothingBeside() throws IOException {
    try (var files = Files.list(folder)) {
      assertEquals(List.of(file()), files.toList());
    }
  }

  @Test
  void a_register_of_an_older_version_gets_its_digests_and_is_read_without_being_touched()
      throws SQLException, IOException {
    change("ALTER TABLE document DROP COLUMN digest");
    change("ALTER TABLE line DROP COLUMN visit_owner");
    change("ALTER TABLE line DROP COLUMN formerly");
    change("DROP TABLE difference_told");
    change("ALTER TABLE line DROP COLUMN tax_kind");
    change("ALTER TABLE line DROP COLUMN tax_reason");
    change("ALTER TABLE tax_total DROP COLUMN category");
    change("ALTER TABLE tax_total DROP COLUMN reason");
    change("DROP TABLE e_invoice");
    change("PRAGMA user_version = 2");
    byte[] before = Files.readAllBytes(file());

    assertEquals(3, Register.read(file()).size());
    assertArrayEquals(before, Files.readAllBytes(file()), "reading changes nothing");
    nothingBeside();

    Register.open(file()).close();
    assertArrayEquals(
        before, Files.readAllBytes(folder.resolve("book.register.db.version-2-copy")));
    change("UPDATE document SET pdf = x'00' WHERE number = '2026-0001'");
    assertThrows(RegisterFault.class, () -> Register.open(file()));
  }

  /** The digests are those that the program of that version gave these documents. */
  private void as_version_4_left_it() throws SQLException {
    digest("2026-0001", "37dcd840f680b1300e988cdcba86dbdc46e8dc886af27d8e02049046b7a0865b");
    digest("2026-0002", "9b7fbbd70839771057f72b99d573102d2f64569c610c819ed3d72e5a99c0b648");
    digest("2026-0003", "00be561bc769650f46c8d30a479dd998289b6340fb334338be4a9c53884b4a2c");
    change("PRAGMA user_version = 4");
  }

  private void digest(String number, String digest) throws SQLException {
    change("UPDATE document SET digest = '" + digest + "' WHERE number = '" + number + "'");
  }

  @Test
  void a_register_of_version_4_is_copied_and_its_structured_invoices_are_watched_from_then_on()
      throws SQLException, IOException {
    as_version_4_left_it();
    byte[] before = Files.readAllBytes(file());
    assertEquals(3, Register.read(file()).size());
    assertArrayEquals(before, Files.readAllBytes(file()), "reading changes nothing");

    Register.open(file()).close();
    assertArrayEquals(
        before, Files.readAllBytes(folder.resolve("book.register.db.version-4-copy")));
    change("UPDATE e_invoice SET xml = x'00'");
    assertThrows(RegisterFault.class, () -> Register.open(file()));
  }

  @Test
  void what_was_damaged_under_version_4_gets_no_new_digest() throws SQLException, IOException {
    as_version_4_left_it();
    change("UPDATE document SET pdf = x'00' WHERE number = '2026-0001'");
    byte[] before = Files.readAllBytes(file());

    for (RegisterFault fault :
        List.of(
            assertThrows(RegisterFault.class, () -> Register.open(file())),
            assertThrows(RegisterFault.class, () -> Register.read(file())))) {
      assertTrue(InEnglish.said(fault.message()).contains("2026-0001 is not as"), fault.toString());
    }

    assertArrayEquals(before, Files.readAllBytes(file()));
    nothingBeside();
  }

  /** Version 4 wrote a rate of zero over the one that version 3 had taken into its digest. */
  @Test
  void an_exempt_owners_invoice_of_version_3_is_not_taken_for_damaged()
      throws SQLException, IOException {
    Files.delete(file());
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.CURRENCY, "GBP")
            .tax("Code: V, Name: VAT, Rate %: 20")
            .work("Work: Trim, Price: 40, Tax: V")
            .owner("Owner: Adam, Tax exempt: yes, Exempt reason: relief")
            .visit("Date: 2026-10-05, Horse: Jet, Owner: Adam, Work: Trim, Charge: 30");
    try (Register register = Register.open(file())) {
      register.record(october(book), Map.of("2026-0001", bytes("one")), List.of());
    }
    change("UPDATE tax_total SET rate = '20'");
    digest("2026-0001", "43437930281d03810f560ae552037b2867d537d493c4c0662f602500f5c44eaf");
    change("ALTER TABLE line DROP COLUMN tax_kind");
    change("ALTER TABLE line DROP COLUMN tax_reason");
    change("ALTER TABLE tax_total DROP COLUMN category");
    change("ALTER TABLE tax_total DROP COLUMN reason");
    change("DROP TABLE e_invoice");
    change("PRAGMA user_version = 3");

    Register.open(file()).close();
    assertEquals(1, Register.read(file()).size());
  }

  @Test
  void a_number_that_another_series_has_given_leaves_no_gap() {
    List<BilledDocument> all = documents();
    assertTrue(RegisterCheck.faults(List.of(all.get(0), all.get(1))).isEmpty());
    assertEquals(
        List.of("series 2026 has a gap before 3"),
        RegisterCheck.faults(List.of(all.get(0), all.get(2))).stream()
            .map(InEnglish::said)
            .toList());
    BilledDocument other = WrittenDocument.of("Number: 2026-0002, Series: other, Sequence: 1");
    assertTrue(RegisterCheck.faults(List.of(other, all.get(0), all.get(2))).isEmpty());
  }

  private void change(String command) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
        Statement statement = connection.createStatement()) {
      statement.execute(command);
    }
  }
}
