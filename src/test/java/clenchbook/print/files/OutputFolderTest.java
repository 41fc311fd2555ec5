package clenchbook.print.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
  @TempDir Path out = Path.of("");

  private Path month() {
    return out.resolve("2026-10");
  }

  private void run(String... pathsAndTexts) throws IOException {
    Map<String, OutputFile> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(
          pathsAndTexts[i], OutputFile.of(pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8)));
    }
    OutputFolder.write(month(), files, Map.of("command", "month-end"));
  }

  private List<String> tree() throws IOException {
    try (Stream<Path> all = Files.walk(out)) {
      List<String> files = new ArrayList<>();
      all.filter(Files::isRegularFile)
          .map(file -> out.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .forEach(files::add);
      return files;
    }
  }

  @Test
  void a_run_leaves_its_files_and_their_hashes_and_nothing_else() throws IOException {
    run("index.html", "page", "invoices/1 Ash.pdf", "pdf");
    assertEquals(
        List.of("2026-10/index.html", "2026-10/invoices/1 Ash.pdf", "2026-10/run.json"), tree());
    assertEquals(
        List.of("{", "  \"command\" : \"month-end\",", "  \"files\" : [", "    {"),
        Files.readAllLines(month().resolve("run.json")).subList(0, 4));
  }

  @Test
  void the_hash_of_abc_is_the_published_one() throws IOException {
    // FIPS 180-2, appendix B.1.
    run("a", "abc");
    assertTrue(
        Files.readString(month().resolve("run.json"))
            .contains("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
  }

  @Test
  void a_file_of_the_last_run_that_is_no_longer_made_goes_with_its_empty_folder()
      throws IOException {
    run("index.html", "page", "statements/Ash.pdf", "pdf");
    run("index.html", "page");
    assertEquals(List.of("2026-10/index.html", "2026-10/run.json"), tree());
    assertFalse(Files.exists(month().resolve("statements")));
  }

  @Test
  void what_the_farrier_changed_or_added_stays() throws IOException {
    run("index.html", "page", "statements/Ash.pdf", "pdf");
    Files.writeString(month().resolve("statements/Ash.pdf"), "scribbled on");
    Files.writeString(month().resolve("statements/my notes.txt"), "mine");
    run("index.html", "page");
    assertEquals(
        List.of(
            "2026-10/index.html",
            "2026-10/run.json",
            "2026-10/statements/Ash.pdf",
            "2026-10/statements/my notes.txt"),
        tree());
  }

  @Test
  void a_run_that_fails_leaves_the_last_one_whole() throws IOException {
    run("index.html", "page", "a.csv", "1");
    Map<String, OutputFile> files = new TreeMap<>();
    files.put("a.csv", OutputFile.of(new byte[] {'2'}));
    files.put(
        "b.csv",
        to -> {
          throw new IOException("disk full");
        });
    assertThrows(IOException.class, () -> OutputFolder.write(month(), files, Map.of()));
    assertEquals(List.of("2026-10/a.csv", "2026-10/index.html", "2026-10/run.json"), tree());
    assertEquals("1", Files.readString(month().resolve("a.csv")));
  }

  @Test
  void a_run_cut_short_while_moving_is_known_by_the_record_it_left_beside() throws IOException {
    run("a.csv", "1", "b.csv", "1");
    Path beside = Files.createDirectories(out.resolve(".2026-10.being-written"));
    run("a.csv", "2", "c.csv", "new");
    Files.createDirectories(beside);
    Files.move(month().resolve("run.json"), beside.resolve("run.json"));
    run("b.csv", "3");
    assertEquals(List.of("2026-10/b.csv", "2026-10/run.json"), tree());
  }

  @Test
  void a_run_refused_while_moving_is_made_whole_by_the_next() throws IOException {
    run("a.csv", "1", "d/e.csv", "1");
    Files.delete(month().resolve("d/e.csv"));
    Files.createDirectories(month().resolve("d/e.csv/in the way"));
    assertThrows(IOException.class, () -> run("a.csv", "2", "b.csv", "2", "d/e.csv", "2"));
    Files.delete(month().resolve("d/e.csv/in the way"));
    Files.delete(month().resolve("d/e.csv"));
    run("a.csv", "3", "d/e.csv", "3");
    assertEquals(List.of("2026-10/a.csv", "2026-10/d/e.csv", "2026-10/run.json"), tree());
  }

  @Test
  void a_damaged_record_removes_nothing() throws IOException {
    run("a.csv", "1");
    Files.writeString(month().resolve("run.json"), "{\"files\": [");
    run("b.csv", "2");
    assertEquals(List.of("2026-10/a.csv", "2026-10/b.csv", "2026-10/run.json"), tree());
  }

  @Test
  void a_record_that_points_out_of_the_folder_removes_nothing() throws IOException {
    run("a.csv", "1");
    Files.writeString(out.resolve("precious.txt"), "abc");
    Files.writeString(
        month().resolve("run.json"),
        "{\"files\":[{\"path\":\"../precious.txt\",\"sha256\":"
            + "\"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad\"}]}");
    run("b.csv", "2");
    assertTrue(Files.exists(out.resolve("precious.txt")));
  }

  @Test
  void a_link_that_leads_out_of_the_folder_is_not_followed() throws IOException {
    Path elsewhere = Files.createDirectories(out.resolve("elsewhere"));
    Files.createDirectories(month());
    Files.createSymbolicLink(month().resolve("invoices"), elsewhere);
    assertThrows(IOException.class, () -> run("invoices/1.pdf", "pdf"));
    assertFalse(Files.exists(elsewhere.resolve("1.pdf")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"../x", "/x", "a//b", "a/../../b", "a\\b", "", "run.json"})
  void a_path_that_leaves_the_folder_is_a_fault_of_the_program(String path) {
    assertThrows(IllegalArgumentException.class, () -> run(path, "x"));
  }
}
