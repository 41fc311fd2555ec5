package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher of Linux and macOS on the packaged program, laid where a farrier may lay it: in a
 * folder with a space and an umlaut in its name.
 */
class LauncherIT {
  private static final Path TARGET = Path.of("target");
  private static final Path SAMPLES = Path.of("sample-workbooks");
  private static final String UMLAUT = "Schmiede Müller";

  @TempDir Path folder = Path.of("");

  private Path place = Path.of("");
  private Path launcher = Path.of("");
  private Path cache = Path.of("");

  private record Outcome(int exit, String said) {
    /** The last line names the program as it was called, which the rest does not. */
    Outcome butForTheNextStep() {
      int next = said.lastIndexOf("\nNext: ");
      assertTrue(next > 0, said);
      return new Outcome(exit, said.substring(0, next));
    }
  }

  @BeforeEach
  void the_program_lies_in_a_folder_of_the_farriers() throws IOException {
    assumeFalse(File.separatorChar == '\\', "the launcher is for Linux and macOS");
    place = Files.createDirectories(folder.resolve(nameThatThisMachineCanWrite()));
    launcher = place.resolve("clenchbook");
    cache = folder.resolve("cache");
    Files.copy(TARGET.resolve("clenchbook.jar"), place.resolve("clenchbook.jar"));
    Files.copy(TARGET.resolve("clenchbook"), launcher);
    assertTrue(launcher.toFile().setExecutable(true));
    for (String book : List.of("thornfield-metric.xlsx", "thornfield-logo.png")) {
      Files.copy(SAMPLES.resolve(book), place.resolve(book));
    }
  }

  /** Where files are named in plain ASCII, no program of Java could open the folder. */
  private static String nameThatThisMachineCanWrite() {
    Charset names =
        Charset.forName(System.getProperty("sun.jnu.encoding", StandardCharsets.UTF_8.name()));
    return names.newEncoder().canEncode(UMLAUT) ? UMLAUT : "Schmiede Mueller";
  }

  private List<String> monthEnd(String reports) {
    return List.of(
        "month-end",
        place.resolve("thornfield-metric.xlsx").toString(),
        "--month",
        "2026-10",
        "--today",
        "2026-11-02",
        "--out",
        place.resolve(reports).toString(),
        "--register",
        place.resolve(reports + ".register.db").toString());
  }

  private Outcome launched(Map<String, String> environment, List<String> arguments)
      throws IOException, InterruptedException {
    return launched(launcher, environment, arguments);
  }

  private Outcome launched(Path start, Map<String, String> environment, List<String> arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(start.toString());
    command.addAll(arguments);
    Map<String, String> both = new TreeMap<>(environment);
    both.putIfAbsent("XDG_CACHE_HOME", cache.toString());
    return run(command, both);
  }

  private Outcome byHand(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-jar", place.resolve("clenchbook.jar").toString()));
    command.addAll(arguments);
    return run(command, Map.of());
  }

  private Outcome run(List<String> command, Map<String, String> environment)
      throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.redirectOutput(said.toFile()).directory(folder.toFile());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().putAll(environment);
    Process process = builder.start();
    assertTrue(process.waitFor(5, TimeUnit.MINUTES), command::toString);
    return new Outcome(process.exitValue(), Files.readString(said));
  }

  /** Asks Java to note where each class came from; a later setting than the launcher's own. */
  private static Map<String, String> noting(Path notes) {
    return Map.of("_JAVA_OPTIONS", "-Xlog:class+load=info:file=\"" + notes + "\"");
  }

  private record Sources(long archive, long jar) {
    static Sources of(Path notes) throws IOException {
      try (Stream<String> lines = Files.lines(notes)) {
        List<String> ours = lines.filter(line -> line.contains(" clenchbook.")).toList();
        return new Sources(
            ours.stream().filter(line -> line.contains("source: shared objects file")).count(),
            ours.stream().filter(line -> line.contains("clenchbook.jar")).count());
      }
    }
  }

  private Map<String, byte[]> files(String reports) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    Path root = place.resolve(reports);
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  private void assertSameFiles(String one, String other) throws IOException {
    Map<String, byte[]> expected = files(one);
    Map<String, byte[]> found = files(other);
    assertTrue(expected.size() > 20, () -> expected.keySet().toString());
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, found.get(name), name));
  }

  @Test
  void the_first_months_end_lays_the_classes_ready_and_the_second_starts_from_them()
      throws Exception {
    Outcome plain = byHand(monthEnd("by hand"));
    assertEquals(0, plain.exit(), plain.said());
    Outcome first = launched(Map.of(), monthEnd("first"));
    assertEquals(0, first.exit(), first.said());
    assertTrue(Files.size(cache.resolve("clenchbook").resolve("classes.jsa")) > 0);
    assertSameFiles("by hand", "first");

    Path notes = folder.resolve("second.log");
    Outcome second = launched(noting(notes), monthEnd("second"));
    assertEquals(0, second.exit(), second.said());
    Sources sources = Sources.of(notes);
    assertTrue(sources.archive() > 100, sources::toString);
    assertTrue(sources.archive() > 10 * sources.jar(), sources::toString);
    assertSameFiles("by hand", "second");
  }

  @Test
  void new_names_how_to_start_the_program_as_it_was_started()
      throws IOException, InterruptedException {
    Outcome launched = launched(Map.of(), List.of("new", "mine.xlsx", "--language", "en"));
    String quoted = place.toString().contains(" ") ? "\"" + launcher + "\"" : launcher.toString();
    assertTrue(launched.said().contains(quoted + " check mine.xlsx"), launched.said());
    Outcome byHand = byHand(List.of("new", "yours.xlsx", "--language", "en"));
    assertTrue(byHand.said().contains("java -jar "), byHand.said());
    assertTrue(byHand.said().contains("clenchbook.jar"), byHand.said());
  }

  @Test
  void other_commands_make_no_archive() throws Exception {
    Path notes = folder.resolve("check.log");
    Outcome check =
        launched(
            noting(notes), List.of("check", place.resolve("thornfield-metric.xlsx").toString()));
    assertEquals(0, check.exit(), check.said());
    assertFalse(Files.exists(cache));
    Sources sources = Sources.of(notes);
    assertEquals(0, sources.archive(), sources::toString);
    assertTrue(sources.jar() > 50, sources::toString);
  }

  @Test
  void exit_codes_pass_through() throws Exception {
    assertEquals(2, launched(Map.of(), List.of("check", "no such book.xlsx")).exit());
    assertEquals(64, launched(Map.of(), List.of("shoe", "the horse")).exit());
    List<String> missing = List.of("month-end", "no such book.xlsx", "--month", "2026-10");
    assertEquals(2, launched(Map.of(), missing).exit());
    assertFalse(
        Files.exists(cache.resolve("clenchbook").resolve("classes.jsa")),
        "no archive from a run that did not work");
  }

  @Test
  void rows_held_back_give_the_same_exit_code_as_without_the_launcher() throws Exception {
    Path book = place.resolve("cedar hollow.xlsx");
    Files.copy(SAMPLES.resolve("cedar-hollow-imperial.xlsx"), book);
    List<String> check = List.of("check", book.toString());
    Outcome plain = byHand(check);
    assertEquals(1, plain.exit(), plain.said());
    assertEquals(plain.butForTheNextStep(), launched(Map.of(), check).butForTheNextStep());
  }

  @Test
  void a_cache_that_cannot_be_made_does_not_stop_the_work() throws Exception {
    Path file = Files.writeString(folder.resolve("a file"), "not a folder");
    Outcome done = launched(Map.of("XDG_CACHE_HOME", file.toString()), monthEnd("reports"));
    assertEquals(0, done.exit(), done.said());
    assertTrue(files("reports").size() > 20);
    assertEquals("not a folder", Files.readString(file));
  }

  @Test
  void a_link_to_the_launcher_starts_the_program() throws Exception {
    Path shelf = Files.createDirectories(folder.resolve("on the path"));
    Path near = Files.createSymbolicLink(shelf.resolve("near"), shelf.relativize(launcher));
    Path far = Files.createSymbolicLink(shelf.resolve("far"), near.toAbsolutePath());
    List<String> check = List.of("check", place.resolve("thornfield-metric.xlsx").toString());
    Outcome direct = launched(Map.of(), check);
    assertEquals(0, direct.exit(), direct.said());
    assertEquals(direct.butForTheNextStep(), launched(near, Map.of(), check).butForTheNextStep());
    assertEquals(direct.butForTheNextStep(), launched(far, Map.of(), check).butForTheNextStep());
  }

  /** As cron starts programs: no locale is set, and yet files bear the letters of their owners. */
  @Test
  void without_a_locale_files_are_still_named_in_utf8() throws Exception {
    assumeTrue(place.endsWith(UMLAUT), "this machine can look for such a name");
    Path book = Files.createDirectories(place.resolve("Büch"));
    Files.writeString(
        book.resolve("Visits.csv"),
        "Date,Owner,Horse,Work,Charge\n2026-10-05,Søren Ødegård,Bess,Trim,40\n");
    Files.writeString(book.resolve("Settings.csv"), "Setting,Value\nCountry,GB\nCurrency,GBP\n");
    List<String> command = new ArrayList<>(List.of("env", "-i"));
    command.add("PATH=" + System.getenv("PATH"));
    command.add("JAVA_HOME=" + System.getProperty("java.home"));
    for (String locale : List.of("", "LC_ALL=POSIX", "LANG=C")) {
      List<String> cron = new ArrayList<>(command);
      if (!locale.isEmpty()) {
        cron.add(locale);
      }
      cron.addAll(List.of(launcher.toString(), "check", book.toString()));
      Outcome check = run(cron, Map.of());
      assertEquals(0, check.exit(), locale + check.said());
    }
    command.addAll(
        List.of(launcher.toString(), "month-end", book.toString(), "--month", "2026-10"));
    Outcome month = run(command, Map.of());
    assertEquals(0, month.exit(), month.said());
    assertTrue(files("Büch reports").containsKey("2026-10/invoices/2026-0001 Søren Ødegård.pdf"));
  }

  @Test
  void each_launcher_has_the_line_ends_of_its_machines() throws Exception {
    assertTrue(Files.isExecutable(TARGET.resolve("clenchbook")), "no chmod needed");
    assertFalse(Files.readString(launcher).contains("\r"));
    String windows = Files.readString(TARGET.resolve("clenchbook.cmd"));
    assertEquals(windows.lines().count(), windows.split("\r\n", -1).length - 1);
  }
}
