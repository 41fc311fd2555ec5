package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A register that a newer version of the program wrote is left alone by every command. */
class NewerRegisterTest {
  @TempDir Path folder;
  private SmallFolderBook book;

  @BeforeEach
  void a_newer_version_was_here() throws IOException, SQLException {
    book = SmallFolderBook.in(folder);
    book.monthEnd("2026-09");
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + book.register());
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA user_version = 99");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check",
        "month-end --month 2026-10",
        "send --month 2026-09",
        "send --month 2026-09 --preview",
        "year-end --year 2025",
        "payments --statement bank.csv",
        "backup --to book.zip"
      })
  void every_command_refuses_it_in_one_line_and_writes_nothing(String words) throws IOException {
    Files.writeString(folder.resolve("bank.csv"), "Date,Name,Amount\n03/11/2026,Adam,120.00\n");
    byte[] before = Files.readAllBytes(book.register());
    List<String> files = names();
    String[] all = words.split(" ");
    String[] options = Stream.of(all).skip(1).map(this::placed).toArray(String[]::new);
    Typed run = Typed.type(all[0], book.path(), options);
    assertEquals(2, run.exit(), run.all());
    List<String> said = run.err().lines().toList();
    assertEquals(
        "book.register.db was written by a newer version of the program; use that version, nothing"
            + " was changed",
        said.get(said.size() - 1));
    assertEquals(1, said.stream().filter(line -> line.contains("newer")).count(), run.all());
    assertArrayEquals(before, Files.readAllBytes(book.register()));
    assertEquals(files, names());
  }

  private String placed(String word) {
    return word.matches(".*\\.(csv|zip)") ? folder.resolve(word).toString() : word;
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      List<String> names = all.map(Path::toString).sorted().toList();
      assertTrue(names.size() > 5, names.toString());
      return names;
    }
  }
}
