package clenchbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** A slip on the command line, or a run that can't be, is told in plain words. */
class PlainWordsTest {
  @TempDir private Path folder;

  private record Outcome(int exit, List<String> lines) {}

  private static Outcome run(String... arguments) {
    StringWriter said = new StringWriter();
    CommandLine line = Clenchbook.commandLine(arguments).setErr(new PrintWriter(said, true));
    int exit = line.execute(arguments);
    return new Outcome(exit, said.toString().lines().toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "monthend b --month 2026-10 | there is no command 'monthend'; did you mean month-end?",
        "month-emd b | there is no command 'month-emd'; did you mean month-end?",
        "chek b | there is no command 'chek'; did you mean check?",
        "check b --markd x | there is no option '--markd'; did you mean --marked?",
        "check b --markd=x | there is no option '--markd'; did you mean --marked?",
        "check my book.xlsx"
            + " | 'book.xlsx' is one word too many; a name with blanks in it stands between quotes",
        "month-end b --month -999999999-01"
            + " | Invalid value for option '--month': '-999999999-01' can't be read; expected such"
            + " as 2026-10",
        "month-end b --month 0000-10"
            + " | Invalid value for option '--month': '0000-10' can't be read; expected such as"
            + " 2026-10",
        "compare b --from -999999999-01-01 | Invalid value for option '--from': '-999999999-01-01'"
            + " can't be read; expected such as 2026-10-31",
        "year-end b --year 2026/27 | Invalid value for option '--year': '2026/27' can't be read;"
            + " expected such as 2026",
        "year-end b --year 2026 --quarter x"
            + " | Invalid value for option '--quarter': 'x' can't be read; expected such as a whole"
            + " number",
        "send b --month 2026-10 --pause x"
            + " | Invalid value for option '--pause': 'x' can't be read; expected such as 1.5"
      })
  void a_slip_is_named_with_what_was_meant(String line, String words) {
    Outcome outcome = run(line.split(" "));
    assertEquals(Clenchbook.WRONG_USAGE, outcome.exit());
    assertEquals(words, outcome.lines().get(0));
    assertEquals(2, outcome.lines().size(), outcome::toString);
    assertTrue(outcome.lines().get(1).startsWith("Try: clenchbook"), outcome::toString);
  }

  @Test
  void a_command_that_is_like_none_gets_the_list_of_all() {
    Outcome outcome = run("frobnicate", "b");
    assertEquals(Clenchbook.WRONG_USAGE, outcome.exit());
    assertTrue(outcome.lines().get(0).contains("there are new, check, month-end"));
  }

  @Test
  void a_register_given_as_the_book_is_told_from_a_damaged_workbook() throws IOException {
    Path register = folder.resolve("book.register.db");
    Files.writeString(register, "SQLite format 3\0 and so on");
    for (String command : List.of("check", "month-end")) {
      Outcome outcome =
          command.equals("check")
              ? run(command, register.toString())
              : run(command, register.toString(), "--month", "2026-10");
      assertEquals(Clenchbook.COULD_NOT_RUN, outcome.exit());
      assertEquals(
          List.of(
              "book.register.db is a register or another database; name the workbook that it"
                  + " belongs to"),
          outcome.lines());
    }
  }

  @Test
  void a_folder_that_only_points_is_known_by_its_name() throws IOException {
    Path sheets = Files.createDirectories(folder.resolve("yard"));
    Files.createDirectories(sheets.resolve("deeper"));
    for (Path points : List.of(sheets.resolve("."), sheets.resolve("deeper").resolve(".."))) {
      Outcome outcome = run("check", points.toString());
      assertEquals(Clenchbook.COULD_NOT_RUN, outcome.exit());
      assertEquals(List.of("yard: the folder holds no .csv file"), outcome.lines());
    }
    Outcome root = run("check", sheets.getRoot().toString());
    assertEquals(1, root.lines().size(), root::toString);
    assertEquals(Clenchbook.WRONG_USAGE, run("check", "").exit());
  }

  @Test
  void a_book_that_is_not_there_is_told_before_another_books_register() throws IOException {
    Files.createFile(folder.resolve("other.register.db"));
    Outcome outcome = run("month-end", folder + "/none.xlsx", "--month", "2026-10");
    assertEquals(List.of(folder + "/none.xlsx: there is no such workbook"), outcome.lines());
  }

  @Test
  void whatever_goes_wrong_is_one_line() {
    for (Throwable fault :
        List.of(
            new IllegalStateException("one\ntwo"),
            new InternalError("no font manager"),
            new OutOfMemoryError(),
            new StackOverflowError(),
            new UncheckedIOException(new NoSuchFileException("/tmp/gone")))) {
      String said = CouldNotRun.of(fault, InEnglish.TEXTS);
      assertEquals(1, said.lines().count(), said);
      assertTrue(said.length() > 10, said);
    }
  }
}
