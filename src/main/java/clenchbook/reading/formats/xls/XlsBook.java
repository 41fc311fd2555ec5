package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.CellFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.record.RecordInputStream;
import org.apache.poi.hssf.record.SSTRecord;

/**
 * What holds for a whole binary book: its sheets, formats and texts. Microsoft's [MS-XLS], 2.1.7.20
 * and 2.4 (from memory); the numbers of records agree with those that Apache POI gives.
 */
final class XlsBook {
  private static final int CODE_PAGE = 0x0042;
  private static final int COUNTS_FROM_1904 = 0x0022;
  private static final int FORMAT = 0x041E;
  private static final int STYLE = 0x00E0;
  private static final int SHEET = 0x0085;
  private static final int SHARED_TEXTS = 0x00FC;
  private static final int OF_CELLS = 0;
  private static final int STATE = 0x03;
  private static final int A_SHEET = 0x0010;
  private static final int MOST = 70_000;

  /**
   * A part of the book that holds cells.
   *
   * @param place where its records stand among those of all parts, charts and macros included; -1
   *     where there is nothing but the sheet
   * @param hidden whether the book does not show it
   */
  record Sheet(String name, int place, boolean hidden) {}

  private record Part(String name, int position, boolean ofCells, boolean hidden) {}

  private final XlsTexts texts = new XlsTexts();
  private final List<Part> parts = new ArrayList<>();
  private final Map<Integer, CellFormat> formats = new HashMap<>();
  private final List<Integer> formatOfStyle = new ArrayList<>();
  private boolean from1904;
  private boolean isOneSheet;

  /** Reads the records up to the end of those that hold for the whole book. */
  static XlsBook read(XlsRecords records) {
    XlsBook book = new XlsBook();
    while (records.next() && records.kind() != XlsRecords.END) {
      book.take(records);
    }
    return book;
  }

  private void take(XlsRecords records) {
    RecordInputStream in = records.content();
    switch (records.kind()) {
      case XlsRecords.BEGIN -> {
        int version = in.readUShort();
        isOneSheet = in.readUShort() == A_SHEET;
        records.version(version);
        texts.version(version);
      }
      case CODE_PAGE -> texts.codePage(in.readUShort());
      case COUNTS_FROM_1904 -> from1904 = in.readUShort() == 1;
      case FORMAT -> takeFormat(in);
      case STYLE -> takeStyle(in);
      case SHEET -> takePart(in);
      case SHARED_TEXTS -> texts.shared(new SSTRecord(in));
      default -> {
        // How the book looks, and what it remembers for its own program.
      }
    }
  }

  private void takeFormat(RecordInputStream in) {
    int number = in.readUShort();
    if (formats.size() < MOST) {
      formats.put(number, CellFormat.numbered(number, texts.formatCode(in)));
    }
  }

  private void takeStyle(RecordInputStream in) {
    in.readUShort();
    if (formatOfStyle.size() < MOST) {
      formatOfStyle.add(in.readUShort());
    }
  }

  /** The position stands in the clear even where all the rest is encrypted. */
  private void takePart(RecordInputStream in) {
    byte[] position = new byte[4];
    in.readPlain(position, 0, position.length);
    boolean hidden = (in.readUByte() & STATE) != 0;
    boolean ofCells = in.readUByte() == OF_CELLS;
    if (parts.size() < MOST) {
      parts.add(new Part(texts.shortText(in), ofBytes(position), ofCells, hidden));
    }
  }

  private static int ofBytes(byte[] little) {
    return (little[0] & 0xFF)
        | (little[1] & 0xFF) << 8
        | (little[2] & 0xFF) << 16
        | (little[3] & 0xFF) << 24;
  }

  /**
   * The sheets of cells, in the order that the book shows them. A file of the older programs may be
   * a single sheet without a book around it, and then tells no name.
   */
  List<Sheet> sheets() {
    if (isOneSheet) {
      return List.of(new Sheet("Sheet1", -1, false));
    }
    List<Part> inFile = new ArrayList<>(parts);
    inFile.sort(Comparator.comparing(part -> Integer.toUnsignedLong(part.position())));
    List<Sheet> sheets = new ArrayList<>();
    for (Part part : parts) {
      if (part.ofCells()) {
        sheets.add(new Sheet(part.name(), placeOf(part, inFile), part.hidden()));
      }
    }
    return List.copyOf(sheets);
  }

  /** Two parts may look alike; each is itself. */
  @SuppressWarnings("ReferenceEquality")
  private static int placeOf(Part part, List<Part> inFile) {
    int place = 0;
    while (inFile.get(place) != part) {
      place++;
    }
    return place;
  }

  boolean isFrom1904() {
    return from1904;
  }

  XlsTexts texts() {
    return texts;
  }

  /** The format of a cell's style; the general one for a style that is not there. */
  CellFormat format(int style) {
    if (style >= formatOfStyle.size()) {
      return CellFormat.GENERAL;
    }
    int number = formatOfStyle.get(style);
    CellFormat own = formats.get(number);
    return own == null ? CellFormat.builtIn(number) : own;
  }
}
