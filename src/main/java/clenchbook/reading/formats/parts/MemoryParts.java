package clenchbook.reading.formats.parts;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** A package in memory: what was decrypted never touches the disk. */
public final class MemoryParts implements Parts {
  private final ZipFile zip;
  private final Map<String, ZipArchiveEntry> entries = new HashMap<>();

  /**
   * Takes the whole of a packed file from memory.
   *
   * @throws IOException where the bytes are no packed file
   */
  public MemoryParts(byte[] bytes) throws IOException {
    this.zip =
        ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get();
    Directory directory = new Directory(bytes.length);
    for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
      directory.judge(entry.getName(), entry.getSize(), entry.getCompressedSize());
      if (entries.size() < MOST_PARTS) {
        entries.putIfAbsent(ZipParts.key(entry.getName()), entry);
      }
    }
  }

  @Override
  public boolean has(String name) {
    return entries.containsKey(ZipParts.key(name));
  }

  @Override
  public InputStream open(String name) throws IOException {
    ZipArchiveEntry entry = entries.get(ZipParts.key(name));
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
