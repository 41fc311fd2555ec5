package clenchbook.commandlife;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Random lives typed at the command line over real files, against plain sums over the rows; see
 * docs/decisions.md.
 */
class CommandLineLifeTest {
  private static final long SEED = Long.getLong("commandlife.seed", 30);
  private static final int LENGTH = Integer.getInteger("commandlife.length", 12);

  @TempDir private Path folder;

  @Test
  void three_lives_at_the_command_line_end_as_plain_sums_say() throws IOException {
    live(3);
  }

  @Test
  @Tag("demand")
  void many_lives_at_the_command_line_end_as_plain_sums_say() throws IOException {
    live(Integer.getInteger("commandlife.count", 30));
  }

  private void live(int lives) throws IOException {
    for (long seed = SEED; seed < SEED + lives; seed++) {
      new CommandLife(seed, folder.resolve("life " + seed)).live(LENGTH);
    }
  }
}
