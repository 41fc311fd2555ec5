package clenchbook.reading.formats.parts;

import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.Message;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A package in a file. */
public final class ZipParts implements Parts {
  private final ZipFile zip;
  private final Map<String, ZipEntry> entries = new HashMap<>();

  /**
   * Opens the packed file.
   *
   * @throws IOException where it is no packed file, or its directory claims more than is accepted
   */
  public ZipParts(Path file) throws IOException {
    this.zip = new ZipFile(file.toFile());
    if (zip.size() > MOST_PARTS) {
      zip.close();
      throw new UnreadableWorkbook(Message.of("formats.tooManyParts"));
    }
    Directory directory = new Directory(Files.size(file));
    try {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        directory.judge(entry.getName(), entry.getSize(), entry.getCompressedSize());
        add(entry);
      }
    } catch (IOException refusal) {
      zip.close();
      throw refusal;
    }
  }

  /** Of two parts of one name nobody can tell which is meant, nor would every program take one. */
  private void add(ZipEntry entry) throws UnreadableWorkbook {
    ZipEntry other = entries.putIfAbsent(key(entry.getName()), entry);
    if (other != null && other.getName().equals(entry.getName())) {
      throw new UnreadableWorkbook(Message.of("formats.partTwice"));
    }
  }

  /** Some writers part folders by a backslash. */
  static String key(String name) {
    String slashed = name.replace('\\', '/');
    return (slashed.startsWith("/") ? slashed.substring(1) : slashed).toLowerCase(Locale.ROOT);
  }

  @Override
  public boolean has(String name) {
    return entries.containsKey(key(name));
  }

  @Override
  public InputStream open(String name) throws IOException {
    ZipEntry entry = entries.get(key(name));
    if (entry == null) {
      throw new FileNotFoundException("the part " + name + " is missing");
    }
    InputStream unpacked = zip.getInputStream(entry);
    return new GuardedStream(
        unpacked, name, entry.getCompressedSize(), entry.getSize(), entry.getCrc());
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
