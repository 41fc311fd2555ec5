package clenchbook.bankfiles;

import clenchbook.texts.Message;
import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One pass over a bank's XML. Elements are known by their local names, so that every version's
 * namespace reads alike. A document type is refused before anything in it is looked at, so that no
 * entity is ever expanded; so is nesting deeper than any bank's.
 */
final class XmlPass implements AutoCloseable {
  private static final int DEEPEST = 60;
  private static final int MOST_NODES = 4_000;

  private final XMLStreamReader reader;
  private final AutoCloseable source;
  private int depth;
  private int nodes;

  private XmlPass(XMLStreamReader reader, AutoCloseable source) {
    this.reader = reader;
    this.source = source;
  }

  private static XMLInputFactory factory() {
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

  static XmlPass open(InputStream stream) throws IOException {
    try {
      return new XmlPass(factory().createXMLStreamReader(stream), stream);
    } catch (XMLStreamException | RuntimeException broken) {
      stream.close();
      throw damaged(broken);
    }
  }

  static XmlPass open(Reader letters) throws IOException {
    try {
      return new XmlPass(factory().createXMLStreamReader(letters), letters);
    } catch (XMLStreamException | RuntimeException broken) {
      letters.close();
      throw damaged(broken);
    }
  }

  /** Goes to the next start of an element, end of an element or text; false at the end. */
  boolean next() {
    try {
      while (reader.hasNext()) {
        switch (reader.next()) {
          case XMLStreamConstants.START_ELEMENT:
            deeper();
            return true;
          case XMLStreamConstants.END_ELEMENT:
            depth--;
            return true;
          case XMLStreamConstants.CHARACTERS:
          case XMLStreamConstants.CDATA:
            return true;
          case XMLStreamConstants.DTD:
          case XMLStreamConstants.ENTITY_REFERENCE:
            throw new UnreadableStatement(Message.of("bankfiles.refused.entity"));
          default:
            break;
        }
      }
      return false;
    } catch (XMLStreamException | RuntimeException broken) {
      throw damaged(broken);
    }
  }

  private void deeper() {
    depth++;
    if (depth > DEEPEST) {
      throw new UnreadableStatement(Message.of("bankfiles.refused.nested"));
    }
  }

  /** How many elements are open. */
  int depth() {
    return depth;
  }

  boolean starts() {
    return reader.getEventType() == XMLStreamConstants.START_ELEMENT;
  }

  boolean starts(String name) {
    return starts() && reader.getLocalName().equals(name);
  }

  boolean ends() {
    return reader.getEventType() == XMLStreamConstants.END_ELEMENT;
  }

  boolean isText() {
    return !starts() && !ends();
  }

  /** The local name of the element that starts or ends. */
  String name() {
    return reader.getLocalName();
  }

  /** The text where it stands; it may be one piece of several. */
  String piece() {
    try {
      return reader.getText();
    } catch (RuntimeException broken) {
      throw damaged(broken);
    }
  }

  /** Skips what is left of the element that just started. */
  void skip() {
    int outer = depth - 1;
    while (depth > outer && next()) {
      // Whatever stands in it.
    }
  }

  /** The element that just started, with all in it, read to its end. */
  XmlNode node() {
    nodes = 0;
    return tree();
  }

  private XmlNode tree() {
    nodes++;
    if (nodes > MOST_NODES) {
      throw new UnreadableStatement(Message.of("bankfiles.refused.entry"));
    }
    String name = name();
    XmlNode node = new XmlNode(name, attribute());
    StringBuilder text = new StringBuilder();
    while (next() && !ends()) {
      if (starts()) {
        if (XmlNode.wanted(name())) {
          node.add(tree());
        } else {
          skip();
        }
      } else if (text.length() < Texts.MOST) {
        String piece = piece();
        text.append(piece, 0, Math.min(piece.length(), Texts.MOST - text.length()));
      }
    }
    node.write(Texts.line(text));
    return node;
  }

  /** The currency, the one attribute that matters. */
  private String attribute() {
    int count = reader.getAttributeCount();
    return count == 1 && reader.getAttributeLocalName(0).equals("Ccy")
        ? reader.getAttributeValue(0)
        : "";
  }

  private static UnreadableStatement damaged(Exception cause) {
    if (cause instanceof UnreadableStatement known) {
      return known;
    }
    for (Throwable at = cause; at != null; at = at.getCause()) {
      if (at instanceof CharacterCodingException) {
        return new UnreadableStatement(Message.of("bankfiles.damaged.bytes"), cause);
      }
    }
    String line = String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
    return new UnreadableStatement(Message.of("bankfiles.damaged", Texts.line(line)), cause);
  }

  @Override
  public void close() throws IOException {
    try {
      reader.close();
      source.close();
    } catch (IOException e) {
      throw e;
    } catch (Exception ignored) {
      // Nothing is lost: all that was wanted has been read.
    }
  }
}
