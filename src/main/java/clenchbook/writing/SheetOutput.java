package clenchbook.writing;

import clenchbook.problem.CellRef;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** One sheet while it is written, row by row from the top and cell by cell from the left. */
final class SheetOutput {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final XlsxOutput book;
  private final List<Note> notes = new ArrayList<>();
  private final List<String> merged = new ArrayList<>();
  private final List<String> links = new ArrayList<>();
  private final List<String> lists = new ArrayList<>();
  private XmlOut out = new XmlOut(java.io.Writer.nullWriter());
  private int row;
  private String filter = "";

  /** A note on a cell; row from 1, column from 0. */
  record Note(int row, int column, String text) {
    String cell() {
      return CellRef.letters(column) + row;
    }
  }

  SheetOutput(XlsxOutput book) {
    this.book = book;
  }

  List<Note> notes() {
    return notes;
  }

  void write(XmlOut to, SheetHeadOutput head, XlsxOutput.Content content) throws IOException {
    out = to;
    out.raw(XlsxOutput.DECLARATION)
        .raw("<worksheet xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\">")
        .raw("<sheetPr><outlinePr summaryRight=\"0\"/><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
    writeView(head.frozenRows());
    writeColumns(head.columns());
    out.raw("<sheetData>");
    content.write(this);
    out.raw("</sheetData>").raw(filter);
    writeAll("mergeCells", merged);
    writeAll("dataValidations", lists);
    writeAll("hyperlinks", links);
    out.raw("<pageSetup orientation=\"landscape\" fitToWidth=\"1\" fitToHeight=\"0\"/>");
    if (!notes.isEmpty()) {
      out.raw("<legacyDrawing r:id=\"rId1\"/>");
    }
    out.raw("</worksheet>");
  }

  private void writeView(int frozen) {
    out.raw("<sheetViews><sheetView workbookViewId=\"0\">");
    if (frozen > 0) {
      out.raw("<pane ySplit=\"" + frozen + "\" topLeftCell=\"A" + (frozen + 1) + "\"")
          .raw(" activePane=\"bottomLeft\" state=\"frozen\"/><selection pane=\"bottomLeft\"/>");
    }
    out.raw("</sheetView></sheetViews>");
    out.raw("<sheetFormatPr defaultRowHeight=\"15\" outlineLevelCol=\"1\"/>");
  }

  private void writeColumns(List<SheetHeadOutput.Column> columns) {
    if (columns.isEmpty()) {
      return;
    }
    out.raw("<cols>");
    for (int i = 0; i < columns.size(); i++) {
      SheetHeadOutput.Column column = columns.get(i);
      int place = i + 1;
      out.raw("<col min=\"" + place + "\" max=\"" + place + "\" width=\"" + column.width() + "\"")
          .raw(" style=\"" + book.look(column.look()) + "\" customWidth=\"1\"")
          .raw(column.folded() ? " hidden=\"1\" outlineLevel=\"1\"/>" : "/>");
    }
    out.raw("</cols>");
  }

  private void writeAll(String element, List<String> children) {
    if (!children.isEmpty()) {
      out.raw(
          "<"
              + element
              + (element.startsWith("data") ? " count=\"" + children.size() + "\"" : "")
              + ">");
      children.forEach(out::raw);
      out.raw("</" + element + ">");
    }
  }

  void startRow(int number) {
    row = number;
    out.raw("<row r=\"" + number + "\">");
  }

  /** Begins a row of a height in points. */
  void startRow(int number, int height) {
    row = number;
    boolean usual = height <= CellLines.HEIGHT;
    out.raw("<row r=\"" + number + "\"");
    out.raw(usual ? ">" : " ht=\"" + height + "\" customHeight=\"1\">");
  }

  void endRow() {
    out.raw("</row>");
  }

  private String start(int column, CellLook look) {
    return "<c r=\"" + CellRef.letters(column) + row + "\" s=\"" + book.look(look) + "\"";
  }

  void text(int column, String text, CellLook look) {
    out.raw(start(column, look) + " t=\"inlineStr\"><is><t xml:space=\"preserve\">");
    out.text(text).raw("</t></is></c>");
  }

  void number(int column, BigDecimal number, CellLook look) {
    out.raw(start(column, look) + "><v>" + number.toPlainString() + "</v></c>");
  }

  void truth(int column, boolean truth, CellLook look) {
    out.raw(start(column, look) + " t=\"b\"><v>" + (truth ? 1 : 0) + "</v></c>");
  }

  void error(int column, String code, CellLook look) {
    out.raw(start(column, look) + " t=\"e\"><v>").text(code).raw("</v></c>");
  }

  void blank(int column, CellLook look) {
    out.raw(start(column, look) + "/>");
  }

  /** Lets a cell take the room of those to its right, too. */
  void mergeAcross(int atRow, int first, int last) {
    merged.add(
        "<mergeCell ref=\""
            + CellRef.letters(first)
            + atRow
            + ":"
            + CellRef.letters(last)
            + atRow
            + "\"/>");
  }

  /** Puts a note on a cell of the row being written, or of any other. */
  void note(int atRow, int column, String text) {
    notes.add(new Note(atRow, column, text));
  }

  /** Makes a cell of the row being written a link to a cell of this workbook. */
  void link(int column, String sheet, String cell) {
    String target = "'" + sheet.replace("'", "''") + "'!" + cell;
    links.add(
        "<hyperlink ref=\""
            + CellRef.letters(column)
            + row
            + "\" location=\""
            + XmlOut.escaped(target)
            + "\" display=\""
            + XmlOut.escaped(target)
            + "\"/>");
  }

  /** Offers a list in the cells of a column; other entries are taken all the same. */
  void offer(int column, int firstRow, int lastRow, String list) {
    String letters = CellRef.letters(column);
    lists.add(
        "<dataValidation type=\"list\" allowBlank=\"1\" showErrorMessage=\"0\" sqref=\""
            + letters
            + firstRow
            + ":"
            + letters
            + lastRow
            + "\"><formula1>"
            + XmlOut.escaped(list)
            + "</formula1></dataValidation>");
  }

  /** Puts filter buttons on the headings. */
  void filter(int lastColumn, int lastRow) {
    filter = "<autoFilter ref=\"A1:" + CellRef.letters(lastColumn) + lastRow + "\"/>";
  }
}
