package clenchbook.print.files;

import java.io.IOException;
import java.io.OutputStream;

/** What goes into a file; asked once. */
@FunctionalInterface
public interface OutputFile {
  /**
   * Writes the content.
   *
   * @param out where to; the caller closes it
   * @throws IOException when it can't be written
   */
  void writeTo(OutputStream out) throws IOException;

  /**
   * A file of these bytes.
   *
   * @param bytes its content
   * @return the file
   */
  static OutputFile of(byte[] bytes) {
    return out -> out.write(bytes);
  }
}
