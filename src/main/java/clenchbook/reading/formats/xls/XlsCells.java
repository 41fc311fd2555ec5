package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.hssf.record.RecordInputStream;
import org.apache.poi.hssf.util.RKUtil;
import org.apache.poi.ss.usermodel.FormulaError;

/**
 * Makes cells of the records that hold them, and rows of the cells. Writers other than the format's
 * own use the records of older versions too, the formulas' above all, so each is read in whichever
 * book it stands.
 */
final class XlsCells {
  private static final int LAST_COLUMN = 255;
  private static final int TEXT_FOLLOWS = 0;
  private static final int TRUTH = 1;
  private static final int FAULT = 2;
  private static final int RESULT_IS_NO_NUMBER = 0xFFFF;

  private final XlsBook book;
  private final Consumer<Row> rows;
  private List<Cell> cells = new ArrayList<>();
  private Optional<At> textFormula = Optional.empty();
  private int row = -1;

  private record At(int column, CellFormat format, boolean formula) {}

  XlsCells(XlsBook book, Consumer<Row> rows) {
    this.book = book;
    this.rows = rows;
  }

  /** Takes one record; one that holds no cell is left alone. */
  void take(int kind, RecordInputStream in) {
    switch (kind) {
      case 0x0207, 0x0007 -> takeResult(in);
      case 0x0006, 0x0206, 0x0406 -> takeFormula(in, at(in, false, true));
      case 0x00FD -> takeShared(in, at(in, false, false));
      case 0x0203, 0x0003 -> addNumber(at(in, kind == 0x0003, false), in);
      case 0x027E -> addNumber(at(in, false, false), RKUtil.decodeNumber(in.readInt()));
      case 0x00BD -> takeSeveral(in);
      case 0x0204, 0x00D6 -> addText(at(in, false, false), book.texts().longText(in));
      case 0x0004 -> addText(at(in, true, false), book.texts().shortText(in));
      case 0x0205, 0x0005 -> takeTruth(in, at(in, kind == 0x0005, false));
      case 0x0002 -> addNumber(at(in, true, false), in.readUShort());
      default -> {
        // No cell that holds something.
      }
    }
  }

  /**
   * Where a cell stands; the oldest records have three bytes of looks where others have a style.
   */
  private At at(RecordInputStream in, boolean oldest, boolean formula) {
    startRow(in.readUShort());
    int column = in.readUShort();
    if (oldest) {
      in.readUByte();
      in.readUShort();
    }
    return new At(column, oldest ? CellFormat.GENERAL : book.format(in.readUShort()), formula);
  }

  private void startRow(int next) {
    forgetFormula();
    if (next != row) {
      handOn();
      row = next;
    }
  }

  /** A formula whose result was to follow and did not has none. */
  private void forgetFormula() {
    textFormula.ifPresent(at -> add(new Cell.NoValue(at.column())));
    textFormula = Optional.empty();
  }

  private void handOn() {
    if (!cells.isEmpty()) {
      rows.accept(new Row(row + 1, cells));
      cells = new ArrayList<>();
    }
  }

  /** Hands on the last row. */
  void finish() {
    forgetFormula();
    handOn();
  }

  private void add(Cell cell) {
    if (cell.column() <= LAST_COLUMN) {
      cells.add(cell);
    }
  }

  private void takeResult(RecordInputStream in) {
    if (textFormula.isPresent()) {
      At at = textFormula.get();
      textFormula = Optional.empty();
      addText(at, book.texts().longText(in));
    }
  }

  private void takeFormula(RecordInputStream in, At at) {
    long result = in.readLong();
    if (result >>> 48 != RESULT_IS_NO_NUMBER) {
      addNumber(at, Double.longBitsToDouble(result));
      return;
    }
    int value = (int) (result >>> 16) & 0xFF;
    switch ((int) result & 0xFF) {
      case TEXT_FOLLOWS -> textFormula = Optional.of(at);
      case TRUTH -> add(new Cell.Truth(at.column(), true, value != 0));
      case FAULT -> add(new Cell.Fault(at.column(), true, errorCode(value)));
      default -> {
        // A text of no length: the cell is blank.
      }
    }
  }

  private void takeShared(RecordInputStream in, At at) {
    Optional<String> text = book.texts().shared(in.readInt());
    if (text.isPresent()) {
      addText(at, text.get());
    } else {
      add(new Cell.Fault(at.column(), false, "#TEXT?"));
    }
  }

  /** Several numbers side by side: a row, the first column, then style and number of each. */
  private void takeSeveral(RecordInputStream in) {
    startRow(in.readUShort());
    int column = in.readUShort();
    while (in.remaining() >= 8) {
      CellFormat format = book.format(in.readUShort());
      addNumber(new At(column, format, false), RKUtil.decodeNumber(in.readInt()));
      column++;
    }
  }

  private void takeTruth(RecordInputStream in, At at) {
    int value = in.readUByte();
    boolean fault = in.readUByte() != 0;
    add(
        fault
            ? new Cell.Fault(at.column(), false, errorCode(value))
            : new Cell.Truth(at.column(), false, value != 0));
  }

  private static String errorCode(int code) {
    return FormulaError.isValidCode(code) ? FormulaError.forInt(code).getString() : "#ERR";
  }

  private void addText(At at, String text) {
    if (!text.isEmpty()) {
      boolean cut = text.length() > Cell.LONGEST_TEXT;
      String kept = cut ? text.substring(0, Cell.LONGEST_TEXT) : text;
      add(new Cell.Text(at.column(), at.formula(), kept, cut));
    }
  }

  private void addNumber(At at, RecordInputStream in) {
    addNumber(at, in.readDouble());
  }

  private void addNumber(At at, double value) {
    String raw = Double.toString(value);
    add(
        switch (at.format().kind()) {
          case DATE, TIME ->
              Serial.cell(at.column(), at.formula(), raw, at.format(), book.isFrom1904());
          default -> new Cell.Number(at.column(), at.formula(), raw, at.format());
        });
  }
}
