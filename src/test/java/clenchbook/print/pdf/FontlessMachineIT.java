package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.print.html.HtmlPage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged program on a machine without fonts: fontconfig is given a configuration that lists
 * none and, where this process may, the fonts and fontconfig itself are hidden from it altogether.
 */
class FontlessMachineIT {
  private static final Path JAR = Path.of("target", "clenchbook.jar");

  private static final String HIDE =
      "for lib in $(ls -d /usr/lib/*/libfontconfig.so* 2>/dev/null); do mount --bind /dev/null"
          + " \"$lib\"; done; for d in /usr/share/fonts /usr/local/share/fonts /etc/fonts"
          + " /usr/share/fontconfig /var/cache/fontconfig; do [ -d $d ] && mount -t tmpfs none $d;"
          + " done; exec \"$@\"";

  @TempDir Path folder = Path.of("");

  @BeforeEach
  void the_program_is_packaged() {
    assertTrue(Files.isRegularFile(JAR), JAR + " is made by the build before these tests");
  }

  /** Prints an invoice, a report and a page into a folder; what runs on the fontless machine. */
  public static final class Print {
    private Print() {}

    public static void main(String[] arguments) throws IOException {
      Path to = Path.of(arguments[0]);
      PdfDocuments documents = new PdfDocuments(SampleDocuments.settings("de", "DE"));
      Files.write(
          to.resolve("invoice.pdf"), documents.invoice(SampleDocuments.invoice("de", "DE", "EUR")));
      Files.write(to.resolve("margins.pdf"), documents.report(SampleReports.margins()));
      Files.write(to.resolve("index.html"), HtmlPage.of(SamplePage.full(), "1.0.0"));
    }
  }

  /** Asks Java for the width of a word, without the program's fonts. */
  public static final class PlainJava {
    private PlainJava() {}

    public static void main(String[] arguments) {
      var picture =
          new java.awt.image.BufferedImage(9, 9, java.awt.image.BufferedImage.TYPE_INT_RGB);
      var pen = picture.createGraphics();
      pen.setFont(new java.awt.Font("SansSerif", java.awt.Font.PLAIN, 9));
      System.out.println(pen.getFontMetrics().stringWidth("width"));
    }
  }

  private record Outcome(int exit, String said) {}

  private Outcome run(boolean hidden, Class<?> main, String... arguments)
      throws IOException, InterruptedException {
    Path none = folder.resolve("fonts.conf");
    Files.writeString(
        none, "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig/>");
    List<String> command = new ArrayList<>();
    if (hidden) {
      command.addAll(List.of("unshare", "-m", "sh", "-c", HIDE, "hide"));
    }
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // Java remembers in the user's home which fonts it found; this machine has no such memory.
    command.add("-Duser.home=" + folder);
    command.addAll(List.of("-Djava.awt.headless=true", "-cp"));
    command.add(JAR + File.pathSeparator + Path.of("target", "test-classes"));
    command.add(main.getName());
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("FONTCONFIG_FILE", none.toString());
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), said);
    return new Outcome(process.exitValue(), said);
  }

  private static boolean mayHide() throws IOException, InterruptedException {
    try {
      return new ProcessBuilder("unshare", "-m", "true").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  @Test
  void plain_java_fails_on_that_machine() throws Exception {
    Outcome plain = run(false, PlainJava.class);
    assertNotEquals(0, plain.exit(), plain.said());
    if (mayHide()) {
      Outcome hidden = run(true, PlainJava.class);
      assertNotEquals(0, hidden.exit(), hidden.said());
    }
  }

  @Test
  void the_program_prints_there_what_it_prints_here() throws Exception {
    Path here = Files.createDirectories(folder.resolve("here"));
    Print.main(new String[] {here.toString()});
    List<Boolean> ways = mayHide() ? List.of(false, true) : List.of(false);
    for (boolean hidden : ways) {
      Path there = Files.createDirectories(folder.resolve("there" + hidden));
      Outcome outcome = run(hidden, Print.class, there.toString());
      assertEquals(0, outcome.exit(), outcome.said());
      assertEquals("", outcome.said(), "nothing to complain of");
      for (String file : List.of("invoice.pdf", "margins.pdf", "index.html")) {
        assertArrayEquals(
            Files.readAllBytes(here.resolve(file)), Files.readAllBytes(there.resolve(file)), file);
      }
      assertEmbedded(there.resolve("invoice.pdf"));
      assertEmbedded(there.resolve("margins.pdf"));
    }
  }

  private static void assertEmbedded(Path pdf) throws IOException {
    int fonts = 0;
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          var font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), pdf + ": " + font.getName());
          fonts++;
        }
      }
    }
    assertTrue(fonts >= 3, pdf + ": " + fonts);
  }

  @Test
  void the_fonts_unpacked_for_a_run_are_gone_after_it() throws Exception {
    Path temporary = Files.createDirectories(folder.resolve("tmp"));
    Path to = Files.createDirectories(folder.resolve("out"));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + temporary,
                "-cp",
                JAR + File.pathSeparator + Path.of("target", "test-classes"),
                Print.class.getName(),
                to.toString())
            .redirectErrorStream(true)
            .start();
    process.getInputStream().readAllBytes();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS));
    try (var left = Files.list(temporary)) {
      assertEquals(List.of(), left.map(Path::toString).toList());
    }
  }
}
