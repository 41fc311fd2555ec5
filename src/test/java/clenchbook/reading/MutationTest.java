package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.SheetControl;
import clenchbook.jobs.JobResolver;
import clenchbook.jobs.Jobs;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.InEnglish;
import clenchbook.writing.MarkedCopyWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Books changed at random in their bytes, their XML and their cells. Whatever comes of it is read,
 * or refused in one line: no other exception, no hang, and every row is accounted for.
 */
class MutationTest {
  private static final long SEED = 20_260_314;
  private static final int PATIENCE_MILLIS = 10_000;
  private static final List<String> VALUES =
      List.of(
          "",
          "0",
          "-1",
          "1E308",
          "-1E-308",
          "NaN",
          "2958466",
          "99999999999",
          "0.3125",
          "46158",
          "#REF!",
          "=1+1",
          "tomorow",
          "03/04/2026",
          "1:75",
          "£",
          "1,2,3",
          "\u202Eevil",
          "_x0000_",
          "x".repeat(40_000),
          "Total",
          "yes",
          "../../etc",
          "CON",
          "0: 2; 00: 2",
          "5/16",
          "May-16",
          "王",
          "&amp;",
          "\uD83D\uDC0E");

  @TempDir Path folder;

  private final Random random = new Random(SEED);

  private record Seed(String name, byte[] bytes) {}

  private List<Seed> seeds() throws IOException {
    List<Seed> seeds = new ArrayList<>();
    Path npm = Path.of("src", "test", "resources", "clenchbook", "reading", "npm");
    for (String name :
        List.of(
            "exceljs.xlsx",
            "sheetjs-shared.xlsx",
            "sheetjs.xls",
            "sheetjs.ods",
            "excel4node.xlsx",
            "xlsx-populate-locked.xlsx")) {
      seeds.add(new Seed(name, Files.readAllBytes(npm.resolve(name))));
    }
    ByteArrayOutputStream starter = new ByteArrayOutputStream();
    clenchbook.writing.StarterWorkbook.write("en", "clenchbook", starter);
    seeds.add(new Seed("starter.xlsx", starter.toByteArray()));
    return seeds;
  }

  @Test
  void five_hundred_changed_books_are_read_or_refused() throws IOException {
    mutate(500);
  }

  @Test
  @Tag("demand")
  void twenty_thousand_changed_books_are_read_or_refused() throws IOException {
    mutate(20_000);
  }

  private void mutate(int count) throws IOException {
    List<Seed> seeds = seeds();
    int refused = 0;
    for (int number = 0; number < count; number++) {
      Seed seed = seeds.get(random.nextInt(seeds.size()));
      byte[] changed = changed(seed);
      Path file = Files.write(folder.resolve(seed.name()), changed);
      refused += check(file, "mutant " + number + " of seed " + SEED + ", from " + seed.name());
    }
    System.out.println(
        count + " mutants, seed " + SEED + ": " + refused + " refused, the rest read");
  }

  /** One when the book was refused in one line, none when it was read and adds up. */
  private static int check(Path file, String which) {
    long start = System.nanoTime();
    int refused = 0;
    try {
      ReadResult result =
          BookReader.read(file, new ReadOptions(Optional.of("hoof"), Locale.UK, rows -> {}));
      addsUp(result, which);
      MarkedCopyWriter.write(
          file,
          Optional.of("hoof"),
          result.problems(),
          InEnglish.TEXTS,
          OutputStream.nullOutputStream());
    } catch (UnreadableWorkbook refusal) {
      assertEquals(1, InEnglish.said(refusal.message()).lines().count(), which);
      refused = 1;
    } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError broken) {
      throw new AssertionError(which, broken);
    }
    long millis = (System.nanoTime() - start) / 1_000_000;
    if (millis > PATIENCE_MILLIS) {
      throw new AssertionError(which + " took " + millis + " ms");
    }
    return refused;
  }

  /** Rows are used, held or ignored: the rows that became records are the used ones. */
  private static void addsUp(ReadResult result, String which) {
    Jobs jobs = JobResolver.resolve(result.book());
    List<Problem> all = new ArrayList<>(result.problems());
    all.addAll(jobs.problems());
    for (SheetControl control : result.book().controls()) {
      long held =
          all.stream()
              .filter(p -> p.severity() == Severity.HELD && p.at().sheet().equals(control.sheet()))
              .map(p -> p.at().row())
              .distinct()
              .count();
      long used = control.rows() - held - control.ignored();
      if (used < 0) {
        throw new AssertionError(which + ": " + control + " with " + held + " held");
      }
    }
  }

  private byte[] changed(Seed seed) throws IOException {
    boolean zipped = seed.bytes()[0] == 'P';
    return switch (zipped ? random.nextInt(4) : 0) {
      case 0 -> changedBytes(seed.bytes());
      default -> changedParts(seed.bytes());
    };
  }

  private byte[] changedBytes(byte[] bytes) {
    byte[] changed = bytes.clone();
    int changes = 1 + random.nextInt(8);
    for (int i = 0; i < changes; i++) {
      changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
    }
    return random.nextInt(5) == 0
        ? java.util.Arrays.copyOf(changed, random.nextInt(changed.length))
        : changed;
  }

  private byte[] changedParts(byte[] bytes) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    List<String> names =
        parts.keySet().stream().filter(name -> name.matches(".*\\.(xml|rels)")).toList();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      String name = names.get(random.nextInt(names.size()));
      String xml = new String(parts.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
      if (random.nextInt(12) == 0) {
        parts.remove(name);
      } else {
        parts.put(name, changedXml(xml).getBytes(StandardCharsets.UTF_8));
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private String changedXml(String xml) {
    if (xml.length() < 10) {
      return xml;
    }
    int at = random.nextInt(xml.length());
    return switch (random.nextInt(6)) {
      case 0 -> withoutElement(xml, at);
      case 1 -> withElementTwice(xml, at);
      case 2, 3 -> withOtherText(xml, at);
      case 4 -> withOtherAttribute(xml, at);
      default -> xml.substring(0, at) + (char) random.nextInt(0x300) + xml.substring(at + 1);
    };
  }

  private static String withoutElement(String xml, int at) {
    int from = xml.indexOf('<', at);
    int to = xml.indexOf('>', Math.max(0, from));
    return from < 0 || to < 0 ? xml : xml.substring(0, from) + xml.substring(to + 1);
  }

  private static String withElementTwice(String xml, int at) {
    int from = xml.indexOf("<c ", at);
    int to = xml.indexOf("</c>", Math.max(0, from));
    return from < 0 || to < 0 ? xml : xml.substring(0, to + 4) + xml.substring(from);
  }

  private String withOtherText(String xml, int at) {
    int from = xml.indexOf('>', at) + 1;
    int to = xml.indexOf('<', from);
    return from < 1 || to < 0 ? xml : xml.substring(0, from) + anyValue() + xml.substring(to);
  }

  private String withOtherAttribute(String xml, int at) {
    int from = xml.indexOf("=\"", at) + 2;
    int to = xml.indexOf('"', from);
    return from < 2 || to < 0 ? xml : xml.substring(0, from) + anyValue() + xml.substring(to);
  }

  private String anyValue() {
    return VALUES.get(random.nextInt(VALUES.size()));
  }
}
