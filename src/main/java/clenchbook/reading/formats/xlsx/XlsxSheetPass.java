package clenchbook.reading.formats.xlsx;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.ColumnLetters;
import clenchbook.reading.formats.cells.IsoMoment;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.Serial;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.WrittenNumber;
import clenchbook.reading.formats.parts.Xml;
import clenchbook.reading.formats.parts.XmlText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One pass over one sheet of an office XML book. */
final class XlsxSheetPass {
  private static final int MOST_MERGED = 100_000;

  private final Xml xml;
  private final XlsxBookParts book;
  private final RowSink sink;
  private final XmlText text = new XmlText();
  private final List<MergedCells> merged = new ArrayList<>();
  private List<Cell> cells = new ArrayList<>();
  private int row;
  private int column;

  XlsxSheetPass(Xml xml, XlsxBookParts book, RowSink sink) {
    this.xml = xml;
    this.book = book;
    this.sink = sink;
  }

  List<MergedCells> run() throws IOException {
    while (xml.next()) {
      if (xml.starts("row")) {
        if (!readRow()) {
          break;
        }
      } else if (xml.starts("mergeCell") && merged.size() < MOST_MERGED) {
        MergedCells.parse(xml.attribute("ref").orElse(""))
            .filter(MergedCells::tall)
            .ifPresent(merged::add);
      }
    }
    return List.copyOf(merged);
  }

  /** Rows and cells may leave their place unsaid; it is then the one after the last. */
  private boolean readRow() throws IOException {
    row = WrittenNumber.parse(xml.attribute("r").orElse(""), row + 1);
    column = -1;
    while (xml.next() && !xml.ends("row")) {
      if (xml.starts("c")) {
        readCell();
      } else if (xml.starts()) {
        xml.skip();
      }
    }
    if (cells.isEmpty() || row < 1 || row > TableSource.MOST_ROWS) {
      cells.clear();
      return row <= TableSource.MOST_ROWS;
    }
    boolean more = sink.take(new Row(row, cells));
    cells = new ArrayList<>(cells.size());
    return more;
  }

  private void readCell() throws IOException {
    String type = "n";
    int style = 0;
    int place = column + 1;
    for (int i = 0; i < xml.attributes(); i++) {
      String name = xml.attributeName(i);
      if (name.equals("r")) {
        int given = ColumnLetters.column(xml.attribute(i));
        place = given < 0 ? place : given;
      } else if (name.equals("t")) {
        type = xml.attribute(i);
      } else if (name.equals("s")) {
        style = WrittenNumber.parse(xml.attribute(i), 0);
      }
    }
    column = place;
    readContent(type, style);
  }

  private void readContent(String type, int style) throws IOException {
    boolean formula = false;
    text.clear();
    while (xml.next() && !xml.ends("c")) {
      if (xml.starts("v")) {
        text.addElement(xml);
      } else if (xml.starts("f")) {
        formula = true;
        xml.skip();
      } else if (xml.starts("is")) {
        richText(xml, "is", text);
      } else if (xml.starts()) {
        xml.skip();
      }
    }
    if (column < TableSource.MOST_COLUMNS) {
      cell(type, style, formula).ifPresent(cells::add);
    }
  }

  private Optional<Cell> cell(String type, int style, boolean formula) {
    String value = text.text();
    if (value.isEmpty()) {
      boolean resultMissing = formula && !type.equals("str");
      return resultMissing ? Optional.of(new Cell.NoValue(column)) : Optional.empty();
    }
    return switch (type) {
      case "s" -> sharedText(WrittenNumber.parse(value.strip(), -1), formula);
      case "str", "inlineStr" -> Optional.of(ownText(formula));
      case "b" -> Optional.of(new Cell.Truth(column, formula, XlsxSource.isTrue(value.strip())));
      case "e" -> Optional.of(new Cell.Fault(column, formula, value.strip()));
      case "d" -> Optional.of(IsoMoment.cell(column, formula, value.strip()));
      default -> Optional.of(number(value.strip(), style, formula));
    };
  }

  private Cell ownText(boolean formula) {
    return new Cell.Text(column, formula, text.unescaped(), text.isCut());
  }

  private Optional<Cell> sharedText(int index, boolean formula) {
    if (index < 0 || index >= book.texts().size()) {
      return Optional.of(new Cell.Fault(column, formula, "#TEXT?"));
    }
    String shared = book.texts().get(index);
    boolean cut = book.texts().isCut(index);
    return shared.isEmpty()
        ? Optional.empty()
        : Optional.of(new Cell.Text(column, formula, shared, cut));
  }

  private Cell number(String raw, int style, boolean formula) {
    CellFormat format = book.styles().format(style);
    return switch (format.kind()) {
      case DATE, TIME -> Serial.cell(column, formula, raw, format, book.from1904());
      default -> new Cell.Number(column, formula, raw, format);
    };
  }

  /** The text of an element with runs, without the sounds written above East Asian words. */
  static void richText(Xml xml, String element, XmlText into) throws IOException {
    into.clear();
    while (xml.next() && !xml.ends(element)) {
      if (xml.starts("t")) {
        into.addElement(xml);
      } else if (xml.starts("rPh")) {
        xml.skip();
      }
    }
  }
}
