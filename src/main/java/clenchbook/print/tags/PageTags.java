package clenchbook.print.tags;

import clenchbook.print.scripts.Aloud;
import com.lowagie.text.pdf.ByteBuffer;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfContentByte;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import net.sf.jasperreports.engine.JROrigin;
import net.sf.jasperreports.engine.JRPrintElement;
import net.sf.jasperreports.engine.JRPrintImage;
import net.sf.jasperreports.engine.JRPrintText;
import net.sf.jasperreports.engine.export.PdfConstants;
import net.sf.jasperreports.engine.type.BandTypeEnum;
import net.sf.jasperreports.engine.util.StyledTextListWriter;
import net.sf.jasperreports.pdf.classic.ClassicPdfProducer;
import net.sf.jasperreports.pdf.common.PdfProducer;
import net.sf.jasperreports.pdf.common.PdfStructureEntry;
import net.sf.jasperreports.pdf.common.PdfTagger;
import org.jspecify.annotations.Nullable;

/**
 * Says of each piece of a page what it is, so that a document can be read aloud: the report library
 * calls this while it draws, and leaves what to say to others.
 *
 * <p>A text is a paragraph unless its template says otherwise by the library's own properties
 * ({@code net.sf.jasperreports.export.pdf.tag.h1} and its like); what stands in the head or foot of
 * each page, the heads of a table repeated on its next page, lines and tints are not read. So a
 * template without any such property gives a valid document too.
 */
public final class PageTags implements PdfTagger, Aloud {
  /** What the names of the properties begin with. */
  public static final String PREFIX = "net.sf.jasperreports.export.pdf.tag.";

  private static final String[] HEADINGS = {"h1", "h2", "h3", "h4", "h5", "h6"};
  private static final String NOT_READ = "/Artifact BMC\n";
  private static final String RUNNING = "/Artifact <</Type/Pagination>>BDC\n";
  private static final String END = "EMC\n";

  private enum Role {
    NOT_READ,
    PARAGRAPH,
    HEADING,
    CELL,
    LABELS,
    ANSWERS
  }

  private final TagNotes notes;
  private final Map<Integer, String> heads = new HashMap<>();
  private @Nullable ClassicPdfProducer producer;
  private @Nullable StructureTree tree;
  private @Nullable TableTags table;
  private @Nullable TagNode list;
  private Role role = Role.PARAGRAPH;
  private @Nullable TagNode node;
  private int paragraph;
  private int level;
  private int lastLevel;
  private boolean pageIsFresh = true;
  private int artifactAt;

  /**
   * Tags for one document.
   *
   * @param notes what its pages alone don't say
   */
  public PageTags(TagNotes notes) {
    this.notes = notes;
  }

  @Override
  public void setLanguage(@Nullable String language) {
    // The document's language stands in its catalogue.
  }

  @Override
  public void setPdfProducer(PdfProducer pdfProducer) {
    producer = (ClassicPdfProducer) pdfProducer;
  }

  @Override
  public void init() {
    tree = new StructureTree(producer().getPdfWriter());
  }

  private ClassicPdfProducer producer() {
    return Objects.requireNonNull(producer, "the exporter sets it first");
  }

  StructureTree tree() {
    return Objects.requireNonNull(tree, "the exporter begins it first");
  }

  /** Completes the structure; called once, when all pages are drawn. */
  public void finish() {
    leaveTable();
    tree().finish();
  }

  @Override
  public void startPage() {
    pageIsFresh = true;
  }

  @Override
  public void endPage() {
    // A table may go on overleaf.
  }

  @Override
  public void startElement(JRPrintElement element) {
    paragraph = 0;
    node = null;
    if (!(element instanceof JRPrintText text)) {
      return;
    }
    role = role(text);
    if (role == Role.CELL && isSet(text, PdfConstants.PROPERTY_TAG_TR, PdfConstants.TAG_START)) {
      table().row();
    }
  }

  private Role role(JRPrintText text) {
    if (repeats(text)) {
      return Role.NOT_READ;
    }
    pageIsFresh = false;
    if (!text.hasProperties()) {
      return Role.PARAGRAPH;
    }
    if (isFull(text, "td") || isFull(text, "th")) {
      if (isSet(text, PdfConstants.PROPERTY_TAG_TABLE, PdfConstants.TAG_START)) {
        leaveTable();
      }
      return Role.CELL;
    }
    for (int i = 0; i < HEADINGS.length; i++) {
      if (isFull(text, HEADINGS[i])) {
        level = i + 1;
        return Role.HEADING;
      }
    }
    return isFull(text, "lbl")
        ? Role.LABELS
        : isFull(text, "lbody") ? Role.ANSWERS : Role.PARAGRAPH;
  }

  private static boolean isFull(JRPrintText text, String tag) {
    return isSet(text, PREFIX + tag, PdfConstants.TAG_FULL);
  }

  private static boolean isSet(JRPrintText text, String property, String value) {
    return value.equals(text.getPropertiesMap().getProperty(property));
  }

  /** What stands on every page, or again at the top of the next. */
  private boolean repeats(JRPrintText text) {
    JROrigin origin = text.getOrigin();
    BandTypeEnum band = origin == null ? BandTypeEnum.UNKNOWN : origin.getBandType();
    return switch (band) {
      case PAGE_HEADER, PAGE_FOOTER, LAST_PAGE_FOOTER, COLUMN_FOOTER, BACKGROUND -> true;
      case COLUMN_HEADER, GROUP_HEADER -> {
        String said = String.valueOf(text.getFullText());
        String before = heads.put(text.getSourceElementId(), said);
        yield pageIsFresh && tree().page() > 0 && said.equals(before);
      }
      default -> false;
    };
  }

  private TableTags table() {
    TableTags open = table;
    if (open == null) {
      open = new TableTags(tree().document().add("Table"));
      table = open;
    }
    return open;
  }

  private void leaveTable() {
    if (table != null) {
      table.finish();
      table = null;
    }
  }

  @Override
  public void endElement(JRPrintElement element) {
    if (element instanceof JRPrintText text && role == Role.HEADING && node != null) {
      notes.heading(lastLevel, text, tree().page());
    }
  }

  @Override
  public void startText(JRPrintText text) {
    if (role == Role.NOT_READ) {
      write(RUNNING);
      return;
    }
    TagNode at = partOf(text);
    node = at;
    write("/" + at.type() + " <</MCID " + tree().mark(at) + ">>BDC\n");
    paragraph++;
  }

  private TagNode partOf(JRPrintText text) {
    if (role == Role.CELL) {
      return node == null ? table().cell(text, isFull(text, "th")) : node;
    }
    leaveTable();
    return switch (role) {
      case HEADING -> node == null ? heading() : node;
      case LABELS -> label();
      case ANSWERS -> answer();
      default -> paragraph(text);
    };
  }

  private TagNode paragraph(JRPrintText text) {
    TagNode own = tree().document().add("P");
    return notes.link(text, paragraph).isPresent() ? own.add("Link") : own;
  }

  /** No level is left out on the way down. */
  private TagNode heading() {
    lastLevel = Math.min(level, lastLevel + 1);
    return tree().document().add("H" + lastLevel);
  }

  private TagNode label() {
    if (paragraph == 0) {
      list = tree().document().add("L");
    }
    TagNode open = list == null ? tree().document().add("L") : list;
    list = open;
    return open.add("LI").add("Lbl");
  }

  /** The answer to the label of the same line. */
  private TagNode answer() {
    TagNode open = list;
    if (open != null
        && paragraph < open.kids().size()
        && open.kids().get(paragraph) instanceof TagNode.Part part) {
      return part.node().add("LBody");
    }
    return tree().document().add("P");
  }

  @Override
  public void begin(String said) {
    TagNode at = node;
    if (role == Role.NOT_READ || at == null) {
      return;
    }
    write(END);
    TagNode span = at.add("Span");
    span.say("/ActualText" + PdfText.string(said));
    write("/Span <</MCID " + tree().mark(span) + ">>BDC\n");
  }

  @Override
  public void end() {
    TagNode at = node;
    if (role == Role.NOT_READ || at == null) {
      return;
    }
    write(END);
    write("/" + at.type() + " <</MCID " + tree().mark(at) + ">>BDC\n");
  }

  @Override
  public void startText(JRPrintText text, @Nullable String actual) {
    startText(text);
  }

  @Override
  public void endText() {
    write(END);
  }

  /**
   * Where the paragraph that is being drawn leads to.
   *
   * @param text the text it is part of
   * @return an address; empty where it is no link
   */
  public Optional<String> link(JRPrintText text) {
    TagNode at = node;
    return at != null && at.type().equals("Link")
        ? notes.link(text, paragraph - 1)
        : Optional.empty();
  }

  /**
   * Puts a link where the paragraph that is being drawn is.
   *
   * @param link the link's place and address
   */
  public void annotate(PdfAnnotation link) {
    tree().annotate(Objects.requireNonNull(node), link);
  }

  @Override
  public void startImage(JRPrintImage image, float left, float low, float right, float high) {
    Optional<String> words = notes.picture(image);
    if (words.isEmpty()) {
      write(NOT_READ);
      return;
    }
    pageIsFresh = false;
    leaveTable();
    TagNode figure = tree().document().add("Figure");
    figure.say("/Alt" + PdfText.string(words.get()));
    String box = "[" + left + " " + low + " " + right + " " + high + "]";
    figure.say("/A<</O/Layout/Placement/Block/BBox" + box + ">>");
    write("/Figure <</MCID " + tree().mark(figure) + ">>BDC\n");
  }

  @Override
  public void endImage() {
    write(END);
  }

  @Override
  public void beginArtifact() {
    write(NOT_READ);
    artifactAt = buffer().size();
  }

  /** Where nothing was drawn, nothing needs to be said of it. */
  @Override
  public void endArtifact() {
    ByteBuffer drawn = buffer();
    if (drawn.size() == artifactAt) {
      drawn.setSize(artifactAt - NOT_READ.length());
    } else {
      write(END);
    }
  }

  private ByteBuffer buffer() {
    return content().getInternalBuffer();
  }

  private PdfContentByte content() {
    return producer().getPdfContentByte();
  }

  private void write(String operators) {
    content().setLiteral(operators);
  }

  @Override
  public boolean isFirstLinkParagraph() {
    return false;
  }

  @Override
  public @Nullable PdfStructureEntry getCurrentLinkTag() {
    return null;
  }

  @Override
  public @Nullable StyledTextListWriter getListWriter() {
    return null;
  }
}
