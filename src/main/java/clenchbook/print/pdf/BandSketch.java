package clenchbook.print.pdf;

import clenchbook.print.chart.Palette;
import clenchbook.print.fonts.Typefaces;
import clenchbook.print.tags.PageTags;
import java.awt.Color;
import net.sf.jasperreports.engine.design.JRDesignBand;
import net.sf.jasperreports.engine.design.JRDesignElement;
import net.sf.jasperreports.engine.design.JRDesignExpression;
import net.sf.jasperreports.engine.design.JRDesignImage;
import net.sf.jasperreports.engine.design.JRDesignLine;
import net.sf.jasperreports.engine.design.JRDesignRectangle;
import net.sf.jasperreports.engine.design.JRDesignTextField;
import net.sf.jasperreports.engine.design.JasperDesign;
import net.sf.jasperreports.engine.export.PdfConstants;
import net.sf.jasperreports.engine.type.EvaluationTimeEnum;
import net.sf.jasperreports.engine.type.ExpressionTypeEnum;
import net.sf.jasperreports.engine.type.HorizontalTextAlignEnum;
import net.sf.jasperreports.engine.type.ModeEnum;
import net.sf.jasperreports.engine.type.PositionTypeEnum;
import net.sf.jasperreports.engine.type.ScaleImageEnum;
import net.sf.jasperreports.engine.type.SplitTypeEnum;
import net.sf.jasperreports.engine.type.TextAdjustEnum;
import net.sf.jasperreports.engine.type.VerticalTextAlignEnum;

/** Puts texts, rules and pictures into one band of a report; all measures in points. */
final class BandSketch {
  /** How a text looks. */
  record Look(String family, float size, boolean bold, Color colour, boolean right) {
    static Look text(float size, Color colour) {
      return new Look(Typefaces.TEXT, size, false, colour, false);
    }

    static Look display(float size) {
      return new Look(Typefaces.DISPLAY, size, false, Palette.INK, false);
    }

    Look inBold() {
      return new Look(family, size, true, colour, right);
    }

    Look toTheRight() {
      return new Look(family, size, bold, colour, true);
    }
  }

  private final JasperDesign design;
  private final JRDesignBand band = new JRDesignBand();

  BandSketch(JasperDesign design, int height) {
    this.design = design;
    band.setHeight(height);
    band.setSplitType(SplitTypeEnum.PREVENT);
  }

  JRDesignBand band() {
    return band;
  }

  BandSketch when(String field) {
    band.setPrintWhenExpression(new JRDesignExpression("$F{" + field + "}"));
    return this;
  }

  /** A text that makes the band higher where it needs more lines. */
  JRDesignTextField text(String expression, Look look, int x, int y, int width, int height) {
    JRDesignTextField field = new JRDesignTextField(design);
    place(field, x, y, width, height);
    field.setExpression(new JRDesignExpression(expression));
    field.setFontName(look.family());
    field.setFontSize(look.size());
    field.setBold(look.bold());
    field.setForecolor(look.colour());
    field.setBlankWhenNull(true);
    field.setTextAdjust(TextAdjustEnum.STRETCH_HEIGHT);
    if (look.right()) {
      field.setHorizontalTextAlign(HorizontalTextAlignEnum.RIGHT);
    }
    band.addElement(field);
    return field;
  }

  /** A text that moves with what stands above it. */
  JRDesignTextField below(String expression, Look look, int x, int y, int width, int height) {
    JRDesignTextField field = text(expression, look, x, y, width, height);
    field.setPositionType(PositionTypeEnum.FLOAT);
    return field;
  }

  /** A text of one line with page numbers and names in it. */
  JRDesignTextField line(String text, Look look, int x, int y, int width, int height) {
    JRDesignTextField field = text(text, look, x, y, width, height);
    JRDesignExpression expression = new JRDesignExpression(text);
    expression.setType(ExpressionTypeEnum.SIMPLE_TEXT);
    field.setExpression(expression);
    field.setTextAdjust(TextAdjustEnum.CUT_TEXT);
    return field;
  }

  JRDesignTextField total(String text, Look look, int x, int y, int width, int height) {
    JRDesignTextField field = line(text, look, x, y, width, height);
    field.setEvaluationTime(EvaluationTimeEnum.REPORT);
    return field;
  }

  /**
   * Says what a text is, so that it can be read aloud.
   *
   * @param field the text
   * @param tags such as {@code h2}, or {@code tr} for the first cell of a row
   */
  static void tag(JRDesignTextField field, String... tags) {
    for (String tag : tags) {
      boolean begins = tag.equals("tr") || tag.equals("table");
      field
          .getPropertiesMap()
          .setProperty(
              PageTags.PREFIX + tag, begins ? PdfConstants.TAG_START : PdfConstants.TAG_FULL);
    }
  }

  void rule(int x, int y, int width, float thickness, Color colour, boolean atBottom) {
    JRDesignLine rule = new JRDesignLine(design);
    place(rule, x, y, width, 1);
    rule.getLinePen().setLineWidth(thickness);
    rule.getLinePen().setLineColor(colour);
    if (atBottom) {
      rule.setPositionType(PositionTypeEnum.FIX_RELATIVE_TO_BOTTOM);
    }
    band.addElement(rule);
  }

  void block(int x, int y, int width, int height, Color colour) {
    JRDesignRectangle block = new JRDesignRectangle(design);
    place(block, x, y, width, height);
    block.setBackcolor(colour);
    block.setMode(ModeEnum.OPAQUE);
    block.getLinePen().setLineWidth(0f);
    band.addElement(block);
  }

  /** A picture, with the text that stands for it where it can't be seen. */
  void picture(String expression, String words, int x, int y, int width, int height) {
    JRDesignImage image = new JRDesignImage(design);
    place(image, x, y, width, height);
    image.setExpression(new JRDesignExpression(expression));
    image.setScaleImage(ScaleImageEnum.RETAIN_SHAPE);
    image.setHyperlinkTooltipExpression(new JRDesignExpression(words));
    band.addElement(image);
  }

  /** A text set apart by a bar and a tint. */
  void boxed(String expression, Look look, int x, int y, int width, int height) {
    JRDesignTextField field = text(expression, look, x, y, width, height);
    field.setMode(ModeEnum.OPAQUE);
    field.setBackcolor(Palette.SAND);
    field.setVerticalTextAlign(VerticalTextAlignEnum.MIDDLE);
    field.getLineBox().setPadding(6);
    field.getLineBox().setLeftPadding(9);
    field.getLineBox().getLeftPen().setLineWidth(2.5f);
    field.getLineBox().getLeftPen().setLineColor(Palette.RUST);
  }

  private static void place(JRDesignElement element, int x, int y, int width, int height) {
    element.setX(x);
    element.setY(y);
    element.setWidth(width);
    element.setHeight(height);
  }
}
