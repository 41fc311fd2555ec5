package clenchbook.bankfiles;

import java.io.IOException;
import java.io.Reader;
import org.jspecify.annotations.Nullable;

/** Lines of a text, never held longer than a bank writes them. Not thread-safe. */
final class LineSource {
  private static final int LONGEST = 4_000;

  private final Reader reader;
  private boolean afterReturn;
  private boolean ended;

  LineSource(Reader reader) {
    this.reader = reader;
  }

  /** The next line without its end, cut where it is too long; null at the end. */
  @Nullable String next() throws IOException {
    if (ended) {
      return null;
    }
    StringBuilder line = new StringBuilder(80);
    while (true) {
      int c = reader.read();
      if (c < 0) {
        ended = true;
        return line.isEmpty() ? null : line.toString();
      }
      boolean second = c == '\n' && afterReturn;
      afterReturn = c == '\r';
      if (second) {
        continue;
      }
      if (c == '\n' || c == '\r') {
        return line.toString();
      }
      if (line.length() < LONGEST) {
        line.append((char) c);
      }
    }
  }
}
