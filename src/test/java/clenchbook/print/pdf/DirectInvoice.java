package clenchbook.print.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.Image;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.sf.jasperreports.engine.JRPrintElement;
import net.sf.jasperreports.engine.JRPrintFrame;
import net.sf.jasperreports.engine.JRPrintImage;
import net.sf.jasperreports.engine.JRPrintLine;
import net.sf.jasperreports.engine.JRPrintRectangle;
import net.sf.jasperreports.engine.JRPrintText;
import net.sf.jasperreports.engine.JasperPrint;
import net.sf.jasperreports.engine.type.HorizontalTextAlignEnum;

/**
 * The floor of an invoice: the texts, lines and logo of a page that was filled once, drawn straight
 * with the PDF library, in the same fonts, embedded as subsets and packed as the program packs
 * them. It lays nothing out: every line of text comes with its place.
 */
final class DirectInvoice {
  /** From the top of a line to its foot, in sizes of the font. */
  private static final float ASCENT = 1.07f;

  private record Line(
      String text, String font, float size, Color colour, int align, float x, float y) {}

  private record Stroke(float x, float y, float toX, float toY, float width, Color colour) {}

  private record Box(float x, float y, float width, float height, Color colour) {}

  private final int width;
  private final int height;
  private final byte[] jpeg;
  private final int packing;
  private final List<Line> lines = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();
  private final List<Box> pictures = new ArrayList<>();
  private final Map<String, BaseFont> fonts = new LinkedHashMap<>();

  DirectInvoice(JasperPrint filled, byte[] jpeg, int packing) {
    this.width = filled.getPageWidth();
    this.height = filled.getPageHeight();
    this.jpeg = jpeg.clone();
    this.packing = packing;
    filled.getPages().get(0).getElements().forEach(element -> take(element, 0, height));
  }

  private void take(JRPrintElement element, float left, float high) {
    float x = left + element.getX();
    float top = high - element.getY();
    if (element instanceof JRPrintFrame frame) {
      frame.getElements().forEach(inner -> take(inner, x, top));
      return;
    }
    Color colour = element.getForecolor();
    if (element instanceof JRPrintText text) {
      take(text, x, top);
    } else if (element instanceof JRPrintLine line) {
      float thick = line.getLinePen().getLineWidth();
      Color ink = line.getLinePen().getLineColor();
      strokes.add(new Stroke(x, top, x + element.getWidth(), top, thick, ink));
    } else if (element instanceof JRPrintRectangle) {
      float low = top - element.getHeight();
      boxes.add(new Box(x, low, element.getWidth(), element.getHeight(), element.getBackcolor()));
    } else if (element instanceof JRPrintImage image && image.getRenderer() != null) {
      float low = top - element.getHeight();
      pictures.add(new Box(x, low, element.getWidth(), element.getHeight(), colour));
    }
  }

  private void take(JRPrintText text, float x, float top) {
    String whole = text.getFullText();
    if (whole == null || whole.isEmpty()) {
      return;
    }
    float size = text.getFontSize();
    float leading = size * text.getLineSpacingFactor();
    int align = align(text.getHorizontalTextAlign());
    float at = x + (align == 0 ? 0 : align == 2 ? text.getWidth() : text.getWidth() / 2f);
    float y = top - size * ASCENT;
    for (String line : whole.split("\n")) {
      lines.add(new Line(line, file(text), size, text.getForecolor(), align, at, y));
      y -= leading;
    }
  }

  private static int align(HorizontalTextAlignEnum align) {
    return align == HorizontalTextAlignEnum.RIGHT
        ? PdfContentByte.ALIGN_RIGHT
        : align == HorizontalTextAlignEnum.CENTER
            ? PdfContentByte.ALIGN_CENTER
            : PdfContentByte.ALIGN_LEFT;
  }

  private static String file(JRPrintText text) {
    String family = text.getFontName().replace(" ", "");
    return "fonts/" + family + (text.isBold() ? "-Bold.ttf" : "-Regular.ttf");
  }

  byte[] pdf() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    Document document = new Document(new Rectangle(width, height), 0, 0, 0, 0);
    PdfWriter writer = PdfWriter.getInstance(document, bytes);
    writer.setCompressionLevel(packing);
    document.open();
    PdfContentByte pen = writer.getDirectContent();
    boxes.forEach(box -> fill(pen, box));
    strokes.forEach(stroke -> draw(pen, stroke));
    for (Line line : lines) {
      write(pen, line);
    }
    for (Box place : pictures) {
      Image image = Image.getInstance(jpeg);
      image.scaleToFit(place.width(), place.height());
      float x = place.x() + place.width() - image.getScaledWidth();
      image.setAbsolutePosition(x, place.y() + place.height() - image.getScaledHeight());
      pen.addImage(image);
    }
    document.close();
    return bytes.toByteArray();
  }

  private static void fill(PdfContentByte pen, Box box) {
    pen.setColorFill(box.colour());
    pen.rectangle(box.x(), box.y(), box.width(), box.height());
    pen.fill();
  }

  private static void draw(PdfContentByte pen, Stroke stroke) {
    pen.setLineWidth(stroke.width());
    pen.setColorStroke(stroke.colour());
    pen.moveTo(stroke.x(), stroke.y());
    pen.lineTo(stroke.toX(), stroke.toY());
    pen.stroke();
  }

  private void write(PdfContentByte pen, Line line) throws IOException {
    pen.beginText();
    pen.setColorFill(line.colour());
    pen.setFontAndSize(font(line.font()), line.size());
    pen.showTextAligned(line.align(), line.text(), line.x(), line.y(), 0);
    pen.endText();
  }

  private BaseFont font(String file) throws IOException {
    BaseFont font = fonts.get(file);
    if (font == null) {
      font = BaseFont.createFont(file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED);
      fonts.put(file, font);
    }
    font.setCompressionLevel(packing);
    return font;
  }
}
