package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the books that are measured on into a folder, unless they are there. */
public final class MakeBooks {
  private MakeBooks() {}

  /** {@code MakeBooks FOLDER life|wide ROWS} */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    int rows = Integer.parseInt(args[2]);
    if (args[1].equals("wide")) {
      WideBook.write(folder.resolve("wide-" + rows + ".xlsx"), rows);
    } else {
      WorkingLife.write(folder.resolve("life-" + rows + ".xlsx"), rows);
    }
  }
}
