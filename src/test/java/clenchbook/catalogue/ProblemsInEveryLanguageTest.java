package clenchbook.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import clenchbook.problem.Problem;
import clenchbook.texts.MadeUpTexts;
import clenchbook.texts.Texts;
import clenchbook.texts.WordsOutside;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each problem of the catalogue in a language of brackets: outside them stand only words of its
 * book, so that every sentence can be said in any language.
 */
class ProblemsInEveryLanguageTest {
  /** The names that are offered for misspelt ones, and one that the register has. */
  private static final List<String> OFFERED = List.of("Charge", "Hourly wage", "Ann Archer");

  private static final Texts MADE_UP =
      Texts.of("de", "GB", new MadeUpTexts()).naming(name -> "‹" + name + "›");

  @TempDir Path folder;

  @Test
  void no_problem_has_a_word_of_the_program_outside_the_texts() throws IOException {
    Map<String, Set<String>> left = new TreeMap<>();
    for (ProblemExamples.Example example : ProblemExamples.all()) {
      Path own = Files.createDirectories(folder.resolve(example.kind().name()));
      Path book = example.book().apply(own);
      List<String> known = new ArrayList<>(OFFERED);
      known.addAll(words(own));
      WordsOutside judge = new WordsOutside(known, List.of());
      for (Problem problem : ProblemCatalogueTest.problems(book)) {
        String said = MADE_UP.say(problem.inFull());
        assertFalse(said.isBlank());
        Set<String> words = judge.in(said);
        if (!words.isEmpty()) {
          left.put(problem.kind() + ": " + said, words);
        }
      }
    }
    assertEquals(Map.of(), left);
  }

  /** All that stands in the files of a folder, packed or not. */
  private static List<String> words(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      List<String> words = new ArrayList<>();
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        byte[] bytes = Files.readAllBytes(file);
        words.add(file.getFileName().toString());
        words.add(new String(bytes, StandardCharsets.UTF_8));
        words.addAll(unpacked(bytes));
      }
      return words;
    }
  }

  private static List<String> unpacked(byte[] bytes) throws IOException {
    List<String> parts = new ArrayList<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        String xml = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        parts.add(
            xml.replaceAll("<[^>]*name=\"([^\"]*)\"[^>]*>", " $1 ").replaceAll("<[^>]*>", " "));
      }
    }
    return parts;
  }
}
