package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.eventusermodel.HSSFEventFactory;
import org.apache.poi.hssf.eventusermodel.HSSFRequest;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** A book of the binary format of 1997 to 2003, read as a stream of records by Apache POI. */
final class XlsSource implements TableSource {
  private static final List<String> STREAMS = List.of("Workbook", "WORKBOOK", "Book", "BOOK");

  private final POIFSFileSystem file;
  private final String stream;
  private final Optional<String> password;
  private final XlsListener book;

  /** Opens the book; the file is closed with it, and at once where it is none. */
  XlsSource(POIFSFileSystem file, Optional<String> password) throws IOException {
    this.file = file;
    this.password = password;
    this.stream = STREAMS.stream().filter(file.getRoot()::hasEntry).findFirst().orElse("");
    try {
      if (stream.isEmpty()) {
        throw new UnreadableWorkbook("the file is an office document, but no workbook");
      }
      this.book = pass(new XlsListener(-1, row -> false));
      if (book.sheetNames().isEmpty()) {
        throw new UnreadableWorkbook("the workbook has no sheet");
      }
    } catch (DamagedSheet damaged) {
      file.close();
      throw new UnreadableWorkbook(
          "the file is damaged: its list of sheets can't be read", damaged);
    } catch (IOException unreadable) {
      file.close();
      throw unreadable;
    }
  }

  /** One pass over the records, up to where the listener has what it wants. */
  private XlsListener pass(XlsListener listener) throws IOException {
    HSSFRequest request = new HSSFRequest();
    request.addListenerForAllRecords(listener);
    Biff8EncryptionKey.setCurrentUserPassword(password.orElse(null));
    try (InputStream records = file.createDocumentInputStream(stream)) {
      new HSSFEventFactory().abortableProcessEvents(request, records);
      listener.finish();
      return listener;
    } catch (EncryptedDocumentException locked) {
      throw encrypted(password, locked);
    } catch (OldExcelFormatException old) {
      throw new UnreadableWorkbook("the file is older than 1997; save it as .xlsx", old);
    } catch (XlsListener.TakerFailed failed) {
      throw failed.failure();
    } catch (IOException | RuntimeException | StackOverflowError broken) {
      throw new DamagedSheet("the sheet breaks off", broken);
    } catch (org.apache.poi.hssf.eventusermodel.HSSFUserException stopped) {
      return listener;
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
  }

  static UnreadableWorkbook encrypted(Optional<String> password, Throwable cause) {
    return new UnreadableWorkbook(
        password.isPresent()
            ? "the file is protected by a password, and the one given does not open it"
            : "the file is protected by a password; save a copy without one, or give it in the"
                + " environment variable CLENCHBOOK_WORKBOOK_PASSWORD",
        cause);
  }

  @Override
  public List<String> sheetNames() {
    return book.sheetNames();
  }

  @Override
  public boolean countsFrom1904() {
    return book.isFrom1904();
  }

  @Override
  public List<MergedCells> rows(int sheet, RowSink sink) throws IOException {
    return pass(new XlsListener(book.recordedPlace(sheet), sink)).merged();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
