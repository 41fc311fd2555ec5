package clenchbook.reading.formats.ods;

import clenchbook.reading.formats.cells.Cell;
import clenchbook.reading.formats.cells.CellFormat;
import clenchbook.reading.formats.cells.IsoMoment;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.Row;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.Serial;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.formats.cells.WrittenNumber;
import clenchbook.reading.formats.parts.Xml;
import clenchbook.texts.Message;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One pass over the sheets of an OpenDocument book. */
final class OdsPass {
  private static final int MOST_EQUAL_ROWS = 65_536;
  private static final int MOST_EQUAL_CELLS = 1_024;
  private static final int MOST_MERGED = 100_000;
  private static final CellFormat DAY = CellFormat.of("yyyy-mm-dd");

  private final Xml xml;
  private final OdsStyles styles;
  private final OdsCell cell = new OdsCell();
  private final List<MergedCells> merged = new ArrayList<>();
  private final List<String> columnStyles = new ArrayList<>();
  private List<Cell> cells = new ArrayList<>();
  private int row;
  private int column;

  OdsPass(Xml xml, OdsStyles styles) {
    this.xml = xml;
    this.styles = styles;
  }

  /** Goes to the start of the next sheet and gives its name; empty after the last. */
  Optional<String> nextTable() throws IOException {
    while (xml.next()) {
      if (xml.starts("table")) {
        return Optional.of(xml.attribute("name").orElse(""));
      }
      if (xml.starts("tracked-changes") || xml.starts("dde-links") || xml.starts("shapes")) {
        xml.skip();
      } else {
        styles.take(xml);
      }
    }
    return Optional.empty();
  }

  /** Hands on the rows of the sheet that the reader stands at the start of. */
  List<MergedCells> rows(RowSink sink) throws IOException {
    boolean more = true;
    while (more && xml.next() && !xml.ends("table")) {
      if (xml.starts("table-row")) {
        more = readRow(sink);
      } else if (xml.starts("table-column")) {
        addColumns();
      } else if (xml.starts("shapes") || xml.starts("forms")) {
        xml.skip();
      }
    }
    return List.copyOf(merged);
  }

  private void addColumns() throws IOException {
    String style = xml.attribute("default-cell-style-name").orElse("");
    int count = WrittenNumber.parse(xml.attribute("number-columns-repeated").orElse("1"), 1);
    for (int i = 0; i < count && columnStyles.size() < MOST_EQUAL_CELLS; i++) {
      columnStyles.add(style);
    }
  }

  private boolean readRow(RowSink sink) throws IOException {
    int equal = WrittenNumber.parse(xml.attribute("number-rows-repeated").orElse("1"), 1);
    column = 0;
    while (xml.next() && !xml.ends("table-row")) {
      if (xml.starts("table-cell") || xml.starts("covered-table-cell")) {
        readCell();
      } else if (xml.starts()) {
        xml.skip();
      }
    }
    return handOn(Math.max(1, equal), sink);
  }

  private boolean handOn(int equal, RowSink sink) throws IOException {
    if (cells.isEmpty()) {
      row = Math.min(TableSource.MOST_ROWS, row + equal);
      return row < TableSource.MOST_ROWS;
    }
    if (equal > MOST_EQUAL_ROWS) {
      throw new UnreadableWorkbook(Message.of("formats.rowRepeated"));
    }
    for (int i = 0; i < equal; i++) {
      row++;
      if (row > TableSource.MOST_ROWS || !sink.take(new Row(row, cells))) {
        return false;
      }
    }
    cells = new ArrayList<>(cells.size());
    return true;
  }

  private void readCell() throws IOException {
    boolean covered = xml.name().equals("covered-table-cell");
    cell.read(xml);
    int equal = cell.repeated();
    if (!covered && cell.rowsSpanned() > 1 && merged.size() < MOST_MERGED) {
      int last = row + cell.rowsSpanned();
      merged.add(new MergedCells(row + 1, last, column, column));
    }
    if (!covered) {
      for (int i = 0; i < Math.min(equal, MOST_EQUAL_CELLS); i++) {
        int place = column + i;
        if (place < TableSource.MOST_COLUMNS) {
          value(place).ifPresent(cells::add);
        }
      }
    }
    column = Math.min(TableSource.MOST_COLUMNS, column + equal);
  }

  private Optional<Cell> value(int place) {
    boolean formula = cell.isFormula();
    String text = cell.text();
    return switch (cell.type()) {
      case "error" -> Optional.of(new Cell.Fault(place, formula, text.isEmpty() ? "#ERR" : text));
      case "float", "currency" -> Optional.of(number(place, format(place)));
      case "percentage" -> Optional.of(number(place, CellFormat.of("0%")));
      case "date" -> Optional.of(date(place));
      case "time" -> Optional.of(time(place));
      case "boolean" ->
          Optional.of(new Cell.Truth(place, formula, cell.value().equalsIgnoreCase("true")));
      case "" -> untyped(place, formula, text);
      default -> text(place, formula, text);
    };
  }

  private Optional<Cell> untyped(int place, boolean formula, String text) {
    return formula && text.isEmpty()
        ? Optional.of(new Cell.NoValue(place))
        : text(place, formula, text);
  }

  private Optional<Cell> text(int place, boolean formula, String text) {
    return text.isEmpty()
        ? Optional.empty()
        : Optional.of(new Cell.Text(place, formula, text, cell.isCut()));
  }

  private CellFormat format(int place) {
    boolean own = !cell.style().isEmpty();
    String byColumn = place < columnStyles.size() ? columnStyles.get(place) : "";
    return styles.format(own ? cell.style() : byColumn);
  }

  private Cell number(int place, CellFormat format) {
    return format.kind() == CellFormat.Kind.TIME || format.kind() == CellFormat.Kind.DATE
        ? Serial.cell(place, cell.isFormula(), cell.value(), format, false)
        : new Cell.Number(place, cell.isFormula(), cell.value(), format);
  }

  private Cell date(int place) {
    Cell read = IsoMoment.cell(place, cell.isFormula(), cell.value());
    CellFormat format = format(place);
    boolean dated = format.kind() == CellFormat.Kind.DATE;
    return read instanceof Cell.Moment moment
        ? new Cell.Moment(place, cell.isFormula(), moment.at(), dated ? format : DAY)
        : read;
  }

  private Cell time(int place) {
    try {
      Duration exact = Duration.parse(cell.value().replace(',', '.'));
      Duration nearest = Duration.ofSeconds(exact.plusMillis(500).toSeconds());
      return new Cell.Span(place, cell.isFormula(), nearest);
    } catch (DateTimeException noTime) {
      return new Cell.Text(place, cell.isFormula(), cell.value(), false);
    }
  }
}
