package clenchbook.print.pdf;

import clenchbook.print.fonts.ScriptFace;
import clenchbook.print.scripts.LineOrder;
import clenchbook.print.scripts.Piece;
import clenchbook.print.scripts.ScriptFonts;
import clenchbook.print.scripts.SeenLine;
import clenchbook.print.scripts.ShapedRun;
import com.lowagie.text.Font;
import com.lowagie.text.pdf.PdfContentByte;
import java.awt.Color;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.text.AttributedCharacterIterator.Attribute;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.fonts.FontInfo;
import net.sf.jasperreports.engine.type.HorizontalTextAlignEnum;
import net.sf.jasperreports.engine.util.JRStyledText;
import net.sf.jasperreports.engine.util.JRTextAttribute;
import net.sf.jasperreports.pdf.PdfTextRenderer;
import net.sf.jasperreports.pdf.common.PdfTextAlignment;
import net.sf.jasperreports.pdf.common.PdfTextRendererContext;
import org.jspecify.annotations.Nullable;

/**
 * Writes the lines of a text as they were broken when the page was filled. The library itself would
 * measure and break them once more.
 */
final class LineRenderer extends PdfTextRenderer {
  /** Where the letters come from and where a line goes. */
  interface Paper {
    /** The face, size and colour for letters of these attributes. */
    Font font(Map<Attribute, Object> attributes);

    PdfContentByte content();

    /** The faces for letters that the text faces lack. */
    ScriptFonts scripts();

    /** In points. */
    int height();

    /** Called with the place of a line that has been written, for a link. */
    void wrote(float left, float low, float right, float high);
  }

  private final Paper paper;

  LineRenderer(JasperReportsContext context, PdfTextRendererContext text, Paper paper) {
    super(
        context,
        text.getAwtIgnoreMissingFont(),
        text.getIndentFirstLine(),
        text.getJustifyLastLine());
    this.paper = paper;
  }

  @Override
  public void render() {
    short @Nullable [] breaks = text.getLineBreakOffsets();
    boolean usual =
        breaks != null
            && text.getLineSpacingFactor() > 0
            && horizontalAlignment != PdfTextAlignment.JUSTIFIED
            && allText.indexOf('\t') < 0;
    if (usual && !text.isUnderline() && !text.isStrikeThrough()) {
      write(breaks == null ? new short[0] : breaks);
    } else {
      super.render();
    }
  }

  private void write(short[] breaks) {
    float low = paper.height() - y - topPadding - verticalAlignOffset - text.getLeadingOffset();
    float leading = text.getLineSpacingFactor() * text.getFontSize();
    int soft = 0;
    int nextBreak = breaks.length == 0 ? Integer.MAX_VALUE : breaks[0];
    int length = allText.length();
    int from = 0;
    while (from <= length) {
      int newline = allText.indexOf('\n', from);
      int end = newline < 0 ? length : newline;
      if (end > from) {
        pdfTagger.startText(text);
      }
      int begin = from;
      while (begin < end || begin == from) {
        int to = Math.min(end, Math.max(begin, nextBreak));
        low -= leading;
        line(begin, to, low);
        if (to == nextBreak) {
          soft++;
          nextBreak = soft < breaks.length ? nextBreak + breaks[soft] : Integer.MAX_VALUE;
        }
        if (to == begin) {
          break;
        }
        begin = to;
      }
      if (end > from) {
        pdfTagger.endText();
      }
      from = end + 1;
    }
  }

  private void line(int from, int end, float low) {
    int to = end;
    while (to > from && Character.isWhitespace(allText.charAt(to - 1))) {
      to--;
    }
    if (to == from) {
      return;
    }
    SeenLine seen = runs(from, to);
    float width = seen.width();
    float left = x + leftPadding;
    float room = this.width - leftPadding - rightPadding - width;
    // A column keeps its edge, whichever way a name in it runs.
    HorizontalTextAlignEnum side = text.getHorizontalTextAlign();
    if (side == HorizontalTextAlignEnum.RIGHT) {
      left += room;
    } else if (side == HorizontalTextAlignEnum.CENTER) {
      left += room / 2;
    }
    seen.write(paper.content(), left, low);
    paper.wrote(left, low - 0.3f * text.getFontSize(), left + width, low + text.getFontSize());
  }

  /** The pieces of a line. */
  private SeenLine runs(int from, int to) {
    List<JRStyledText.Run> styles = styledText.getRuns();
    if (styles.size() == 1 && isText(styles.get(0).attributes)) {
      return SeenLine.of(run(allText.substring(from, to), styles.get(0).attributes));
    }
    int start = allText.lastIndexOf('\n', from - 1) + 1;
    int newline = allText.indexOf('\n', from);
    String paragraph = allText.substring(start, newline < 0 ? allText.length() : newline);
    List<Piece> pieces = new ArrayList<>();
    List<Integer> levels = new ArrayList<>();
    AttributedCharacterIterator letters = styledText.getAttributedString().getIterator();
    for (LineOrder.Part part : LineOrder.parts(paragraph, from - start, to - start)) {
      for (int at = start + part.from(); at < start + part.to(); ) {
        letters.setIndex(at);
        int limit = Math.min(start + part.to(), letters.getRunLimit());
        String said = allText.substring(at, limit);
        pieces.add(piece(said, part.rightToLeft(), letters.getAttributes()));
        levels.add(part.level());
        at = limit;
      }
    }
    return SeenLine.of(pieces, levels);
  }

  private static boolean isText(Map<Attribute, Object> attributes) {
    return script(attributes).isEmpty();
  }

  private static Optional<ScriptFace> script(Map<Attribute, Object> attributes) {
    return ScriptFonts.script((FontInfo) attributes.get(JRTextAttribute.FONT_INFO));
  }

  private Piece piece(String said, boolean rightToLeft, Map<Attribute, Object> attributes) {
    Optional<ScriptFace> script = script(attributes);
    if (script.isEmpty()) {
      return run(rightToLeft ? LineOrder.turned(said) : said, attributes);
    }
    Number size = (Number) attributes.getOrDefault(TextAttribute.SIZE, text.getFontSize());
    boolean bold = TextAttribute.WEIGHT_BOLD.equals(attributes.get(TextAttribute.WEIGHT));
    Color colour = (Color) attributes.getOrDefault(TextAttribute.FOREGROUND, Color.BLACK);
    return new ShapedRun(
        paper.scripts(),
        script.get(),
        said,
        rightToLeft,
        new ShapedRun.Look(size.floatValue(), bold, colour));
  }

  private LineRun run(String letters, Map<Attribute, Object> attributes) {
    return new LineRun(letters, paper.font(attributes));
  }
}
