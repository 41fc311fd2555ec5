package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.Message;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/**
 * A book of the binary format: that of 1997 to 2003, and that of 1993 to 1995, which differs in how
 * it writes texts. Apache POI opens the container, decrypts, and parts the records.
 */
final class XlsSource implements TableSource {
  private static final List<String> STREAMS = List.of("Workbook", "WORKBOOK", "Book", "BOOK");

  private final POIFSFileSystem file;
  private final String stream;
  private final Optional<String> password;
  private final XlsBook book;
  private final List<XlsBook.Sheet> sheets;

  /** Opens the book; the file is closed with it, and at once where it is none. */
  XlsSource(POIFSFileSystem file, Optional<String> password) throws IOException {
    this.file = file;
    this.password = password;
    this.stream = STREAMS.stream().filter(file.getRoot()::hasEntry).findFirst().orElse("");
    try {
      if (stream.isEmpty()) {
        throw new UnreadableWorkbook(Message.of("formats.officeDocument"));
      }
      this.book = readBook();
      this.sheets = book.sheets();
      if (sheets.isEmpty()) {
        throw new UnreadableWorkbook(Message.of("formats.noSheet"));
      }
    } catch (IOException unreadable) {
      file.close();
      throw unreadable;
    }
  }

  private XlsBook readBook() throws IOException {
    try (XlsRecords records = records()) {
      return sound(() -> XlsBook.read(records));
    } catch (DamagedSheet damaged) {
      throw new UnreadableWorkbook(Message.of("formats.damagedList"), damaged);
    }
  }

  private XlsRecords records() throws IOException {
    try {
      return new XlsRecords(file.createDocumentInputStream(stream), password);
    } catch (IOException | RuntimeException broken) {
      throw new DamagedSheet("the sheet breaks off", broken);
    }
  }

  /** What the library throws means damage, or a lock. */
  private <T> T sound(Supplier<T> reading) throws IOException {
    try {
      return reading.get();
    } catch (EncryptedDocumentException locked) {
      throw UnreadableWorkbook.within(locked, encrypted(password, locked));
    } catch (RuntimeException | StackOverflowError broken) {
      throw new DamagedSheet("the sheet breaks off", broken);
    }
  }

  static UnreadableWorkbook encrypted(Optional<String> password, Throwable cause) {
    return new UnreadableWorkbook(
        password.isPresent() ? Message.of("formats.wrongPassword") : Message.of("formats.password"),
        cause);
  }

  @Override
  public List<String> sheetNames() {
    return sheets.stream().map(XlsBook.Sheet::name).toList();
  }

  @Override
  public boolean isHidden(int sheet) {
    return sheets.get(sheet).hidden();
  }

  @Override
  public boolean countsFrom1904() {
    return book.isFrom1904();
  }

  @Override
  public List<MergedCells> rows(int sheet, RowSink sink) throws IOException {
    try (XlsRecords records = records()) {
      XlsBook.Sheet wanted = sheets.get(sheet);
      if (!sound(() -> XlsSheetPass.find(records, wanted.place()))) {
        throw UnreadableWorkbook.withoutSheet(wanted.name());
      }
      XlsSheetPass pass = new XlsSheetPass(records, book);
      Optional<Row> row = sound(pass::next);
      while (row.isPresent() && sink.take(row.get())) {
        row = sound(pass::next);
      }
      return pass.merged();
    }
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
