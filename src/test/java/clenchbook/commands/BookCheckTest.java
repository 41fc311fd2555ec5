package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.opening.Terminal;
import clenchbook.register.Register;
import clenchbook.register.RegisterFault;
import clenchbook.texts.InEnglish;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What check says of the register beside the book, and when it asks for none. */
class BookCheckTest {
  @TempDir private Path folder;

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private final ByteArrayOutputStream warned = new ByteArrayOutputStream();

  private int check(SmallFolderBook book, Optional<Path> register, Optional<Path> marked) {
    Terminal terminal =
        new Terminal(
            new PrintStream(said, true, StandardCharsets.UTF_8),
            new PrintStream(warned, true, StandardCharsets.UTF_8),
            false);
    return new BookCheck(book.path(), register, marked, SmallFolderBook.machine(), terminal).run();
  }

  @Test
  void a_damaged_register_is_named_after_the_books_own_problems() throws Exception {
    SmallFolderBook book = SmallFolderBook.in(folder).payments("2026-10-09,Nobody,5,,\n");
    assertEquals(0, book.monthEnd("2026-10"));
    change(book, "UPDATE document SET pdf = x'00' WHERE number = '2026-0002'");
    Path copy = folder.resolve("marked.xlsx");

    RegisterFault fault =
        assertThrows(RegisterFault.class, () -> check(book, Optional.empty(), Optional.of(copy)));

    assertTrue(
        InEnglish.said(fault.message()).contains("2026-0002 is not as it was stored"),
        fault.toString());
    assertTrue(said.toString(StandardCharsets.UTF_8).contains("Payments!B2"));
    assertFalse(Files.exists(copy));
  }

  @Test
  void a_folder_of_sheets_is_checked_without_asking_for_another_books_register()
      throws IOException {
    SmallFolderBook book = SmallFolderBook.in(folder);
    Register.open(folder.resolve("other.register.db")).close();

    assertEquals(0, check(book, Optional.empty(), Optional.empty()));
    assertEquals("", warned.toString(StandardCharsets.UTF_8));
  }

  @Test
  void a_register_that_is_named_and_is_not_there_is_told() throws IOException {
    SmallFolderBook book = SmallFolderBook.in(folder);
    assertEquals(0, check(book, Optional.of(folder.resolve("none.register.db")), Optional.empty()));
    assertTrue(warned.toString(StandardCharsets.UTF_8).startsWith("there is no register"));
  }

  private static void change(SmallFolderBook book, String command) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + book.register());
        Statement statement = connection.createStatement()) {
      statement.execute(command);
    }
  }
}
