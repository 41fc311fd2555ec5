package clenchbook.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the starters of Windows hand to Java, under an emulator of its shell where wine is
 * installed. In Java's place stands a script that tells what it was given: Windows itself, a
 * dragged file's real path and a real Java are not shown by this.
 */
class WindowsStartersIT {
  private static final String TELLS =
      "#!/bin/sh\nfor each; do case $each in -X*|-D*) ;; *) printf '[%s]' \"$each\" ;; esac; done\n"
          + "printf ' tool=%s\\n' \"$JAVA_TOOL_OPTIONS\"\n";

  @TempDir Path folder = Path.of("");

  private Path program = Path.of("");
  private Path books = Path.of("");

  @BeforeEach
  void unpack() throws IOException {
    assumeTrue(Tool.found("wine").isPresent(), "wine emulates the shell of Windows");
    program = Files.createDirectories(folder.resolve("My programs").resolve("clenchbook"));
    Place.copy(Path.of("src", "main", "image", "windows"), program);
    Path java = Files.createDirectories(program.resolve("runtime/bin")).resolve("java.exe");
    Files.writeString(java, TELLS);
    assertTrue(java.toFile().setExecutable(true));
    books = Files.createDirectories(folder.resolve("books"));
    Files.writeString(books.resolve("two words.xlsx"), "");
    Files.writeString(books.resolve("Smith&Sons.xlsx"), "");
  }

  private String said(String line, String typed) throws IOException, InterruptedException {
    Path batch = folder.resolve("try.cmd");
    Files.writeString(
        batch,
        String.join(
            "\r\n",
            "@echo off",
            "set JAVA_TOOL_OPTIONS=-Dof=another",
            "cd /d Z:" + windows(books),
            line.replace("PROGRAM", "Z:" + windows(program)),
            ""));
    ProcessBuilder builder = new ProcessBuilder("wine", "cmd", "/c", "Z:" + windows(batch));
    builder.environment().put("WINEPREFIX", folder.resolve("wine").toString());
    builder.environment().put("WINEDEBUG", "-all");
    Process process = builder.redirectErrorStream(true).start();
    process.getOutputStream().write(typed.getBytes(StandardCharsets.UTF_8));
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(3, TimeUnit.MINUTES), said);
    return said.replace("\r", "");
  }

  private static String windows(Path path) {
    return path.toAbsolutePath().toString().replace('/', '\\');
  }

  @Test
  void each_starter_hands_its_workbook_to_java_and_holds_the_window() throws Exception {
    String jar = "[-jar][Z:" + windows(program) + "\\lib\\clenchbook.jar]";
    for (List<String> each :
        List.of(
            List.of("Month end.cmd", "two words.xlsx", "[month-end][two words.xlsx][--open]"),
            List.of("Month end.cmd", "Smith&Sons.xlsx", "[month-end][Smith&Sons.xlsx][--open]"),
            List.of("Send invoices.cmd", "two words.xlsx", "[send][two words.xlsx]"))) {
      String line = "\"PROGRAM\\" + each.get(0) + "\" \"" + each.get(1) + "\"";
      String said = said(line, "\r\n");
      assertTrue(said.contains(jar + each.get(2) + " tool=\n"), said);
      assertTrue(said.contains("Press any key"), said);
    }
    String alone = said("\"PROGRAM\\bin\\clenchbook.cmd\" check \"two words.xlsx\"", "");
    assertTrue(alone.contains("[check][two words.xlsx]"), alone);
    assertFalse(alone.contains("Press any key"), alone);
  }

  @Test
  void without_a_workbook_it_asks_for_one_and_takes_its_quotes_away() throws Exception {
    String line = "\"PROGRAM\\Month end.cmd\"";
    String said = said(line, "\"Smith&Sons.xlsx\"\r\n");
    assertTrue(said.contains("[month-end][Smith&Sons.xlsx][--open]"), said);
    assertEquals(0, said(line, "\r\n").split("\\[month-end\\]", -1).length - 1, "Enter alone ends");
    String cut = said("\"PROGRAM\\Month end.cmd\" Smith", "two words.xlsx\r\n");
    assertTrue(cut.contains("There is no file \"Smith\""), cut);
    assertTrue(cut.contains("[month-end][two words.xlsx]"), cut);
  }
}
