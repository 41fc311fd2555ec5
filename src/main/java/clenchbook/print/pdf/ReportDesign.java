package clenchbook.print.pdf;

import clenchbook.print.chart.Palette;
import clenchbook.print.fonts.Typefaces;
import clenchbook.print.pdf.BandSketch.Look;
import java.awt.font.FontRenderContext;
import java.util.List;
import java.util.UUID;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JRTextElement;
import net.sf.jasperreports.engine.design.JRDesignBand;
import net.sf.jasperreports.engine.design.JRDesignExpression;
import net.sf.jasperreports.engine.design.JRDesignField;
import net.sf.jasperreports.engine.design.JRDesignGroup;
import net.sf.jasperreports.engine.design.JRDesignParameter;
import net.sf.jasperreports.engine.design.JRDesignSection;
import net.sf.jasperreports.engine.design.JRDesignTextField;
import net.sf.jasperreports.engine.design.JasperDesign;
import net.sf.jasperreports.engine.type.OrientationEnum;
import net.sf.jasperreports.engine.type.StretchTypeEnum;
import net.sf.jasperreports.engine.type.TextAdjustEnum;
import net.sf.jasperreports.engine.type.VerticalTextAlignEnum;

/** Draws up the pages of a report for the tables it holds. */
final class ReportDesign {
  private static final int MARGIN = 45;
  private static final int FOOT_LINE = 11;

  /** What a page's number takes at least. */
  private static final int NUMBER = 55;

  private static final int MARK = TableLayout.MARK;
  private static final float SMALLEST = TableLayout.LETTERS;

  private static final int PICTURE_HEIGHT = 188;

  /** Caption, a heading of two lines and two rows: a table never begins with less. */
  private static final int LEAST_TABLE = 76;

  private static final int MOST_COLUMNS_UPRIGHT = 11;

  private final JasperDesign design = new JasperDesign();
  private final List<TableLayout> layouts;
  private final int width;
  private final int footLines;

  private ReportDesign(PaperSize paper, List<TableLayout> layouts, String foot) {
    this.layouts = layouts;
    boolean lying =
        layouts.stream().anyMatch(layout -> layout.columns().size() > MOST_COLUMNS_UPRIGHT);
    int pageWidth = lying ? paper.height() : paper.width();
    int pageHeight = lying ? paper.width() : paper.height();
    width = pageWidth - 2 * MARGIN;
    footLines = lines(foot, width);
    design.setName("report");
    // Without one the library draws it by lot, and equal reports would differ within.
    design.setUUID(new UUID(0, 1));
    design.setOrientation(lying ? OrientationEnum.LANDSCAPE : OrientationEnum.PORTRAIT);
    design.setPageWidth(pageWidth);
    design.setPageHeight(pageHeight);
    design.setColumnWidth(width);
    design.setLeftMargin(MARGIN);
    design.setRightMargin(MARGIN);
    design.setTopMargin(32);
    design.setBottomMargin(20);
    design.setProperty(JRTextElement.PROPERTY_SAVE_LINE_BREAKS, "true");
  }

  /**
   * A design for these tables.
   *
   * @param paper the sheet, laid across where a table has many columns
   * @param layouts the layouts of the tables
   * @param foot what stands at the foot of each page; empty for nothing
   * @param number the page's number and how many there are
   * @return the design, ready to compile
   */
  static JasperDesign of(PaperSize paper, List<TableLayout> layouts, String foot, PageNumber number)
      throws JRException {
    ReportDesign drawn = new ReportDesign(paper, layouts, foot);
    drawn.declare();
    drawn.frame(number);
    drawn.groups();
    drawn.details();
    return drawn.design;
  }

  /** How many lines a text takes; broken between words it needs a little more than its length. */
  private static int lines(String text, int width) {
    return (int) Math.ceil(length(text) * 1.04 / width);
  }

  private static double length(String text) {
    return Typefaces.text(SMALLEST, false)
        .getStringBounds(text, new FontRenderContext(null, true, true))
        .getWidth();
  }

  private void declare() throws JRException {
    for (String name : List.of("business", "title", "subtitle", "foot", "legend")) {
      JRDesignParameter parameter = new JRDesignParameter();
      parameter.setName(name);
      parameter.setValueClass(String.class);
      design.addParameter(parameter);
    }
    for (String name :
        List.of(
            "sheet",
            "tall",
            "section",
            "table",
            "keep",
            "heading1",
            "heading2",
            "caption",
            "text",
            "place",
            "words")) {
      field(name, String.class);
    }
    for (String name :
        List.of(
            "isHeading1",
            "isHeading2",
            "captioned",
            "answer",
            "toDo",
            "part",
            "paragraph",
            "caution",
            "keys",
            "picture",
            "nothing")) {
      field(name, Boolean.class);
    }
    field("image", Object.class);
    for (int i = 0; i < ReportRows.KEYS_ACROSS; i++) {
      field("keyLabel" + i, String.class);
      field("keyValue" + i, String.class);
      field("keyMark" + i, String.class);
    }
    int columns = layouts.stream().mapToInt(layout -> layout.columns().size()).max().orElse(0);
    for (int i = 0; i < columns; i++) {
      field("header" + i, String.class);
      field("cell" + i, String.class);
      field("mark" + i, String.class);
    }
    for (int i = 0; i < layouts.size(); i++) {
      field("head" + i, Boolean.class);
      field("row" + i, Boolean.class);
      field("total" + i, Boolean.class);
    }
  }

  private void field(String name, Class<?> type) throws JRException {
    JRDesignField field = new JRDesignField();
    field.setName(name);
    field.setValueClass(type);
    design.addField(field);
  }

  private void frame(PageNumber number) {
    BandSketch title = new BandSketch(design, 74);
    title.block(0, 0, 34, 4, Palette.RUST);
    JRDesignTextField business =
        title.text("$P{business}", Look.text(8.5f, Palette.QUIET), 0, 9, width, 12);
    business.setRemoveLineWhenBlank(true);
    BandSketch.tag(title.below("$P{title}", Look.display(21), 0, 21, width, 30), "h1");
    title.below("$P{subtitle}", Look.text(9.5f, Palette.QUIET), 0, 52, width, 14);
    design.setTitle(title.band());

    int words = footLines * FOOT_LINE;
    BandSketch foot = new BandSketch(design, words + 19);
    foot.rule(0, 3, width, 0.4f, Palette.RULE, false);
    Look small = Look.text(SMALLEST, Palette.QUIET);
    if (footLines > 0) {
      foot.text("$P{foot}", small, 0, 6, width, words).setTextAdjust(TextAdjustEnum.CUT_TEXT);
    }
    int side = 240;
    int place = Math.max(NUMBER, (int) Math.ceil(length(number.longest())) + 1);
    foot.text("$P{legend}", small, 0, words + 7, width - side, 11);
    JRDesignTextField name =
        foot.text("$P{title}", small.toTheRight(), width - side, words + 7, side - 19 - place, 11);
    name.setTextAdjust(TextAdjustEnum.CUT_TEXT);
    foot.line(number.number(), small.toTheRight(), width - 15 - place, words + 7, place, 11);
    foot.total(number.total(), small, width - 13, words + 7, 16, 11);
    design.setPageFooter(foot.band());
  }

  private void groups() throws JRException {
    group("sheet").setStartNewPage(true);
    group("tall").setMinHeightToStartNewPage(PICTURE_HEIGHT + 90);
    JRDesignGroup section = group("section");
    section.setMinHeightToStartNewPage(90);
    section.setMinDetailsToStartFromTop(1);
    BandSketch first = new BandSketch(design, 34).when("isHeading1");
    BandSketch.tag(first.text("$F{heading1}", Look.display(14).inBold(), 0, 10, width, 20), "h2");
    header(section, first.band());
    BandSketch second = new BandSketch(design, 24).when("isHeading2");
    JRDesignTextField heading =
        second.text("$F{heading2}", Look.text(10.5f, Palette.RUST).inBold(), 0, 6, width, 15);
    BandSketch.tag(heading, "h3");
    header(section, second.band());

    JRDesignGroup table = group("table");
    table.setReprintHeaderOnEachPage(true);
    table.setMinDetailsToStartFromTop(1);
    table.setMinHeightToStartNewPage(LEAST_TABLE);
    BandSketch caption = new BandSketch(design, 22).when("captioned");
    caption.text("$F{caption}", Look.text(8.5f, Palette.INK).inBold(), 0, 8, width, 12);
    header(table, caption.band());
    for (int i = 0; i < layouts.size(); i++) {
      header(table, tableHead(i));
    }
    keep();
  }

  /** Rows that stay on one page: a part's head with its first rows, a total with its last. */
  private void keep() throws JRException {
    group("keep").setKeepTogether(true);
  }

  private JRDesignGroup group(String name) throws JRException {
    JRDesignGroup group = new JRDesignGroup();
    group.setName(name);
    group.setExpression(new JRDesignExpression("$F{" + name + "}"));
    design.addGroup(group);
    return group;
  }

  private static void header(JRDesignGroup group, JRDesignBand band) {
    ((JRDesignSection) group.getGroupHeaderSection()).addBand(band);
  }

  private JRDesignBand tableHead(int number) {
    BandSketch head = new BandSketch(design, 16).when("head" + number);
    TableLayout layout = layouts.get(number);
    List<Integer> edges = layout.edges(width);
    for (int i = 0; i < layout.columns().size(); i++) {
      TableLayout.Column column = layout.columns().get(i);
      Look look = Look.text(SMALLEST, Palette.RUST).inBold();
      int right = edges.get(i + 1) - layout.beside(i);
      JRDesignTextField field =
          head.text(
              "$F{header" + i + "}",
              column.number() ? look.toTheRight() : look,
              edges.get(i),
              2,
              right - edges.get(i),
              11);
      BandSketch.tag(field, i == 0 ? new String[] {"table", "tr", "th"} : new String[] {"th"});
      field.setStretchType(StretchTypeEnum.CONTAINER_HEIGHT);
      field.setVerticalTextAlign(VerticalTextAlignEnum.BOTTOM);
    }
    head.rule(0, 15, width, 0.9f, Palette.RUST, true);
    return head.band();
  }

  private void details() {
    JRDesignSection detail = (JRDesignSection) design.getDetailSection();
    BandSketch answer = new BandSketch(design, 34).when("answer");
    answer.text("$F{text}", Look.display(14.5f), 0, 4, width, 22);
    detail.addBand(answer.band());
    BandSketch toDo = new BandSketch(design, 26).when("toDo");
    toDo.text("$F{place}", Look.display(13).inBold(), 4, 3, 16, 18);
    toDo.text("$F{text}", Look.text(10, Palette.INK), 24, 4, width - 24, 16);
    detail.addBand(toDo.band());
    BandSketch paragraph = new BandSketch(design, 20).when("paragraph");
    paragraph.text("$F{text}", Look.text(9, Palette.INK), 0, 4, width, 13);
    detail.addBand(paragraph.band());
    BandSketch caution = new BandSketch(design, 34).when("caution");
    caution.boxed("$F{text}", Look.text(8.5f, Palette.INK), 0, 4, width, 25);
    detail.addBand(caution.band());
    detail.addBand(keys());
    BandSketch picture = new BandSketch(design, PICTURE_HEIGHT + 42).when("picture");
    picture.text("$F{text}", Look.text(9, Palette.INK).inBold(), 0, 5, width, 13);
    picture.picture("$F{image}", "$F{words}", 0, 20, width, PICTURE_HEIGHT);
    picture.text("$F{words}", Look.text(8.5f, Palette.QUIET), 0, PICTURE_HEIGHT + 23, width, 12);
    detail.addBand(picture.band());
    BandSketch part = new BandSketch(design, 13).when("part");
    part.rule(0, 0, width, 0.3f, Palette.RULE, false);
    part.text("$F{text}", Look.text(SMALLEST, Palette.INK).inBold(), 0, 2, width, 11);
    detail.addBand(part.band());
    for (int i = 0; i < layouts.size(); i++) {
      detail.addBand(tableRow(i, false));
      detail.addBand(tableRow(i, true));
    }
  }

  private JRDesignBand keys() {
    BandSketch keys = new BandSketch(design, 52).when("keys");
    int each = width / ReportRows.KEYS_ACROSS;
    for (int i = 0; i < ReportRows.KEYS_ACROSS; i++) {
      int x = i * each;
      keys.text("$F{keyLabel" + i + "}", Look.text(SMALLEST, Palette.QUIET), x, 5, each - 10, 11);
      JRDesignTextField value =
          keys.text("$F{keyValue" + i + "}", Look.display(16).inBold(), x, 15, each - 10, 23);
      value.setTextAdjust(TextAdjustEnum.SCALE_FONT);
      keys.text("$F{keyMark" + i + "}", Look.text(SMALLEST, Palette.QUIET), x, 38, each - 10, 11);
    }
    return keys.band();
  }

  private JRDesignBand tableRow(int number, boolean total) {
    BandSketch row = new BandSketch(design, 12).when((total ? "total" : "row") + number);
    TableLayout layout = layouts.get(number);
    List<Integer> edges = layout.edges(width);
    row.rule(0, 0, width, total ? 0.9f : 0.3f, total ? Palette.INK : Palette.RULE, false);
    for (int i = 0; i < layout.columns().size(); i++) {
      TableLayout.Column column = layout.columns().get(i);
      Look look = Look.text(SMALLEST, Palette.INK);
      Look weighed = total ? look.inBold() : look;
      int right = edges.get(i + 1) - layout.beside(i);
      JRDesignTextField cell =
          row.text(
              "$F{cell" + i + "}",
              column.number() ? weighed.toTheRight() : weighed,
              edges.get(i),
              1,
              right - edges.get(i),
              11);
      BandSketch.tag(cell, i == 0 ? new String[] {"tr", "td"} : new String[] {"td"});
      if (column.marked()) {
        Look small = Look.text(SMALLEST, Palette.QUIET);
        BandSketch.tag(row.text("$F{mark" + i + "}", small, right + 1, 1, MARK, 11), "td");
      }
    }
    return row.band();
  }
}
