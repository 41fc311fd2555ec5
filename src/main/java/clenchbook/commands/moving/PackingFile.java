package clenchbook.commands.moving;

import clenchbook.backup.Manifest;
import clenchbook.print.files.OwnerOnly;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a backup: a zip that any program opens, its files stored as they are. Most of a book's
 * bytes are packed already; stored, they are the same from every Java, and nothing can unpack to
 * more than the file.
 */
final class PackingFile {
  /** The first day that a zip can name: no time of day or of the run may stand in it. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private PackingFile() {}

  /**
   * Writes it.
   *
   * @param to the file
   * @param book the name of the book
   * @param files where each file lies, by the name that it bears in the backup, in order
   * @return the list that it bears
   * @throws IOException where the disk refuses, or a file changed meanwhile
   */
  static Manifest write(Path to, String book, Map<String, Path> files) throws IOException {
    Map<String, Measured> measured = new LinkedHashMap<>();
    Map<String, String> digests = new LinkedHashMap<>();
    for (Map.Entry<String, Path> file : files.entrySet()) {
      Measured figures = Measured.of(file.getValue());
      measured.put(file.getKey(), figures);
      digests.put(file.getKey(), figures.sha256());
    }
    Manifest manifest = new Manifest(book, digests);
    try (ZipOutputStream zip =
        new ZipOutputStream(new BufferedOutputStream(OwnerOnly.open(to)), StandardCharsets.UTF_8)) {
      zip.setComment(Seal.BLANK);
      list(zip, manifest.text().getBytes(StandardCharsets.UTF_8));
      for (Map.Entry<String, Measured> file : measured.entrySet()) {
        begin(zip, file.getKey(), file.getValue());
        // The zip refuses a file that is not as it was measured.
        Files.copy(files.get(file.getKey()), zip);
        zip.closeEntry();
      }
    }
    Seal.set(to);
    return manifest;
  }

  private static void list(ZipOutputStream zip, byte[] text) throws IOException {
    begin(zip, Manifest.NAME, Measured.of(new ByteArrayInputStream(text), Long.MAX_VALUE));
    zip.write(text);
    zip.closeEntry();
  }

  private static void begin(ZipOutputStream zip, String name, Measured figures) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(figures.size());
    entry.setCompressedSize(figures.size());
    entry.setCrc(figures.crc());
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
  }
}
