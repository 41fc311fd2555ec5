package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.ChildClassPath;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs in a process of their own, without any environment, as under cron or from a desktop: nothing
 * is kept outside the folder of the book and the user's cache.
 */
class NothingElsewhereTest {
  @TempDir Path folder;
  private Path home;
  private Path temporary;
  private Path started;

  @BeforeEach
  void places() throws IOException {
    home = Files.createDirectories(folder.resolve("home"));
    temporary = Files.createDirectories(folder.resolve("temporary"));
    started = Files.createDirectories(folder.resolve("started"));
  }

  private String run(String... words) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Duser.home=" + home,
                "-Djava.io.tmpdir=" + temporary,
                "-cp",
                ChildClassPath.text(),
                "clenchbook.cli.Clenchbook"));
    command.addAll(List.of(words));
    ProcessBuilder program =
        new ProcessBuilder(command).directory(started.toFile()).redirectErrorStream(true);
    program.environment().clear();
    Process process = program.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), said);
    return said;
  }

  private static List<String> in(Path place) throws IOException {
    try (Stream<Path> all = Files.walk(place)) {
      return all.filter(Files::isRegularFile)
          .map(file -> place.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void a_month_is_run_sent_packed_and_put_back_without_an_environment()
      throws IOException, InterruptedException {
    SmallFolderBook book = SmallFolderBook.in(folder.resolve("books"));
    String path = book.path().toString();
    String zip = folder.resolve("books/book.zip").toString();
    run("check", path, "--today=2026-11-02");
    assertTrue(run("month-end", path, "--today=2026-11-02").contains("Next: look at "));
    run("send", path, "--today=2026-11-02", "--yes");
    run("year-end", path, "--today=2026-11-02");
    run("backup", path, "--to", zip);
    run("restore", zip, folder.resolve("books/put back").toString());

    assertEquals(List.of(), in(temporary), "the temporary folder is left as it was");
    assertEquals(List.of(), in(started), "the folder it was started in");
    assertTrue(
        in(home).stream()
            .allMatch(file -> file.startsWith(".cache/") || file.startsWith(".java/fonts/")),
        () -> "only the user's cache and the JDK's own of fonts: " + homeFiles());
    try (Stream<Path> beside = Files.list(folder.resolve("books"))) {
      assertEquals(
          List.of("book", "book reports", "book.register.db", "book.zip", "put back"),
          beside.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  private String homeFiles() {
    try {
      return in(home).toString();
    } catch (IOException e) {
      return e.toString();
    }
  }
}
