package clenchbook.image;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
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
 * The image, where it was built, unpacked elsewhere: without a variable set, from a folder that
 * can't be written, which where this process may is a mount that nobody can write.
 */
class ImageIT {
  private static final Path BUILT = Path.of("target", "image", "clenchbook");
  private static final Path SAMPLES = Path.of("sample-workbooks");

  private static final String READ_ONLY =
      "mount --bind -o ro \"$1\" \"$1\" && mount -o remount,bind,ro \"$1\"; shift; exec \"$@\"";

  @TempDir Path folder = Path.of("");

  private Path image = Path.of("");
  private Path own = Path.of("");
  private boolean mounts;

  private record Outcome(int exit, String said) {}

  @BeforeEach
  void unpack() throws IOException, InterruptedException {
    assumeTrue(Files.isRegularFile(BUILT.resolve("lib/classes.jsa")), "built by -Pimage alone");
    assumeFalse(File.separatorChar == '\\', "the launchers of Linux and macOS");
    image = folder.resolve("My programs").resolve("clenchbook");
    Place.copy(BUILT, Files.createDirectories(image));
    own = Files.createDirectories(folder.resolve("My books"));
    for (String file : List.of("thornfield-metric.xlsx", "thornfield-logo.png")) {
      Files.copy(SAMPLES.resolve(file), own.resolve(file));
    }
    mounts = mayMount();
  }

  private static boolean mayMount() throws InterruptedException {
    try {
      return new ProcessBuilder("unshare", "-m", "true").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private Outcome started(String typed, List<String> variables, String... command)
      throws IOException, InterruptedException {
    List<String> whole = new ArrayList<>();
    if (mounts) {
      whole.addAll(List.of("unshare", "-m", "sh", "-c", READ_ONLY, "sh", image.toString()));
    }
    whole.addAll(List.of("env", "-i"));
    whole.addAll(variables);
    whole.addAll(List.of(command));
    return run(typed, whole);
  }

  private Outcome run(String typed, List<String> command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command).directory(own.toFile()).redirectErrorStream(true).start();
    process.getOutputStream().write(typed.getBytes(StandardCharsets.UTF_8));
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(5, TimeUnit.MINUTES), command::toString);
    return new Outcome(process.exitValue(), said);
  }

  private Outcome launched(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(image.resolve("bin/clenchbook").toString()));
    command.addAll(arguments);
    return started("", List.of(), command.toArray(String[]::new));
  }

  private Outcome byJar(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-jar");
    command.add(Path.of("target", "clenchbook.jar").toAbsolutePath().toString());
    command.addAll(arguments);
    return run("", command);
  }

  private static List<String> into(String reports, String... command) {
    List<String> all = new ArrayList<>(List.of(command));
    all.addAll(List.of("--today", "2026-11-02", "--out", reports));
    all.addAll(List.of("--register", reports + ".register.db"));
    return all;
  }

  private Map<String, byte[]> files(String reports) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    Path root = own.resolve(reports);
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  /** The jar's bytes are those of its own Java: another packs and draws in another way. */
  private void builtByThisJava() throws IOException {
    String release = Files.readString(image.resolve("runtime/release"));
    String ours = "JAVA_VERSION=\"" + System.getProperty("java.version") + "\"";
    assumeTrue(release.contains(ours), () -> "built by another Java: " + release);
  }

  @Test
  void its_month_and_year_and_mails_are_those_of_the_jar_byte_for_byte() throws Exception {
    builtByThisJava();
    String book = "thornfield-metric.xlsx";
    for (String[] command :
        List.of(
            new String[] {"month-end", book, "--month", "2026-10"},
            new String[] {"send", book, "--month", "2026-10", "--preview"},
            new String[] {"compare", book, "--from", "2026-01-01", "--to", "2026-10-31"})) {
      Outcome jar = byJar(into("jar", command));
      Outcome here = launched(into("image", command));
      assertEquals(jar.exit(), here.exit(), here.said());
      assertEquals(0, here.exit(), here.said());
    }
    Map<String, byte[]> expected = files("jar");
    Map<String, byte[]> found = files("image");
    assertTrue(expected.size() > 100, () -> expected.keySet().toString());
    assertEquals(expected.keySet(), found.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, found.get(name), name));
  }

  @Test
  void it_starts_from_its_own_archive_wherever_it_was_moved_to() throws Exception {
    Path notes = folder.resolve("classes.log");
    String setting = "CLENCHBOOK_JAVA=-Xlog:class+load=info:file=" + notes;
    Outcome check =
        started(
            "",
            List.of(setting),
            image.resolve("bin/clenchbook").toString(),
            "check",
            "thornfield-metric.xlsx");
    assertEquals(0, check.exit(), check.said());
    try (Stream<String> lines = Files.lines(notes)) {
      List<String> ours = lines.filter(line -> line.contains(" clenchbook.")).toList();
      long ready = ours.stream().filter(line -> line.contains("shared objects file")).count();
      assertTrue(ready > 100, ready + " of " + ours.size());
    }
  }

  @Test
  void it_weighs_at_most_120_megabytes_and_brings_its_licences() throws Exception {
    long bytes = Place.bytes(image);
    assertTrue(bytes <= 120_000_000, () -> bytes + " bytes");
    assertTrue(Files.size(image.resolve("licences/parts.txt")) > 1000);
    assertTrue(Files.isDirectory(image.resolve("runtime/legal/java.base")));
  }

  @Test
  void a_double_click_runs_the_last_full_month_and_opens_its_page() throws Exception {
    Path browser = folder.resolve("browser");
    Path shown = folder.resolve("shown.txt");
    Files.writeString(browser, "#!/bin/sh\necho \"$1\" >'" + shown + "'\n");
    assertTrue(browser.toFile().setExecutable(true));
    Outcome month =
        started(
            "",
            List.of("BROWSER=" + browser),
            image.resolve("bin/on-a-workbook").toString(),
            "month-end",
            own.resolve("thornfield-metric.xlsx").toString());
    assertTrue(month.exit() <= 1, month.said());
    for (int each = 0; each < 100 && !Files.exists(shown); each++) {
      Thread.sleep(100);
    }
    Path page = Path.of(Files.readString(shown).strip());
    assertTrue(page.startsWith(own) && page.endsWith("index.html"), page::toString);
    assertTrue(Files.isRegularFile(page), page::toString);
  }

  @Test
  void without_a_workbook_it_asks_for_one_as_a_terminal_gives_a_dragged_file() throws Exception {
    String starter = image.resolve("bin/on-a-workbook").toString();
    Map<String, String> dragged =
        Map.of("One place", "One\\ place/Buch.xlsx", "Two places", "'Two places/Buch.xlsx'");
    for (Map.Entry<String, String> each : dragged.entrySet()) {
      Path there = Files.createDirectories(own.resolve(each.getKey()));
      Files.copy(SAMPLES.resolve("lindenau-small.xlsx"), there.resolve("Buch.xlsx"));
      Outcome month =
          started("none.xlsx\n" + each.getValue() + "\n", List.of(), starter, "month-end");
      assertTrue(month.said().contains("There is no file none.xlsx"), month.said());
      assertTrue(Files.isDirectory(there.resolve("Buch reports")), month.said());
    }
    assertEquals(2, started("\n", List.of(), starter, "send").exit(), "Enter alone ends");
  }

  @Test
  void exit_codes_and_links_are_those_of_the_other_launcher() throws Exception {
    assertEquals(2, launched(List.of("check", "no such book.xlsx")).exit());
    assertEquals(64, launched(List.of("shoe", "the horse")).exit());
    Path link = folder.resolve("clenchbook");
    Files.createSymbolicLink(link, link.getParent().relativize(image.resolve("bin/clenchbook")));
    Outcome version = started("", List.of(), link.toString(), "--version");
    assertEquals(0, version.exit(), version.said());
  }
}
