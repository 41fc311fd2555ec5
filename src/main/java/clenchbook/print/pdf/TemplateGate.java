package clenchbook.print.pdf;

import clenchbook.print.files.RefusedFile;
import clenchbook.texts.Message;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Looks a template over before the report library sees it. A template may come from anywhere, so
 * only what lays out text, lines and the two pictures that the program hands over is let through:
 * no code, no classes, no scriptlets, no files or addresses to load, no sub-reports, no mark-up, no
 * document type.
 */
final class TemplateGate {
  private static final long LARGEST_FILE = 1_000_000;

  private static final Set<String> ELEMENTS =
      Set.of(
          "jasperReport",
          "style",
          "parameter",
          "field",
          "variable",
          "initialValueExpression",
          "group",
          "groupHeader",
          "groupFooter",
          "background",
          "title",
          "pageHeader",
          "columnHeader",
          "detail",
          "columnFooter",
          "pageFooter",
          "lastPageFooter",
          "summary",
          "noData",
          "band",
          "element",
          "expression",
          "printWhenExpression",
          "text",
          "box",
          "pen",
          "topPen",
          "leftPen",
          "bottomPen",
          "rightPen",
          "paragraph",
          "description");

  private static final Set<String> KINDS =
      Set.of("staticText", "textField", "line", "rectangle", "ellipse", "frame", "image", "break");

  private static final Set<String> CLASSES =
      Set.of("java.lang.String", "java.lang.Boolean", "java.lang.Integer", "java.lang.Object");

  private static final Set<String> ATTRIBUTES =
      Set.of(
          "name",
          "language",
          "pageWidth",
          "pageHeight",
          "columnWidth",
          "leftMargin",
          "rightMargin",
          "topMargin",
          "bottomMargin",
          "uuid",
          "class",
          "default",
          "style",
          "fontName",
          "fontSize",
          "bold",
          "italic",
          "underline",
          "strikeThrough",
          "forecolor",
          "backcolor",
          "mode",
          "kind",
          "x",
          "y",
          "width",
          "height",
          "key",
          "type",
          "splitType",
          "textAdjust",
          "blankWhenNull",
          "hTextAlign",
          "vTextAlign",
          "hImageAlign",
          "vImageAlign",
          "scaleImage",
          "positionType",
          "stretchType",
          "printRepeatedValues",
          "printInFirstWholeBand",
          "printWhenGroupChanges",
          "printWhenDetailOverflows",
          "removeLineWhenBlank",
          "evaluationTime",
          "evaluationGroup",
          "keepTogether",
          "minHeightToStartNewPage",
          "reprintHeaderOnEachPage",
          "startNewPage",
          "footerPosition",
          "lineWidth",
          "lineStyle",
          "lineColor",
          "fill",
          "radius",
          "direction",
          "padding",
          "topPadding",
          "leftPadding",
          "bottomPadding",
          "rightPadding",
          "rotation",
          "lineSpacing",
          "lineSpacingSize",
          "spacingBefore",
          "spacingAfter",
          "leftIndent",
          "rightIndent",
          "firstLineIndent",
          "summaryNewPage",
          "summaryWithPageHeaderAndFooter",
          "titleNewPage",
          "floatColumnFooter",
          "whenNoDataType",
          "isForPrompting",
          "forPrompting");

  /** What a template may say of its parts, so that they can be read aloud. */
  private static final Pattern TAG =
      Pattern.compile(
          "net\\.sf\\.jasperreports\\.export\\.pdf\\.tag"
              + "\\.(h[1-6]|table|tr|th|td|lbl|lbody)=(full|start|end)");

  private static final Pattern PICTURE = Pattern.compile("\\s*\\$P\\{(logo|paymentCode)}\\s*");

  private TemplateGate() {}

  /**
   * The template's bytes, once they have been found harmless.
   *
   * @param file a template
   * @return its bytes
   * @throws IOException when it can't be read, or holds what is not let through; the message says
   *     what and in which line
   */
  static byte[] readChecked(Path file) throws IOException {
    if (Files.size(file) > LARGEST_FILE) {
      throw new RefusedFile(Message.of("print.template.tooLarge"));
    }
    byte[] bytes = Files.readAllBytes(file);
    requireUtf8(bytes);
    check(bytes);
    return bytes;
  }

  /** Java's reader of XML would print its own line about other bytes before it refuses them. */
  private static void requireUtf8(byte[] template) throws IOException {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(template));
    } catch (CharacterCodingException e) {
      throw new RefusedFile(Message.of("print.template.noText"), e);
    }
  }

  static void check(byte[] template) throws IOException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try {
      walk(factory.createXMLStreamReader(new ByteArrayInputStream(template)));
    } catch (XMLStreamException e) {
      int line = Optional.ofNullable(e.getLocation()).map(Location::getLineNumber).orElse(1);
      throw new RefusedFile(Message.of("print.template.notWellFormed", String.valueOf(line)), e);
    }
  }

  private static void walk(XMLStreamReader reader) throws XMLStreamException, IOException {
    Deque<String> open = new ArrayDeque<>();
    StringBuilder text = new StringBuilder();
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamConstants.DTD -> refuse(reader, Message.of("print.template.aDocumentType"));
        case XMLStreamConstants.PROCESSING_INSTRUCTION ->
            refuse(reader, Message.of("print.template.anInstruction"));
        case XMLStreamConstants.START_ELEMENT -> {
          open.push(enter(reader));
          text.setLength(0);
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
            text.append(reader.getText());
        case XMLStreamConstants.END_ELEMENT -> {
          open.pop();
          leave(reader, open.peek(), text.toString());
          text.setLength(0);
        }
        default -> {}
      }
    }
  }

  /** Gives the element's name, and its kind where it has one. */
  private static String enter(XMLStreamReader reader) throws IOException {
    String name = reader.getLocalName();
    if (name.equals("property")) {
      checkTag(reader);
      return name;
    }
    if (!ELEMENTS.contains(name)) {
      refuse(reader, Message.of("print.template.anElement", name));
    }
    String kind = name;
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String attribute = reader.getAttributeLocalName(i);
      String value = reader.getAttributeValue(i);
      checkAttribute(reader, attribute, value);
      if (attribute.equals("kind")) {
        kind = value;
      }
    }
    return kind;
  }

  private static void checkTag(XMLStreamReader reader) throws IOException {
    String name = reader.getAttributeValue(null, "name");
    String value = reader.getAttributeValue(null, "value");
    if (reader.getAttributeCount() != 2 || !TAG.matcher(name + "=" + value).matches()) {
      refuse(reader, Message.of("print.template.aProperty", name, String.valueOf(value)));
    }
  }

  private static void checkAttribute(XMLStreamReader reader, String attribute, String value)
      throws IOException {
    boolean known =
        switch (attribute) {
          case "kind" -> KINDS.contains(value);
          case "class" -> CLASSES.contains(value);
          case "language" -> value.equals("java");
          default -> ATTRIBUTES.contains(attribute);
        };
    if (!known) {
      refuse(reader, Message.literal(attribute + "=\"" + value + "\""));
    }
  }

  private static void leave(
      XMLStreamReader reader, @org.jspecify.annotations.Nullable String parent, String text)
      throws IOException {
    boolean pictureSource = "image".equals(parent) && reader.getLocalName().equals("expression");
    if (pictureSource && !PICTURE.matcher(text).matches()) {
      refuse(reader, Message.of("print.template.aPicture", "$P{logo}", "$P{paymentCode}"));
    }
  }

  private static void refuse(XMLStreamReader reader, Message what) throws IOException {
    int line = reader.getLocation().getLineNumber();
    throw new RefusedFile(Message.of("print.template.mayNotHold", String.valueOf(line), what));
  }
}
