package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.Message;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.security.GeneralSecurityException;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.record.FilePassRecord;
import org.apache.poi.hssf.record.RecordInputStream;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;

/**
 * The records of a binary book, one after another, decrypted. A record that nobody reads is passed
 * over whole, whatever stands in it, so that only what is needed must be sound.
 */
final class XlsRecords implements Closeable {
  /** Begins a globals, sheet or chart part; the older programs had numbers of their own. */
  static final int BEGIN = 0x0809;

  static final int END = 0x000A;
  private static final int LOCKED = 0x002F;
  private static final int HEADER = 4;
  private static final int VERSION_8 = 0x0600;

  private final InputStream stream;
  private final Optional<String> password;
  private RecordInputStream in;
  private boolean started;
  private int version;
  private int passed;

  /** Reads the records of a stream, which is closed with them. */
  XlsRecords(InputStream stream, Optional<String> password) {
    this.stream = stream;
    this.password = password;
    this.in = new RecordInputStream(stream);
  }

  /**
   * Goes to the next record; false at the end.
   *
   * @throws EncryptedDocumentException where the book is locked and the password does not open it
   */
  boolean next() {
    if (started) {
      pass();
      if (!in.hasNextRecord()) {
        return false;
      }
    }
    started = true;
    in.nextRecord();
    passed += HEADER + in.remaining();
    if (kind() == LOCKED && version > 0) {
      unlock();
    }
    return true;
  }

  /** Leaves what is left of the record unread. */
  private void pass() {
    if (in.remaining() > 0) {
      in.readRemainder();
    }
  }

  private void unlock() {
    if (version < VERSION_8) {
      throw new EncryptedDocumentException(
          new UnreadableWorkbook(Message.of("formats.excel95Password")));
    }
    EncryptionInfo lock = new FilePassRecord(in).getEncryptionInfo();
    pass();
    try {
      if (!lock.getDecryptor().verifyPassword(password.orElse(Decryptor.DEFAULT_PASSWORD))) {
        throw new EncryptedDocumentException("wrong password");
      }
    } catch (GeneralSecurityException unknown) {
      throw new EncryptedDocumentException(unknown);
    }
    in = new RecordInputStream(stream, lock, passed);
    started = false;
    next();
  }

  /** The number that says what the record holds. */
  int kind() {
    return in.getSid() & 0xFFFF;
  }

  /** The record that stands at the reader, to be read from its first byte on. */
  RecordInputStream content() {
    return in;
  }

  /** The version that the first beginning named: 0x0500 up to 1995, 0x0600 from 1997 on. */
  void version(int found) {
    this.version = found;
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }
}
