package clenchbook.image;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.sqlite.util.OSInfo;

/**
 * The program's jar as the image carries it: SQLite's machine code of this one machine, laid beside
 * the jar; without tables for debuggers; of some plainly linked libraries only what can be named.
 */
final class LeanJar {
  private static final String NATIVES = "org/sqlite/native/";

  /**
   * Libraries under the Apache licence that find none of their own classes by a name put together
   * at run time. All others stay whole.
   */
  private static final List<String> MAY_GO =
      List.of(
          "com/ctc/wstx/shaded/",
          "com/google/zxing/",
          "org/apache/commons/codec/",
          "org/apache/commons/collections4/",
          "org/apache/commons/compress/",
          "org/apache/commons/io/",
          "org/apache/commons/lang3/",
          "org/apache/commons/math3/",
          "org/apache/commons/numbers/",
          "org/apache/commons/rng/",
          "org/apache/commons/statistics/",
          "org/apache/commons/text/");

  /** A fixed time: the same jar from the same classes. */
  private static final LocalDateTime MADE = LocalDateTime.of(2026, 1, 1, 0, 0);

  private LeanJar() {}

  static void write(Place place) throws IOException {
    Map<String, byte[]> files = read(place.target().resolve("clenchbook.jar"));
    layNativesBeside(files, place.lib());
    files.keySet().removeIf(file -> file.startsWith(NATIVES) || isBuildersNote(file));
    Set<String> kept = Reachable.of(files, MAY_GO);
    files
        .keySet()
        .removeIf(file -> Reachable.isClass(file) && !kept.contains(Reachable.name(file)));
    files.replaceAll((file, bytes) -> Reachable.isClass(file) ? withoutTables(bytes) : bytes);
    pack(files, place.jar());
  }

  private static boolean isBuildersNote(String file) {
    return file.startsWith("META-INF/maven/") && !file.contains("LICENSE");
  }

  private static Map<String, byte[]> read(Path jar) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        if (!entry.isDirectory()) {
          files.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
        }
      }
    }
    return files;
  }

  /** Read from there, it need not be unpacked into a temporary folder at each start. */
  private static void layNativesBeside(Map<String, byte[]> files, Path lib) throws IOException {
    String ours = NATIVES + OSInfo.getNativeLibFolderPathForCurrentOS() + "/";
    int found = 0;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      if (file.getKey().startsWith(ours)) {
        Files.write(lib.resolve(file.getKey().substring(ours.length())), file.getValue());
        found++;
      }
    }
    if (found != 1) {
      throw new IOException(found + " files of SQLite for this machine: " + ours);
    }
  }

  private static byte[] withoutTables(byte[] bytes) {
    ClassWriter writer = new ClassWriter(0);
    new ClassReader(bytes).accept(writer, ClassReader.SKIP_DEBUG);
    return writer.toByteArray();
  }

  private static void pack(Map<String, byte[]> files, Path jar) throws IOException {
    try (ZipOutputStream out =
        new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(jar)))) {
      out.setLevel(Deflater.BEST_COMPRESSION);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(MADE);
        out.putNextEntry(entry);
        out.write(file.getValue());
        out.closeEntry();
      }
    }
    // Java takes an archive of classes only for a jar of the very same time, and some formats that
    // folders are packed in know even seconds only.
    Files.setLastModifiedTime(jar, FileTime.from(MADE.toInstant(ZoneOffset.UTC)));
  }
}
