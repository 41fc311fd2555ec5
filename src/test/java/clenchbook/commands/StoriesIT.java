package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;

/**
 * The stories, walked on the packaged program by its launcher. The first command lays its classes
 * ready, so that the others start in about a second. On demand, for it takes a minute; {@link
 * StoriesTest} walks the same stories on each build.
 */
@Tag("demand")
class StoriesIT extends Stories {
  private static final Path LAUNCHER = Path.of("target", "clenchbook").toAbsolutePath();

  @TempDir private static Path cache;

  @BeforeAll
  static void the_launcher_is_for_linux_and_macos() {
    assumeFalse(File.separatorChar == '\\');
  }

  @Override
  Typed typed(String command, Path book, String... options) throws IOException {
    List<String> words = new ArrayList<>(List.of(LAUNCHER.toString()));
    words.addAll(Typed.words(command, book, options));
    Path out = cache.resolve("out.txt");
    Path err = cache.resolve("err.txt");
    ProcessBuilder program =
        new ProcessBuilder(words).redirectOutput(out.toFile()).redirectError(err.toFile());
    program.environment().put("JAVA_HOME", System.getProperty("java.home"));
    program.environment().put("XDG_CACHE_HOME", cache.toString());
    return new Typed(ended(program.start()), Files.readString(out), Files.readString(err));
  }

  private static int ended(Process program) throws IOException {
    try {
      assertTrue(program.waitFor(5, TimeUnit.MINUTES), "it does not end");
      return program.exitValue();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }
}
