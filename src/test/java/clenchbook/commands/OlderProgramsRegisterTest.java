package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Registers that the programs of their time wrote are opened, after a copy, and nothing that went
 * out changes. Source: the files in src/test/resources/registers, each made by that program.
 */
class OlderProgramsRegisterTest {
  private static final Path KEPT = Path.of("src/test/resources/registers");
  @TempDir Path folder;

  private SmallFolderBook bookOf(int version) throws IOException {
    Path book = Files.createDirectories(folder.resolve("book"));
    try (Stream<Path> sheets = Files.list(KEPT.resolve("book"))) {
      for (Path sheet : sheets.toList()) {
        Files.copy(sheet, book.resolve(sheet.getFileName()));
      }
    }
    Path packed = KEPT.resolve("version-" + version + ".gz");
    try (InputStream in = new GZIPInputStream(Files.newInputStream(packed))) {
      Files.copy(in, folder.resolve("book.register.db"));
    }
    return SmallFolderBook.at(book);
  }

  private static byte[] stored(Path register) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + register);
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("SELECT pdf FROM document")) {
      return row.getBytes(1);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void it_is_copied_brought_up_to_date_and_what_is_out_stays_as_it_is(int version)
      throws IOException, SQLException {
    SmallFolderBook book = bookOf(version);
    byte[] before = Files.readAllBytes(book.register());
    byte[] out = stored(book.register());
    Typed sent = Typed.type("month-end", book.path(), "--month", "2026-09");
    assertEquals(0, sent.exit(), sent.all());
    assertTrue(sent.out().contains("2026-09: 1 invoice, GBP 120.00 in all"), sent.all());
    assertArrayEquals(
        before,
        Files.readAllBytes(folder.resolve("book.register.db.version-" + version + "-copy")));
    String invoices = book.files().get("2026-09/figures/invoices.csv");
    assertTrue(
        invoices.contains("\n2026-0001,2026-09-30,2026-10-14,Adam,100.00,20.00,120.00,issued"),
        invoices);
    assertArrayEquals(
        out, Files.readAllBytes(book.reports().resolve("2026-09/invoices/2026-0001 Adam.pdf")));

    Typed next = Typed.type("month-end", book.path(), "--month", "2026-10");
    assertEquals(0, next.exit(), next.all());
    assertTrue(next.out().contains("2026-10: 1 invoice, GBP 120.00 in all"), next.all());
    assertTrue(
        book.files().get("2026-10/figures/invoices.csv").contains("\n2026-0002,"), next.all());
    Typed again = Typed.type("send", book.path(), "--month", "2026-09");
    assertTrue(again.out().contains("2026-09: nothing is left to issue"), again.all());
  }

  /** A new version of the register comes with a register of the version before it. */
  @Test
  void every_version_that_was_released_is_kept_here() throws IOException {
    try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/register"));
        Stream<Path> kept = Files.list(KEPT)) {
      long versions = scripts.count();
      Set<String> expected =
          IntStream.range(2, (int) versions)
              .mapToObj(version -> "version-" + version + ".gz")
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(
          expected,
          kept.map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".gz"))
              .collect(Collectors.toCollection(TreeSet::new)));
    }
  }
}
