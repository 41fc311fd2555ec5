package clenchbook.reading.formats.xls;

import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import org.apache.poi.hssf.record.RecordInputStream;

/** One pass over the records of one sheet, row by row. */
final class XlsSheetPass {
  private static final int MERGED = 0x00E5;
  private static final int CHART = 0x0020;

  private final XlsRecords records;
  private final XlsCells cells;
  private final List<MergedCells> merged = new ArrayList<>();
  private final Queue<Row> ready = new ArrayDeque<>();
  private int depth = 1;

  /** Reads on from the beginning of a sheet. */
  XlsSheetPass(XlsRecords records, XlsBook book) {
    this.records = records;
    this.cells = new XlsCells(book, ready::add);
  }

  /**
   * Goes to the beginning of a part.
   *
   * @param place how many parts of sheets stand before it
   * @return whether there is one
   */
  static boolean find(XlsRecords records, int place) {
    int depth = 0;
    int found = -2;
    while (records.next()) {
      if (records.kind() == XlsRecords.BEGIN) {
        int version = records.content().readUShort();
        boolean inside = depth > 0 && records.content().readUShort() == CHART;
        found += inside ? 0 : 1;
        depth = inside ? depth + 1 : 1;
        if (found == -1) {
          records.version(version);
        }
        if (!inside && found == place) {
          return true;
        }
      } else if (records.kind() == XlsRecords.END) {
        depth--;
      }
    }
    return false;
  }

  /** The next row that holds something; empty at the sheet's end. */
  Optional<Row> next() {
    while (ready.isEmpty() && depth > 0) {
      if (records.next()) {
        take();
      } else {
        depth = 0;
      }
      if (depth == 0) {
        cells.finish();
      }
    }
    return Optional.ofNullable(ready.poll());
  }

  private void take() {
    int kind = records.kind();
    if (kind == XlsRecords.BEGIN) {
      depth++;
    } else if (kind == XlsRecords.END) {
      depth--;
    } else if (depth == 1 && kind == MERGED) {
      takeMerged(records.content());
    } else if (depth == 1) {
      cells.take(kind, records.content());
    }
  }

  private void takeMerged(RecordInputStream in) {
    int blocks = in.readUShort();
    for (int i = 0; i < blocks && in.remaining() >= 8; i++) {
      int top = in.readUShort();
      int foot = in.readUShort();
      int left = in.readUShort();
      int right = in.readUShort();
      if (foot > top && left <= right) {
        merged.add(new MergedCells(top + 1, foot + 1, left, right));
      }
    }
  }

  List<MergedCells> merged() {
    return List.copyOf(merged);
  }
}
