package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.Serial;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.hssf.eventusermodel.AbortableHSSFListener;
import org.apache.poi.hssf.record.BOFRecord;
import org.apache.poi.hssf.record.BoolErrRecord;
import org.apache.poi.hssf.record.BoundSheetRecord;
import org.apache.poi.hssf.record.CellValueRecordInterface;
import org.apache.poi.hssf.record.DateWindow1904Record;
import org.apache.poi.hssf.record.EOFRecord;
import org.apache.poi.hssf.record.ExtendedFormatRecord;
import org.apache.poi.hssf.record.FormatRecord;
import org.apache.poi.hssf.record.FormulaRecord;
import org.apache.poi.hssf.record.LabelRecord;
import org.apache.poi.hssf.record.LabelSSTRecord;
import org.apache.poi.hssf.record.MergeCellsRecord;
import org.apache.poi.hssf.record.NumberRecord;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.record.SSTRecord;
import org.apache.poi.hssf.record.StringRecord;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;

/** Takes the records of a binary book and makes rows of those of one sheet. */
final class XlsListener extends AbortableHSSFListener {
  private static final short STOP = -1;
  private static final short GO_ON = 0;
  private static final int MOST_FORMATS = 70_000;
  private static final int LAST_COLUMN = 255;

  private final int wanted;
  private final RowSink sink;
  private final List<BoundSheetRecord> sheets = new ArrayList<>();
  private final Map<Integer, CellFormat> formats = new HashMap<>();
  private final List<Integer> formatOfStyle = new ArrayList<>();
  private final List<MergedCells> merged = new ArrayList<>();
  private Optional<SSTRecord> texts = Optional.empty();
  private Optional<FormulaRecord> textFormula = Optional.empty();
  private boolean from1904;
  private int place = -2;
  private int depth;
  private List<Cell> cells = new ArrayList<>();
  private int row = -1;
  private boolean full;

  /**
   * Listens for one sheet.
   *
   * @param wanted the place of the sheet among the file's streams of sheets; -1 for the list of
   *     sheets alone
   */
  XlsListener(int wanted, RowSink sink) {
    this.wanted = wanted;
    this.sink = sink;
  }

  /** Carries what a taker of rows threw through the library, whose own failures mean damage. */
  static final class TakerFailed extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final RuntimeException failure;

    TakerFailed(RuntimeException failure) {
      super(failure);
      this.failure = failure;
    }

    RuntimeException failure() {
      return failure;
    }
  }

  @Override
  public short abortableProcessRecord(Record record) {
    if (record instanceof BOFRecord) {
      place += depth++ == 0 ? 1 : 0;
    } else if (record instanceof EOFRecord) {
      depth--;
      boolean done = depth == 0 && place == wanted;
      return done ? STOP : GO_ON;
    } else if (place == -1) {
      takeOfBook(record);
    } else if (place == wanted && depth == 1) {
      takeOfSheet(record);
    }
    return full ? STOP : GO_ON;
  }

  private void takeOfBook(Record record) {
    if (record instanceof BoundSheetRecord sheet) {
      sheets.add(sheet);
    } else if (record instanceof SSTRecord shared) {
      texts = Optional.of(shared);
    } else if (record instanceof FormatRecord format && formats.size() < MOST_FORMATS) {
      formats.put(format.getIndexCode(), CellFormat.of(format.getFormatString()));
    } else if (record instanceof ExtendedFormatRecord style
        && formatOfStyle.size() < MOST_FORMATS) {
      formatOfStyle.add((int) style.getFormatIndex());
    } else if (record instanceof DateWindow1904Record window) {
      from1904 = window.getWindowing() == 1;
    }
  }

  private void takeOfSheet(Record record) {
    if (record instanceof StringRecord text) {
      textFormula.ifPresent(formula -> addText(formula, text.getString(), true));
      textFormula = Optional.empty();
    } else if (record instanceof MergeCellsRecord blocks) {
      takeMerged(blocks);
    } else if (record instanceof CellValueRecordInterface value && column(value) <= LAST_COLUMN) {
      textFormula = Optional.empty();
      startRow(value.getRow());
      takeCell(record, value);
    }
  }

  /** The library gives the two bytes with a sign. */
  private static int column(CellValueRecordInterface at) {
    return at.getColumn() & 0xFFFF;
  }

  private void takeMerged(MergeCellsRecord blocks) {
    for (int i = 0; i < blocks.getNumAreas(); i++) {
      CellRangeAddress block = blocks.getAreaAt(i);
      if (block.getLastRow() > block.getFirstRow()
          && block.getFirstColumn() <= block.getLastColumn()) {
        merged.add(
            new MergedCells(
                block.getFirstRow() + 1,
                block.getLastRow() + 1,
                block.getFirstColumn(),
                block.getLastColumn()));
      }
    }
  }

  private void startRow(int next) {
    if (next != row) {
      handOn();
      row = next;
    }
  }

  private void handOn() {
    if (!cells.isEmpty() && !full) {
      full = !taken(new Row(row + 1, cells));
      cells = new ArrayList<>();
    }
  }

  private boolean taken(Row next) {
    try {
      return sink.take(next);
    } catch (RuntimeException failure) {
      throw new TakerFailed(failure);
    }
  }

  private void takeCell(Record record, CellValueRecordInterface at) {
    if (record instanceof NumberRecord number) {
      addNumber(at, number.getValue(), false);
    } else if (record instanceof LabelSSTRecord label) {
      takeShared(at, label.getSSTIndex());
    } else if (record instanceof LabelRecord label) {
      addText(at, label.getValue(), false);
    } else if (record instanceof BoolErrRecord value) {
      cells.add(
          value.isBoolean()
              ? new Cell.Truth(column(at), false, value.getBooleanValue())
              : new Cell.Fault(column(at), false, errorCode(value.getErrorValue())));
    } else if (record instanceof FormulaRecord formula) {
      takeFormula(formula);
    }
  }

  private void takeShared(CellValueRecordInterface at, int index) {
    boolean known = texts.isPresent() && index >= 0 && index < texts.get().getNumUniqueStrings();
    if (known) {
      addText(at, texts.get().getString(index).getString(), false);
    } else {
      cells.add(new Cell.Fault(column(at), false, "#TEXT?"));
    }
  }

  private void takeFormula(FormulaRecord formula) {
    if (formula.hasCachedResultString()) {
      textFormula = Optional.of(formula);
      return;
    }
    CellType type = formula.getCachedResultTypeEnum();
    int column = column(formula);
    if (type == CellType.BOOLEAN) {
      cells.add(new Cell.Truth(column, true, formula.getCachedBooleanValue()));
    } else if (type == CellType.ERROR) {
      cells.add(new Cell.Fault(column, true, errorCode(formula.getCachedErrorValue())));
    } else if (type == CellType.NUMERIC) {
      addNumber(formula, formula.getValue(), true);
    }
  }

  private static String errorCode(int code) {
    return FormulaError.isValidCode(code) ? FormulaError.forInt(code).getString() : "#ERR";
  }

  private void addText(CellValueRecordInterface at, String text, boolean formula) {
    if (text != null && !text.isEmpty()) {
      boolean cut = text.length() > Cell.LONGEST_TEXT;
      String kept = cut ? text.substring(0, Cell.LONGEST_TEXT) : text;
      cells.add(new Cell.Text(column(at), formula, kept, cut));
    }
  }

  private void addNumber(CellValueRecordInterface at, double value, boolean formula) {
    String raw = Double.toString(value);
    CellFormat format = format(at.getXFIndex());
    cells.add(
        switch (format.kind()) {
          case DATE, TIME -> Serial.cell(column(at), formula, raw, format, from1904);
          default -> new Cell.Number(column(at), formula, raw, format);
        });
  }

  private CellFormat format(int style) {
    if (style < 0 || style >= formatOfStyle.size()) {
      return CellFormat.GENERAL;
    }
    int number = formatOfStyle.get(style);
    CellFormat own = formats.get(number);
    return own == null ? CellFormat.builtIn(number) : own;
  }

  /** Hands on the last row. */
  void finish() {
    handOn();
  }

  /** The names of the sheets of cells, in the order that the book shows them. */
  List<String> sheetNames() {
    return sheets.stream().map(BoundSheetRecord::getSheetname).toList();
  }

  /** Where a sheet's records stand among those of all sheets. */
  int recordedPlace(int sheet) {
    BoundSheetRecord wantedSheet = sheets.get(sheet);
    BoundSheetRecord[] inFile = BoundSheetRecord.orderByBofPosition(sheets);
    for (int i = 0; i < inFile.length; i++) {
      if (inFile[i] == wantedSheet) {
        return i;
      }
    }
    return sheet;
  }

  boolean isFrom1904() {
    return from1904;
  }

  List<MergedCells> merged() {
    return List.copyOf(merged);
  }
}
