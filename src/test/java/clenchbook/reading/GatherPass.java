package clenchbook.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** The program's gathering alone, for measuring: a workbook read into the book's records. */
public final class GatherPass {
  private GatherPass() {}

  /** {@code GatherPass FILE} */
  public static void main(String[] args) throws IOException {
    ReadResult result =
        BookReader.read(Path.of(args[0]), new ReadOptions(Optional.empty(), Locale.UK, rows -> {}));
    System.out.println(result.book().visits().size());
  }
}
