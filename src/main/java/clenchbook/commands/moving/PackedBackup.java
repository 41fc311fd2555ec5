package clenchbook.commands.moving;

import clenchbook.backup.Directory;
import clenchbook.backup.Manifest;
import clenchbook.backup.PackedEntry;
import clenchbook.backup.UnsoundBackup;
import clenchbook.print.files.OwnerOnly;
import clenchbook.texts.Message;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** A backup that is sealed, whose directory is sound and agrees with its list. */
final class PackedBackup implements Closeable {
  private final ZipFile zip;
  private final Manifest manifest;

  private PackedBackup(ZipFile zip, Manifest manifest) {
    this.zip = zip;
    this.manifest = manifest;
  }

  /**
   * Opens a backup and looks over all that it declares; no file in it but its list is read.
   *
   * @throws UnsoundBackup where it is none, or damaged
   */
  static PackedBackup open(Path file) throws IOException, UnsoundBackup {
    Seal.check(file);
    ZipFile zip = zip(file);
    try {
      Directory directory = new Directory(entries(zip), java.nio.file.Files.size(file));
      Manifest manifest = Manifest.parse(list(zip));
      directory.agreesWith(manifest);
      return new PackedBackup(zip, manifest);
    } catch (IOException | UnsoundBackup | RuntimeException refusal) {
      zip.close();
      throw refusal;
    }
  }

  private static ZipFile zip(Path file) throws UnsoundBackup {
    try {
      return ZipFile.builder().setFile(file.toFile()).setUseUnicodeExtraFields(false).get();
    } catch (IOException | IllegalArgumentException unreadable) {
      throw new UnsoundBackup(Message.of("backup.cantUnpack"));
    }
  }

  private static List<PackedEntry> entries(ZipFile zip) {
    List<PackedEntry> entries = new ArrayList<>();
    for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
      boolean stored =
          entry.getMethod() == ZipEntry.STORED
              && !entry.getGeneralPurposeBit().usesEncryption()
              && entry.getCompressedSize() == entry.getSize();
      boolean plain = !entry.isUnixSymlink() && !entry.isDirectory();
      entries.add(new PackedEntry(entry.getName(), entry.getSize(), plain, stored));
    }
    return entries;
  }

  private static String list(ZipFile zip) throws IOException {
    try (InputStream in = zip.getInputStream(zip.getEntry(Manifest.NAME))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The list that it bears. */
  Manifest manifest() {
    return manifest;
  }

  /**
   * Reads every file and holds its digest against the list; nothing is written.
   *
   * @throws UnsoundBackup where one differs
   */
  void verify() throws IOException, UnsoundBackup {
    for (String name : manifest.digests().keySet()) {
      read(name, OutputStream.nullOutputStream());
    }
  }

  /**
   * Unpacks all below a folder, which is made.
   *
   * @throws UnsoundBackup where a digest differs
   */
  void unpack(Path folder) throws IOException, UnsoundBackup {
    Path below = folder.toAbsolutePath().normalize();
    for (String name : manifest.digests().keySet()) {
      Path target = below.resolve(name).normalize();
      Path parent = target.getParent();
      // The names were judged; a file system with rules of its own has the last word.
      if (parent == null || target.equals(below) || !target.startsWith(below)) {
        throw new UnsoundBackup(Message.of("backup.aNameLeadsOut"));
      }
      OwnerOnly.makeFolders(parent);
      try (OutputStream out = OwnerOnly.open(target)) {
        read(name, out);
      }
    }
  }

  private void read(String name, OutputStream to) throws IOException, UnsoundBackup {
    MessageDigest digest = Measured.newDigest();
    try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
      in.transferTo(new DigestOutputStream(to, digest));
    }
    Map<String, String> digests = manifest.digests();
    if (!HexFormat.of().formatHex(digest.digest()).equals(digests.get(name))) {
      throw new UnsoundBackup(Message.of("backup.fileChanged"));
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
