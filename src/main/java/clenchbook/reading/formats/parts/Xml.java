package clenchbook.reading.formats.parts;

import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.Message;
import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One pass over a part's XML. Elements and attributes are known by their local names, so that the
 * transitional and the strict namespaces read alike. A document type is refused before anything in
 * it is looked at, so that no entity is ever expanded.
 */
public final class Xml implements AutoCloseable {
  private final XMLStreamReader reader;
  private final InputStream stream;

  private Xml(XMLStreamReader reader, InputStream stream) {
    this.reader = reader;
    this.stream = stream;
  }

  /** The factory for all parts of one file; names seen in one part help the next. */
  public static XMLInputFactory factory() {
    XMLInputFactory factory = new InputFactoryImpl();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("entities are refused");
        });
    return factory;
  }

  /**
   * Starts reading a part.
   *
   * @throws IOException where the part is no XML
   */
  public static Xml open(XMLInputFactory factory, InputStream stream) throws IOException {
    try {
      return new Xml(factory.createXMLStreamReader(stream), stream);
    } catch (XMLStreamException | RuntimeException broken) {
      stream.close();
      throw broken(broken);
    }
  }

  /** Goes to the next start of an element, end of an element or text; false at the end. */
  public boolean next() throws IOException {
    try {
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
          throw new UnreadableWorkbook(Message.of("formats.documentType"));
        }
        if (event <= XMLStreamConstants.END_ELEMENT
            || event == XMLStreamConstants.CHARACTERS
            || event == XMLStreamConstants.CDATA
            || event == XMLStreamConstants.SPACE) {
          return true;
        }
      }
      return false;
    } catch (XMLStreamException | RuntimeException broken) {
      throw broken(broken);
    }
  }

  public boolean starts() {
    return reader.getEventType() == XMLStreamConstants.START_ELEMENT;
  }

  public boolean starts(String name) {
    return starts() && reader.getLocalName().equals(name);
  }

  public boolean ends() {
    return reader.getEventType() == XMLStreamConstants.END_ELEMENT;
  }

  public boolean ends(String name) {
    return ends() && reader.getLocalName().equals(name);
  }

  /** The local name of the element that starts or ends. */
  public String name() {
    return reader.getLocalName();
  }

  public int attributes() {
    return reader.getAttributeCount();
  }

  public String attributeName(int index) {
    return reader.getAttributeLocalName(index);
  }

  /**
   * The value of the start tag's attribute at an index.
   *
   * @throws IOException where the part is damaged there
   */
  public String attribute(int index) throws IOException {
    try {
      return reader.getAttributeValue(index);
    } catch (RuntimeException broken) {
      throw broken(broken);
    }
  }

  /** The attribute of a local name, in any namespace. */
  public Optional<String> attribute(String name) throws IOException {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(name)) {
        return Optional.of(attribute(i));
      }
    }
    return Optional.empty();
  }

  /**
   * The attribute of a local name that stands in a namespace, where another without one may stand
   * beside it: a sheet's {@code id} beside its relation's.
   */
  public Optional<String> attributeInNamespace(String name) throws IOException {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String namespace = reader.getAttributeNamespace(i);
      if (namespace != null
          && !namespace.isEmpty()
          && reader.getAttributeLocalName(i).equals(name)) {
        return Optional.of(attribute(i));
      }
    }
    return Optional.empty();
  }

  /** The text that stands at the reader, which is at a text; it may be one piece of several. */
  public String piece() throws IOException {
    try {
      return reader.getText();
    } catch (RuntimeException broken) {
      throw broken(broken);
    }
  }

  /** Skips what is left of the element that just started. */
  public void skip() throws IOException {
    for (int depth = 1; depth > 0 && next(); ) {
      depth += starts() ? 1 : ends() ? -1 : 0;
    }
  }

  private static IOException broken(Exception cause) {
    if (cause instanceof IOException io) {
      return io;
    }
    String line = String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
    return UnreadableWorkbook.within(cause, new DamagedXml(line, cause));
  }

  /** XML that is not well formed, or stops in the middle. */
  static final class DamagedXml extends IOException {
    private static final long serialVersionUID = 1L;

    DamagedXml(String message, Throwable cause) {
      super(message, cause);
    }
  }

  @Override
  public void close() throws IOException {
    try {
      reader.close();
    } catch (XMLStreamException ignored) {
      // Nothing is lost: all that was wanted has been read.
    }
    stream.close();
  }
}
