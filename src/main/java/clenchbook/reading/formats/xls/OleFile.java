package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.formats.parts.MemoryParts;
import clenchbook.reading.formats.parts.Parts;
import clenchbook.reading.formats.xlsx.XlsxSource;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Opens what stands in the older kind of container: a binary book, or an encrypted newer one. */
public final class OleFile {
  private static final int MOST_DECRYPTED = 200 << 20;

  private OleFile() {}

  /**
   * Opens a file in a compound container: an old workbook, or a new one under a password.
   *
   * @throws IOException where it is neither, or the password does not open it
   */
  public static TableSource open(Path file, Optional<String> password) throws IOException {
    POIFSFileSystem container = container(file);
    if (!container.getRoot().hasEntry(Decryptor.DEFAULT_POIFS_ENTRY)) {
      return new XlsSource(container, password);
    }
    try (container) {
      return new XlsxSource(parts(decrypted(container, password)));
    }
  }

  private static Parts parts(byte[] decrypted) throws IOException {
    try {
      return new MemoryParts(decrypted);
    } catch (IOException | RuntimeException damaged) {
      throw new UnreadableWorkbook(Message.of("formats.damaged"), damaged);
    }
  }

  private static POIFSFileSystem container(Path file) throws IOException {
    try {
      return new POIFSFileSystem(file.toFile(), true);
    } catch (IOException | RuntimeException damaged) {
      throw new UnreadableWorkbook(Message.of("formats.damaged"), damaged);
    }
  }

  private static byte[] decrypted(POIFSFileSystem container, Optional<String> password)
      throws IOException {
    try {
      Decryptor decryptor = Decryptor.getInstance(new EncryptionInfo(container));
      if (!decryptor.verifyPassword(password.orElse(Decryptor.DEFAULT_PASSWORD))) {
        throw XlsSource.encrypted(password, new EncryptedDocumentException("wrong password"));
      }
      try (InputStream plain = decryptor.getDataStream(container)) {
        byte[] bytes = plain.readNBytes(MOST_DECRYPTED);
        if (plain.read() >= 0) {
          throw new UnreadableWorkbook(Message.of("formats.encryptedTooLarge"));
        }
        return bytes;
      }
    } catch (UnreadableWorkbook refusal) {
      throw refusal;
    } catch (GeneralSecurityException | IOException | RuntimeException unknown) {
      throw new UnreadableWorkbook(Message.of("formats.encryptedUnknown"), unknown);
    }
  }
}
