package clenchbook.commands.moving;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.CRC32;

/**
 * What a file holds, in figures.
 *
 * @param size its bytes
 * @param crc its CRC-32, which a packed file needs before the bytes themselves
 * @param sha256 in small hexadecimal digits
 */
record Measured(long size, long crc, String sha256) {

  static Measured of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return of(in, Long.MAX_VALUE);
    }
  }

  /**
   * Measures to the end, or as far as is asked.
   *
   * @param most the bytes after which the rest does not count
   */
  static Measured of(InputStream in, long most) throws IOException {
    MessageDigest digest = newDigest();
    CRC32 crc = new CRC32();
    byte[] part = new byte[1 << 16];
    long size = 0;
    while (size < most) {
      int got = in.read(part, 0, (int) Math.min(part.length, most - size));
      if (got < 0) {
        break;
      }
      digest.update(part, 0, got);
      crc.update(part, 0, got);
      size += got;
    }
    return new Measured(size, crc.getValue(), HexFormat.of().formatHex(digest.digest()));
  }

  static MessageDigest newDigest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
