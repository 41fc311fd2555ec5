package clenchbook.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clenchbook.comparison.questions.ComparedJob;
import clenchbook.reports.blocks.FigureTable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same questions answered by a program in another language, written from the definitions: every
 * figure agrees to four digits at least. Skipped where there is no Python.
 */
@Tag("samples")
class SecondLanguageTest {
  private static final Path SCRIPT = Path.of("src/test/scripts/compare_again.py");

  @TempDir Path folder;
  private int compared;

  @ParameterizedTest
  @ValueSource(longs = {1, 20251231, -77})
  void another_language_gives_the_same_answers(long seed) throws Exception {
    assumeTrue(hasPython(), "no python3 on this machine");
    assertSameAnswers(seed);
  }

  @Test
  @Tag("demand")
  void another_language_gives_the_same_answers_for_twenty_more_books() throws Exception {
    assumeTrue(hasPython(), "no python3 on this machine");
    for (long seed = 101; seed <= 120; seed++) {
      assertSameAnswers(seed);
    }
    System.out.println(compared + " figures of 20 books agree");
  }

  private void assertSameAnswers(long seed) throws Exception {
    List<ComparedJob> jobs = JobMaker.book(seed);
    Map<String, String> other = answers(jobs);
    Map<String, String> own =
        own(Comparisons.of(jobs, JobMaker.FIRST, JobMaker.LAST, JobMaker.rates()));
    assertFalse(other.isEmpty());
    assertTrue(own.keySet().containsAll(other.keySet()), other.keySet().toString());
    other.forEach((figure, value) -> assertFourDigits(figure, value, own.get(figure)));
    compared += other.size();
  }

  private static void assertFourDigits(String figure, String expected, String actual) {
    if (expected.isEmpty()) {
      assertEquals("", actual, figure);
      return;
    }
    double wanted = Double.parseDouble(expected);
    double tolerance = Math.max(5e-5 * Math.abs(wanted), 1e-6);
    assertEquals(wanted, Double.parseDouble(actual), tolerance, figure);
  }

  private static boolean hasPython() throws InterruptedException {
    try {
      Process python = new ProcessBuilder("python3", "--version").start();
      return python.waitFor(20, TimeUnit.SECONDS) && python.exitValue() == 0;
    } catch (IOException missing) {
      return false;
    }
  }

  private Map<String, String> answers(List<ComparedJob> jobs) throws Exception {
    Path file = folder.resolve("jobs.csv");
    Path answers = folder.resolve("answers.csv");
    Files.writeString(file, csv(jobs), StandardCharsets.UTF_8);
    Process python =
        new ProcessBuilder("python3", SCRIPT.toString(), file.toString())
            .redirectOutput(answers.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    assertTrue(python.waitFor(120, TimeUnit.SECONDS));
    assertEquals(0, python.exitValue());
    Map<String, String> found = new TreeMap<>();
    for (String line : Files.readAllLines(answers).subList(1, Files.readAllLines(answers).size())) {
      String[] parts = line.split(",", -1);
      found.put(parts[0] + "/" + parts[1] + "/" + parts[2], parts[3]);
    }
    return found;
  }

  private static Map<String, String> own(Comparisons comparisons) {
    Map<String, String> found = new TreeMap<>();
    for (FigureTable table : comparisons.tables()) {
      if (table.name().equals("comparisons")) {
        table.rows().stream()
            .filter(row -> row.get(2).equals("all"))
            .forEach(row -> put(found, table.columns(), row));
      }
      if (table.name().equals("break-even")) {
        table
            .rows()
            .forEach(row -> found.put(row.get(0) + "/break-even/" + row.get(1), row.get(2)));
      }
    }
    return found;
  }

  private static void put(Map<String, String> found, List<String> columns, List<String> row) {
    for (int i = 0; i < columns.size(); i++) {
      found.put(row.get(0) + "/" + row.get(1) + "/" + columns.get(i), row.get(i));
    }
  }

  private static String csv(List<ComparedJob> jobs) {
    StringBuilder text =
        new StringBuilder(
            "date,horse,work,compare_as,kind,shoes,new_shoes,shaping,reason,lost,shape,measured,"
                + "job,drive,making,helper,forge,charged,materials,gas,sundries,travel,overhead\n");
    for (ComparedJob job : jobs) {
      text.append(
          String.join(
              ",",
              job.date().toString(),
              job.horse(),
              job.work(),
              job.compareAs(),
              job.kind().orElseThrow().word(),
              String.valueOf(job.shoes()),
              String.valueOf(job.newShoes()),
              job.shaping().orElseThrow().word(),
              job.reason().word(),
              job.lost().isPresent() ? String.valueOf(job.lost().getAsInt()) : "",
              job.time().ownShape().map(Object::toString).orElse(""),
              job.time().measured() ? "yes" : "no",
              job.time().job().toString(),
              job.time().drive().toString(),
              job.time().making().toString(),
              job.time().helper().toString(),
              job.time().forge().toString(),
              job.money().charged().toString(),
              job.money().materials().toString(),
              job.money().gas().toString(),
              job.money().sundries().toString(),
              job.money().travel().toString(),
              job.money().overhead().toString()));
      text.append('\n');
    }
    return text.toString();
  }
}
