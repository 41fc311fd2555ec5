package clenchbook.speed;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The floor of reading: one pass of the JDK's own StAX parser over the sheets, the styles and the
 * shared texts of a workbook. It looks at every attribute and every text and keeps nothing.
 */
public final class StaxPass {
  private StaxPass() {}

  /** {@code StaxPass FILE} */
  public static void main(String[] args) throws Exception {
    System.out.println(over(Path.of(args[0])));
  }

  /** Makes the pass; gives the number of characters looked at. */
  static long over(Path file) throws IOException, XMLStreamException {
    long seen = 0;
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        if (wanted(entry.getName())) {
          try (InputStream part = new BufferedInputStream(zip.getInputStream(entry), 1 << 16)) {
            seen += pass(factory.createXMLStreamReader(part));
          }
        }
      }
    }
    return seen;
  }

  private static boolean wanted(String part) {
    return part.startsWith("xl/worksheets/sheet")
        || part.equals("xl/styles.xml")
        || part.equals("xl/sharedStrings.xml");
  }

  private static long pass(XMLStreamReader xml) throws XMLStreamException {
    long seen = 0;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
          seen += xml.getAttributeValue(i).length();
        }
      } else if (event == XMLStreamConstants.CHARACTERS) {
        seen += xml.getTextLength();
      }
    }
    return seen;
  }
}
