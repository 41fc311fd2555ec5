package clenchbook.reading.formats.parts;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;

/** The parts of a zipped package by their names, which match ignoring case. */
public interface Parts extends Closeable {
  /** The most parts a package may have. */
  int MOST_PARTS = 20_000;

  /** Whether there is a part of this name. */
  boolean has(String name);

  /**
   * Opens a part, guarded.
   *
   * @throws IOException when there is none, or it can't be read
   */
  InputStream open(String name) throws IOException;
}
