package clenchbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clenchbook.ChildClassPath;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the machine's locale and environment must not change; each in a process of its own. */
class SurroundingsTest {
  @TempDir private Path folder;

  private record Outcome(int exit, String said) {}

  private Path book() throws IOException {
    Path book = Files.createDirectories(folder.resolve("book"));
    Files.writeString(
        book.resolve("Visits.csv"),
        "Date,Owner,Horse,Work,Charge\n2026-10-05,Søren Ødegård,Bess,Trim,40\n"
            + "2026-10-06,Ελένη Щукина,Jet,Trim,soon\n2026-10-07,Ελένη Щукина,Jet,Trim,50\n");
    Files.writeString(
        book.resolve("Settings.csv"),
        "Setting,Value\nCountry,GB\nCurrency,GBP\nLanguage,en\nBusiness name,Anvil\n");
    return book;
  }

  private static Outcome run(List<String> settings, boolean empty, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(settings);
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", ChildClassPath.text()));
    command.add(Clenchbook.class.getName());
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    if (empty) {
      builder.environment().clear();
    }
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(2, TimeUnit.MINUTES), command::toString);
    return new Outcome(process.exitValue(), said);
  }

  private static List<Path> files(Path reports, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(reports)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** Judged by qpdf: the table at a PDF's end is written in ASCII digits (ISO 32000-1, 7.5.4). */
  @Test
  void a_locale_with_digits_of_its_own_damages_no_pdf() throws Exception {
    assumeTrue(onPath("qpdf"), "qpdf is the judge");
    Outcome outcome =
        run(
            List.of("-Duser.language=ar", "-Duser.country=EG"),
            false,
            "month-end",
            book().toString(),
            "--month",
            "2026-10");
    assertEquals(1, outcome.exit(), outcome.said());
    List<Path> pdfs = files(folder.resolve("book reports"), ".pdf");
    assertTrue(pdfs.size() > 5, pdfs::toString);
    for (Path pdf : pdfs) {
      Process qpdf = new ProcessBuilder("qpdf", "--check", pdf.toString()).start();
      String complaint = new String(qpdf.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(0, qpdf.waitFor(), pdf + ": " + complaint);
    }
  }

  private static boolean onPath(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
  }

  /** A file's name that this machine can't say is written in plain letters, as under cron. */
  @Test
  void without_an_environment_files_are_named_in_plain_letters_with_a_note() throws Exception {
    assumeTrue(File.separatorChar == '/', "elsewhere files are named in Unicode");
    assumeTrue(plainNames(), "this machine names files in UTF-8 whatever the locale");
    Outcome outcome = run(List.of(), true, "month-end", book().toString(), "--month", "2026-10");
    assertEquals(1, outcome.exit(), outcome.said());
    Path month = folder.resolve("book reports").resolve("2026-10");
    assertEquals(
        List.of("2026-0001 Soren Odegard.pdf", "2026-0002 Eleni Shchukina.pdf"),
        files(month.resolve("invoices"), ".pdf").stream()
            .map(file -> String.valueOf(file.getFileName()))
            .toList());
    String problems = Files.readString(month.resolve("problems.csv"));
    assertEquals(2, problems.split("beyond plain ones", -1).length - 1, problems);
    assertTrue(Files.readString(month.resolve("index.html")).contains("Søren Ødegård"));

    Outcome check = run(List.of(), true, "check", folder.resolve("book").toString());
    assertTrue(check.said().contains("Visits!E3"), check.said());
    assertTrue(run(List.of(), true, "check", folder + "/Büch.xlsx").said().contains("LC_ALL"));
  }

  /** Whether Java names files in ASCII here once nothing of the environment is left. */
  private static boolean plainNames() throws IOException, InterruptedException {
    Process java =
        new ProcessBuilder(
                "env",
                "-i",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XshowSettings:properties",
                "-version")
            .redirectErrorStream(true)
            .start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    java.waitFor();
    return said.lines().anyMatch(line -> line.contains("sun.jnu.encoding = ANSI_X3.4-1968"));
  }
}
