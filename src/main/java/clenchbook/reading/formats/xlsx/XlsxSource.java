package clenchbook.reading.formats.xlsx;

import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.formats.parts.Parts;
import clenchbook.reading.formats.parts.Xml;
import clenchbook.reading.formats.parts.XmlText;
import clenchbook.texts.Message;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;

/** A book of the office XML format, transitional or strict, with or without macros. */
public final class XlsxSource implements TableSource {
  private final Parts parts;
  private final XMLInputFactory factory = Xml.factory();
  private final List<String> names = new ArrayList<>();
  private final List<String> sheetParts = new ArrayList<>();
  private final Set<Integer> hidden = new HashSet<>();
  private final XlsxRelations relations;
  private boolean from1904;
  private Optional<XlsxBookParts> shared = Optional.empty();

  /** Opens the book; the parts are closed with it, and at once where it is none. */
  public XlsxSource(Parts parts) throws IOException {
    this.parts = parts;
    try {
      String book = bookPart();
      this.relations = XlsxRelations.read(parts, factory, book);
      readBook(book);
    } catch (IOException unreadable) {
      parts.close();
      throw UnreadableWorkbook.within(unreadable, damaged(unreadable));
    }
  }

  private static UnreadableWorkbook damaged(IOException cause) {
    return new UnreadableWorkbook(Message.of("formats.damagedList"), cause);
  }

  private String bookPart() throws IOException {
    Optional<String> target = XlsxRelations.read(parts, factory, "").target("officeDocument");
    String part = target.filter(parts::has).orElse("xl/workbook.xml");
    if (!parts.has(part)) {
      throw new UnreadableWorkbook(Message.of("formats.zip"));
    }
    if (part.endsWith(".bin")) {
      throw new UnreadableWorkbook(Message.of("formats.xlsb"));
    }
    return part;
  }

  private void readBook(String part) throws IOException {
    try (Xml xml = Xml.open(factory, parts.open(part))) {
      while (xml.next()) {
        if (xml.starts("workbookPr")) {
          from1904 = isTrue(xml.attribute("date1904").orElse(""));
        } else if (xml.starts("sheet")) {
          addSheet(xml);
        }
      }
    }
    if (names.isEmpty()) {
      throw new UnreadableWorkbook(Message.of("formats.noSheet"));
    }
  }

  /**
   * Sheets that hold a chart or an old dialogue are no tables, nor are links to other books, nor
   * old modules of macros, which point to nothing.
   */
  private void addSheet(Xml xml) throws IOException {
    String name = xml.attribute("name").orElse("");
    String id = xml.attributeInNamespace("id").orElse("");
    Optional<XlsxRelations.Relation> relation = relations.find(id);
    boolean table = relation.isEmpty() || relation.get().type().equals("worksheet");
    if (!table || id.isEmpty() || relations.leadsOutside(id)) {
      return;
    }
    String part = relation.map(XlsxRelations.Relation::target).orElse("");
    if (!parts.has(part)) {
      throw UnreadableWorkbook.withoutSheet(name);
    }
    if (!xml.attribute("state").orElse("visible").equals("visible")) {
      hidden.add(names.size());
    }
    names.add(name);
    sheetParts.add(part);
  }

  static boolean isTrue(String text) {
    return text.equals("1") || text.equalsIgnoreCase("true") || text.equalsIgnoreCase("on");
  }

  @Override
  public List<String> sheetNames() {
    return List.copyOf(names);
  }

  @Override
  public boolean isHidden(int sheet) {
    return hidden.contains(sheet);
  }

  @Override
  public boolean countsFrom1904() {
    return from1904;
  }

  @Override
  public List<MergedCells> rows(int sheet, RowSink sink) throws IOException {
    XlsxBookParts book = bookParts();
    try (Xml xml = Xml.open(factory, parts.open(sheetParts.get(sheet)))) {
      return new XlsxSheetPass(xml, book, sink).run();
    } catch (UnreadableWorkbook refusal) {
      throw refusal;
    } catch (IOException broken) {
      throw new DamagedSheet("the sheet breaks off: " + broken.getMessage(), broken);
    }
  }

  /** Styles and shared texts, read when the first sheet is. A damaged one leaves what it gave. */
  private XlsxBookParts bookParts() throws IOException {
    if (shared.isEmpty()) {
      shared = Optional.of(new XlsxBookParts(styles(), texts(), from1904));
    }
    return shared.get();
  }

  private XlsxStyles styles() throws IOException {
    Optional<String> part = relations.target("styles").filter(parts::has);
    try {
      return part.isPresent() ? XlsxStyles.read(parts, factory, part.get()) : XlsxStyles.none();
    } catch (IOException broken) {
      throw UnreadableWorkbook.within(
          broken, new UnreadableWorkbook(Message.of("formats.damagedStyles"), broken));
    }
  }

  private CompactTexts texts() throws IOException {
    CompactTexts texts = new CompactTexts();
    Optional<String> part = relations.target("sharedStrings").filter(parts::has);
    if (part.isEmpty()) {
      return texts;
    }
    try (Xml xml = Xml.open(factory, parts.open(part.get()))) {
      XmlText text = new XmlText();
      while (xml.next()) {
        if (xml.starts("si")) {
          XlsxSheetPass.richText(xml, "si", text);
          texts.add(text.unescaped(), text.isCut());
        }
      }
    } catch (IOException broken) {
      throw UnreadableWorkbook.within(
          broken, new UnreadableWorkbook(Message.of("formats.damagedTexts"), broken));
    }
    return texts;
  }

  @Override
  public void close() throws IOException {
    parts.close();
  }
}
