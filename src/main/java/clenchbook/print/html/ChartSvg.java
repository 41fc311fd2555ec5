package clenchbook.print.html;

import clenchbook.print.chart.ChartPicture;
import clenchbook.print.fonts.ScriptText;
import clenchbook.print.fonts.Typefaces;
import clenchbook.reports.blocks.Block;
import java.awt.Dimension;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Draws a picture as SVG that stands within a page: no script, no outside file, its own names. */
final class ChartSvg {
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** So wide that the letters are not too small on a phone. */
  private static final int WIDTH = 340;

  private static final int HEIGHT = 220;
  private static final String NO_SIZE = "";
  private static final Pattern SIZE = Pattern.compile("([0-9.]+)px");
  private static final FontRenderContext MEASURED = new FontRenderContext(null, true, true);
  private static final Pattern LONG_FRACTION = Pattern.compile("(\\d+\\.\\d)\\d+");

  /** What Batik writes on every element though it is the rule anyway, or belongs to the page. */
  private static final Set<String> LEFT_OFF =
      Set.of(
          "color-rendering",
          "image-rendering",
          "shape-rendering",
          "text-rendering",
          "color-interpolation",
          "font-family",
          "stroke-miterlimit",
          "xml:space");

  private final StringBuilder out = new StringBuilder();

  private ChartSvg() {}

  /**
   * A picture as an SVG element.
   *
   * @param picture what it shows
   * @param id a name that no other picture of the page has
   * @param numbers how its axes write numbers
   * @return the element
   */
  static String of(Block.Picture picture, String id, Locale numbers) {
    SVGGraphics2D pen = new SVGGraphics2D(context(id), false);
    pen.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
    new ChartPicture(picture.chart(), numbers)
        .draw(pen, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
    ChartSvg svg = new ChartSvg();
    svg.out.append(
        String.format(
            Locale.ROOT,
            "<svg viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\">",
            WIDTH,
            HEIGHT,
            Html.escaped(picture.title() + ". " + picture.inWords())));
    svg.children(pen.getRoot(), NO_SIZE);
    return svg.out.append("</svg>").toString();
  }

  private static SVGGeneratorContext context(String id) {
    try {
      Document page =
          DocumentBuilderFactory.newDefaultNSInstance()
              .newDocumentBuilder()
              .getDOMImplementation()
              .createDocument(SVG, "svg", null);
      SVGGeneratorContext context = SVGGeneratorContext.createDefault(page);
      context.setComment("");
      context.setPrecision(2);
      context.setIDGenerator(
          new SVGIDGenerator() {
            @Override
            public String generateID(String prefix) {
              return id + "-" + super.generateID(prefix);
            }
          });
      return context;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java reads XML", e);
    }
  }

  private void children(Node parent, String size) {
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        String own = element.getAttribute("font-size");
        element(element, own.isEmpty() ? size : own);
      } else if (node instanceof Text text && !text.getData().isBlank()) {
        out.append(Html.escaped(text.getData()));
      }
    }
  }

  private void element(Element element, String size) {
    boolean empty = !element.hasChildNodes();
    if (empty && Set.of("g", "defs").contains(element.getTagName())) {
      return;
    }
    out.append('<').append(element.getTagName());
    Map<String, String> attributes = attributes(element);
    if (element.getTagName().equals("text")) {
      fitted(element.getTextContent(), size).ifPresent(attributes::putAll);
    }
    attributes.forEach(
        (name, value) -> out.append(' ').append(name).append("=\"").append(value).append('"'));
    if (empty) {
      out.append("/>");
      return;
    }
    out.append('>');
    children(element, size);
    out.append("</").append(element.getTagName()).append('>');
  }

  /** As wide as it was laid out, in whatever letters the reader's browser has. */
  private static Optional<Map<String, String>> fitted(String text, String size) {
    Matcher points = SIZE.matcher(size);
    if (!points.matches() || text.length() < 2) {
      return Optional.empty();
    }
    double width =
        ScriptText.width(text, Typefaces.text(Float.parseFloat(points.group(1)), false), MEASURED);
    String length = String.format(Locale.ROOT, "%.1f", width);
    return Optional.of(Map.of("textLength", length, "lengthAdjust", "spacingAndGlyphs"));
  }

  private static Map<String, String> attributes(Element element) {
    Map<String, String> kept = new TreeMap<>();
    NamedNodeMap all = element.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      String name = all.item(i).getNodeName();
      if (!LEFT_OFF.contains(name) && !name.startsWith("xmlns")) {
        kept.put(name, shortened(Html.escaped(all.item(i).getNodeValue())));
      }
    }
    return kept;
  }

  /** A tenth of a unit is finer than any screen shows. */
  private static String shortened(String value) {
    Matcher fraction = LONG_FRACTION.matcher(value);
    return fraction.replaceAll("$1");
  }
}
