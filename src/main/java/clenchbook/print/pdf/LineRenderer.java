package clenchbook.print.pdf;

import com.lowagie.text.Font;
import com.lowagie.text.pdf.PdfContentByte;
import java.text.AttributedCharacterIterator;
import java.text.AttributedCharacterIterator.Attribute;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.type.RunDirectionEnum;
import net.sf.jasperreports.engine.util.JRStyledText;
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
            && text.getRunDirection() != RunDirectionEnum.RTL
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
    List<LineRun> runs = runs(from, to);
    float width = 0;
    for (LineRun run : runs) {
      width += run.width();
    }
    float left = x + leftPadding;
    float room = this.width - leftPadding - rightPadding - width;
    if (horizontalAlignment == PdfTextAlignment.RIGHT) {
      left += room;
    } else if (horizontalAlignment == PdfTextAlignment.CENTER) {
      left += room / 2;
    }
    float at = left;
    for (LineRun run : runs) {
      run.write(paper.content(), at, low);
      at += run.width();
    }
    paper.wrote(left, low - 0.3f * text.getFontSize(), at, low + text.getFontSize());
  }

  private List<LineRun> runs(int from, int to) {
    List<JRStyledText.Run> styles = styledText.getRuns();
    if (styles.size() == 1) {
      return List.of(run(from, to, styles.get(0).attributes));
    }
    List<LineRun> runs = new ArrayList<>();
    AttributedCharacterIterator letters = styledText.getAttributedString().getIterator();
    for (int at = from; at < to; ) {
      letters.setIndex(at);
      int limit = Math.min(to, letters.getRunLimit());
      runs.add(run(at, limit, letters.getAttributes()));
      at = limit;
    }
    return runs;
  }

  private LineRun run(int from, int to, Map<Attribute, Object> attributes) {
    return new LineRun(allText.substring(from, to), paper.font(attributes));
  }
}
