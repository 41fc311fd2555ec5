package clenchbook.commands.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OnlyBookTest {
  @TempDir Path folder;

  private void file(String... names) throws IOException {
    for (String name : names) {
      Files.createFile(folder.resolve(name));
    }
  }

  @Test
  void the_only_workbook_is_meant_whatever_else_lies_there() throws IOException {
    file("My Year.ODS", "~$My Year.xlsx", ".~lock.My Year.ods#", "bank.csv", "My Year.register.db");
    Files.createDirectory(folder.resolve("old.xlsx"));
    assertEquals(Optional.of(Path.of("My Year.ODS")), OnlyBook.in(folder).book());
  }

  @Test
  void several_are_listed_and_none_is_said() throws IOException {
    assertEquals(
        "name the workbook (BOOK): there is none in this folder",
        InEnglish.said(OnlyBook.in(folder).why()));
    file("b.xlsx", "a.xls");
    assertEquals(Optional.empty(), OnlyBook.in(folder).book());
    assertEquals(
        "name the workbook (BOOK): this folder holds a.xls, b.xlsx",
        InEnglish.said(OnlyBook.in(folder).why()));
  }
}
