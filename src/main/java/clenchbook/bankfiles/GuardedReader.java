package clenchbook.bankfiles;

import clenchbook.texts.Message;
import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Stops a CSV whose record never ends, as behind a quotation mark that is not closed. */
final class GuardedReader extends FilterReader {
  private static final long MOST = 1 << 20;

  private long since;

  GuardedReader(Reader reader) {
    super(reader);
  }

  /** Says that a record has ended. */
  void recordEnded() {
    since = 0;
  }

  private void count(int read) {
    since += Math.max(0, read);
    if (since > MOST) {
      throw new UnreadableStatement(Message.of("bankfiles.damaged.row"));
    }
  }

  @Override
  public int read() throws IOException {
    int read = in.read();
    count(read < 0 ? 0 : 1);
    return read;
  }

  @Override
  public int read(char[] into, int from, int length) throws IOException {
    int read = in.read(into, from, length);
    count(read);
    return read;
  }
}
