package clenchbook.reading.formats.xls;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/**
 * Binary books made by hand, record by record. The layouts are those of the OpenOffice.org
 * documentation of the Excel file format, chapter 5, and of [MS-XLS], 2.4, both from memory;
 * LibreOffice finds the same cells in such books, though it reckons their formulas anew.
 */
final class Biff {
  static final int YEAR_97 = 0x0600;
  static final int YEAR_95 = 0x0500;
  private static final int BOOK = 0x0005;
  private static final int SHEET = 0x0010;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final List<Integer> listed = new ArrayList<>();
  private final List<Integer> begun = new ArrayList<>();
  private final int version;

  private Biff(int version) {
    this.version = version;
  }

  /** Begins a book of one of the two versions, with three styles: plain, day, and money. */
  static Biff book(int version, String... sheets) {
    Biff book = new Biff(version).begin(BOOK).of(0x0042, 2).u16(version == YEAR_97 ? 1200 : 1252);
    byte[] day = book.shortText("dd/mm/yyyy");
    book.of(0x041E, 2 + (version == YEAR_97 ? 1 : 0) + day.length).u16(164);
    if (version == YEAR_97) {
      book.u16(10).raw(Arrays.copyOfRange(day, 1, day.length));
    } else {
      book.raw(day);
    }
    for (int format : new int[] {0, 164, 4}) {
      book.of(0x00E0, version == YEAR_97 ? 20 : 16).u16(0).u16(format);
      book.raw(new byte[version == YEAR_97 ? 16 : 12]);
    }
    for (String sheet : sheets) {
      byte[] name = book.shortText(sheet);
      book.of(0x0085, 6 + name.length);
      book.listed.add(book.bytes.size());
      book.u32(0).u8(0).u8(0).raw(name);
    }
    return book;
  }

  Biff begin(int part) {
    of(0x0809, version == YEAR_97 ? 16 : 8).u16(version).u16(part).u16(0x0DBB).u16(1996);
    return version == YEAR_97 ? u32(0).u32(6) : this;
  }

  Biff sheet() {
    begun.add(bytes.size());
    return begin(SHEET);
  }

  Biff end() {
    return of(0x000A, 0);
  }

  /** Begins a record of a kind and a length. */
  Biff of(int kind, int length) {
    return u16(kind).u16(length);
  }

  Biff number(int row, int column, int style, double value) {
    return of(0x0203, 14).at(row, column, style).f64(value);
  }

  /** The record of a formula, with a token of the number 1. */
  Biff formula(int kind, int row, int column, long result) {
    return of(kind, 25).at(row, column, 0).u64(result).u16(0).u32(0).u16(3).u8(0x1E).u16(1);
  }

  Biff at(int row, int column, int style) {
    return u16(row).u16(column).u16(style);
  }

  Biff label(int row, int column, String text) {
    byte[] written = longText(text);
    return of(0x0204, 6 + written.length).at(row, column, 0).raw(written);
  }

  Biff result(String text) {
    byte[] written = longText(text);
    return of(0x0207, written.length).raw(written);
  }

  private byte[] longText(String text) {
    Biff written = new Biff(version).u16(text.length());
    if (version == YEAR_97) {
      written.u8(1).raw(text.getBytes(StandardCharsets.UTF_16LE));
    } else {
      written.raw(text.getBytes(Charset.forName("windows-1252")));
    }
    return written.bytes.toByteArray();
  }

  private byte[] shortText(String text) {
    Biff written = new Biff(version).u8(text.length());
    if (version == YEAR_97) {
      written.u8(0);
    }
    return written.raw(text.getBytes(StandardCharsets.ISO_8859_1)).bytes.toByteArray();
  }

  Biff u8(int value) {
    bytes.write(value);
    return this;
  }

  Biff u16(int value) {
    return u8(value & 0xFF).u8(value >> 8 & 0xFF);
  }

  Biff u32(int value) {
    return u16(value & 0xFFFF).u16(value >>> 16);
  }

  Biff u64(long value) {
    return raw(ByteBuffer.allocate(8).order(ByteOrder.LITTLE_ENDIAN).putLong(value).array());
  }

  Biff f64(double value) {
    return u64(Double.doubleToLongBits(value));
  }

  Biff raw(byte[] more) {
    bytes.writeBytes(more);
    return this;
  }

  /** Writes the records into the container that a spreadsheet program expects. */
  Path write(Path file) throws IOException {
    try (POIFSFileSystem container = new POIFSFileSystem();
        OutputStream out = Files.newOutputStream(file)) {
      String stream = version == YEAR_97 ? "Workbook" : "Book";
      container.createDocument(new ByteArrayInputStream(withPositions()), stream);
      container.writeFilesystem(out);
    }
    return file;
  }

  /** The list of sheets tells where each begins; one that is not there is listed at the end. */
  private byte[] withPositions() {
    ByteBuffer all = ByteBuffer.wrap(bytes.toByteArray()).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < listed.size(); i++) {
      all.putInt(listed.get(i), i < begun.size() ? begun.get(i) : bytes.size());
    }
    return all.array();
  }
}
