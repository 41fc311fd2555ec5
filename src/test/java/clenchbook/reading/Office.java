package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * LibreOffice as a second reader and writer. A machine that has none may skip; the builder may not.
 */
public final class Office {
  private static final int PATIENCE_SECONDS = 120;

  private Office() {}

  /** Skips a test where there is no LibreOffice, except on the builder, where there must be one. */
  public static void require() {
    boolean there =
        Files.isExecutable(Path.of("/usr/bin/soffice"))
            || Files.isExecutable(Path.of("/usr/local/bin/soffice"));
    assumeTrue(there || System.getenv("CI") != null, "LibreOffice is not installed");
    assertTrue(there, "LibreOffice is not installed");
  }

  /** Converts a workbook, as on a British machine; the new file or files stand in the folder. */
  public static void convert(Path book, String form, Path into) {
    try {
      Path profile = Files.createTempDirectory("office");
      ProcessBuilder builder =
          new ProcessBuilder(
              "soffice",
              "--headless",
              "-env:UserInstallation=" + profile.toUri(),
              "--convert-to",
              form,
              "--outdir",
              into.toString(),
              book.toString());
      builder.environment().put("LC_ALL", "en_GB.UTF-8");
      builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
      Process office = builder.start();
      boolean ended = office.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
      office.destroy();
      assertTrue(ended && office.exitValue() == 0, "LibreOffice failed on " + book);
    } catch (IOException failed) {
      throw new java.io.UncheckedIOException(failed);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }
}
