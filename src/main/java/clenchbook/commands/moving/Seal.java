package clenchbook.commands.moving;

import clenchbook.backup.UnsoundBackup;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The SHA-256 of all of a packed file but its last bytes, which hold it: a comment at the end of a
 * zip (APPNOTE.TXT, section 4.3.16, from memory). A zip repeats what it says of each file and
 * leaves room between; with the seal a damaged byte anywhere is noticed before anything is read.
 */
final class Seal {
  private static final int LENGTH = 64;

  /** Stands where the seal will be. */
  static final String BLANK = "0".repeat(LENGTH);

  private Seal() {}

  /** Seals a file that ends with a blank seal. */
  static void set(Path file) throws IOException {
    ByteBuffer seal = StandardCharsets.US_ASCII.encode(of(file));
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      long at = channel.size() - LENGTH;
      while (seal.hasRemaining()) {
        at += channel.write(seal, at);
      }
      channel.force(true);
    }
  }

  /**
   * Looks whether a file is as it was sealed.
   *
   * @throws UnsoundBackup where it is not
   */
  static void check(Path file) throws IOException, UnsoundBackup {
    long size = Files.size(file);
    if (size < LENGTH || !of(file).equals(last(file, size))) {
      throw new UnsoundBackup(Message.of("backup.noneOrDamaged"));
    }
  }

  private static String of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return Measured.of(in, Files.size(file) - LENGTH).sha256();
    }
  }

  private static String last(Path file, long size) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      in.skipNBytes(size - LENGTH);
      return new String(in.readNBytes(LENGTH), StandardCharsets.ISO_8859_1);
    }
  }
}
