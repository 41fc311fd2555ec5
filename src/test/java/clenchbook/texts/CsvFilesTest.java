package clenchbook.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvFilesTest {
  @TempDir private Path folder;

  private Path run(String name, String problems, String figures) throws IOException {
    Path run = Files.createDirectories(folder.resolve(name).resolve("figures")).resolveSibling(".");
    Files.writeString(run.resolve("problems.csv"), "kind,problem,expected\n" + problems);
    Files.writeString(run.resolve("figures/jobs.csv"), "horse,net\n" + figures);
    return folder.resolve(name);
  }

  @Test
  void only_the_farriers_words_may_differ() throws IOException {
    Path english = run("a", "OWNER_UNKNOWN,not known,a name\n", "Bo,1.50\n");
    Path german = run("b", "OWNER_UNKNOWN,nicht bekannt,ein Name\n", "Bo,1.50\n");
    assertEquals(CsvFiles.below(english), CsvFiles.below(german));
  }

  @Test
  void a_word_elsewhere_and_a_decimal_comma_are_seen() throws IOException {
    Path english = run("a", "OWNER_UNKNOWN,not known,a name\n", "Bo,1.50\n");
    assertNotEquals(
        CsvFiles.below(english), CsvFiles.below(run("b", "UNBEKANNT,x,y\n", "Bo,1.50\n")));
    assertNotEquals(
        CsvFiles.below(english), CsvFiles.below(run("c", "OWNER_UNKNOWN,x,y\n", "Bo,\"1,50\"\n")));
  }
}
