package clenchbook.reading.formats.ods;

import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.MergedCells;
import clenchbook.reading.formats.cells.RowSink;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.reading.formats.parts.Parts;
import clenchbook.reading.formats.parts.Xml;
import clenchbook.texts.Message;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;

/** A book of the OpenDocument format: all its sheets stand in one part, one after another. */
public final class OdsSource implements TableSource {
  static final String CONTENT = "content.xml";

  private final Parts parts;
  private final XMLInputFactory factory = Xml.factory();
  private final List<String> names = new ArrayList<>();
  private final Set<Integer> hidden = new HashSet<>();
  private final OdsStyles styles = new OdsStyles();

  /** Opens the book; the parts are closed with it, and at once where it is none. */
  public OdsSource(Parts parts) throws IOException {
    this.parts = parts;
    try {
      refuseEncrypted();
      readStyles();
      readNames();
    } catch (IOException unreadable) {
      parts.close();
      throw UnreadableWorkbook.within(
          unreadable, new UnreadableWorkbook(Message.of("formats.damagedSheets"), unreadable));
    }
  }

  /** Newer programs lock the whole book away as one part of the file, older ones part by part. */
  public static boolean is(Parts parts) {
    return parts.has(CONTENT) || parts.has("encrypted-package");
  }

  private void refuseEncrypted() throws IOException {
    String manifest = "META-INF/manifest.xml";
    if (!parts.has(manifest)) {
      return;
    }
    try (Xml xml = Xml.open(factory, parts.open(manifest))) {
      while (xml.next()) {
        if (xml.starts("encryption-data")) {
          throw new UnreadableWorkbook(Message.of("formats.odsPassword"));
        }
      }
    }
  }

  private void readStyles() throws IOException {
    if (parts.has("styles.xml")) {
      try (Xml xml = Xml.open(factory, parts.open("styles.xml"))) {
        while (xml.next()) {
          styles.take(xml);
        }
      }
    }
  }

  private void readNames() throws IOException {
    try (Xml xml = openContent()) {
      OdsPass pass = new OdsPass(xml, styles);
      for (Optional<String> name = pass.nextTable(); name.isPresent(); name = pass.nextTable()) {
        if (styles.hides(xml.attribute("style-name").orElse(""))) {
          hidden.add(names.size());
        }
        names.add(name.get());
        xml.skip();
      }
    }
    if (names.isEmpty()) {
      throw new UnreadableWorkbook(Message.of("formats.noSheet"));
    }
  }

  private Xml openContent() throws IOException {
    return Xml.open(factory, parts.open(CONTENT));
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
    return false;
  }

  @Override
  public List<MergedCells> rows(int sheet, RowSink sink) throws IOException {
    try (Xml xml = openContent()) {
      OdsPass pass = new OdsPass(xml, styles);
      for (int before = 0; before < sheet && pass.nextTable().isPresent(); before++) {
        xml.skip();
      }
      return pass.nextTable().isPresent() ? pass.rows(sink) : List.of();
    } catch (UnreadableWorkbook refusal) {
      throw refusal;
    } catch (IOException broken) {
      throw new DamagedSheet("the sheet breaks off: " + broken.getMessage(), broken);
    }
  }

  @Override
  public void close() throws IOException {
    parts.close();
  }
}
