package clenchbook.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** The SHA-256 of a workbook, which a run leaves as it was. */
public final class FileSum {
  private FileSum() {}

  /**
   * The sum of a file's bytes; of a folder, of the names and bytes of its CSV files in order of
   * names.
   *
   * @param book a file or folder
   * @return 64 small hexadecimal digits
   * @throws IOException when it can't be read
   */
  public static String sha256(Path book) throws IOException {
    MessageDigest digest = digest();
    if (Files.isDirectory(book)) {
      for (Path file : csvFiles(book)) {
        digest.update(String.valueOf(file.getFileName()).getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
        add(file, digest);
      }
    } else {
      add(book, digest);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  /**
   * The files that a book is made of.
   *
   * @param book a file or folder
   * @return itself, or its CSV files in order of names
   * @throws IOException when the folder can't be listed
   */
  public static List<Path> files(Path book) throws IOException {
    return Files.isDirectory(book) ? csvFiles(book) : List.of(book);
  }

  private static List<Path> csvFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(
              file ->
                  String.valueOf(file.getFileName())
                      .toLowerCase(java.util.Locale.ROOT)
                      .endsWith(".csv"))
          .sorted(java.util.Comparator.comparing(file -> String.valueOf(file.getFileName())))
          .toList();
    }
  }

  private static void add(Path file, MessageDigest digest) throws IOException {
    byte[] buffer = new byte[1 << 16];
    try (InputStream stream = Files.newInputStream(file)) {
      for (int got = stream.read(buffer); got >= 0; got = stream.read(buffer)) {
        digest.update(buffer, 0, got);
      }
    }
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException everyJdkHasIt) {
      throw new IllegalStateException(everyJdkHasIt);
    }
  }
}
