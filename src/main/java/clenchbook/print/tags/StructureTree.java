package clenchbook.print.tags;

import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfStructureTreeRoot;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The structure of one document, written when its pages are done. The PDF library's own tree takes
 * neither links nor parts whose order is known only later.
 *
 * <p>Source: ISO 32000-1:2008, 14.7 (logical structure) and 14.8 (tagged PDF).
 */
final class StructureTree {
  private static final PdfName STRUCT_PARENT = new PdfName("StructParent");
  private static final PdfName NEXT_KEY = new PdfName("ParentTreeNextKey");

  /** A link and the part it belongs to. */
  private record Owned(PdfAnnotation annotation, TagNode node) {}

  private final PdfWriter writer;
  private final TagNode document = new TagNode("Document", null);
  private final List<List<TagNode>> pages = new ArrayList<>();
  private final List<Owned> annotations = new ArrayList<>();
  private final Map<TagNode, PdfIndirectReference> references = new IdentityHashMap<>();

  StructureTree(PdfWriter writer) {
    this.writer = writer;
  }

  /** The part that holds all others. */
  TagNode document() {
    return document;
  }

  /** The page that is being drawn, counted from 0. */
  int page() {
    return writer.getCurrentPageNumber() - 1;
  }

  /** Gives the next piece of the page to a part, and says its number. */
  int mark(TagNode node) {
    List<TagNode> marks = marksOn(page());
    marks.add(node);
    node.place(new TagNode.Mark(page(), marks.size() - 1));
    return marks.size() - 1;
  }

  private List<TagNode> marksOn(int page) {
    while (pages.size() <= page) {
      pages.add(new ArrayList<>());
    }
    return pages.get(page);
  }

  /** Puts a link onto the page that is being drawn, as part of a node. */
  void annotate(TagNode node, PdfAnnotation annotation) {
    annotations.add(new Owned(annotation, node));
    // The keys of pages are their numbers; no document of ours has more pages than this.
    annotation.put(STRUCT_PARENT, new PdfNumber(PAGES + annotations.size() - 1));
    writer.addAnnotation(annotation);
    node.place(new TagNode.Note(page(), annotation.getIndirectReference().toString()));
  }

  private static final int PAGES = 1_000_000;

  /** Writes the tree; called once, before the document is closed. */
  void finish() {
    try {
      PdfStructureTreeRoot root = writer.getStructureTreeRoot();
      write(document, root.getReference().toString());
      root.put(PdfName.K, reference(document));
      PdfLiteral parents = new PdfLiteral(parentTree());
      root.put(PdfName.PARENTTREE, writer.addToBody(parents).getIndirectReference());
      root.put(NEXT_KEY, new PdfNumber(PAGES + annotations.size()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private PdfIndirectReference reference(TagNode node) {
    return references.computeIfAbsent(node, unused -> writer.getPdfIndirectReference());
  }

  private void write(TagNode node, String parent) throws IOException {
    String own = reference(node).toString();
    StringBuilder text = new StringBuilder(96);
    text.append("<</S/").append(node.type()).append("/P ").append(parent);
    text.append(node.attributes());
    List<TagNode.Kid> kids = node.kids();
    int page = firstPage(kids);
    if (page >= 0) {
      text.append("/Pg ").append(writer.getPageReference(page + 1));
    }
    if (kids.size() == 1) {
      text.append("/K ").append(kid(kids.get(0), page));
    } else if (!kids.isEmpty()) {
      text.append("/K[");
      kids.forEach(kid -> text.append(kid(kid, page)).append(' '));
      text.append(']');
    }
    writer.addToBody(new PdfLiteral(text.append(">>").toString()), reference(node));
    for (TagNode.Kid kid : kids) {
      if (kid instanceof TagNode.Part part) {
        write(part.node(), own);
      }
    }
  }

  private static int firstPage(List<TagNode.Kid> kids) {
    for (TagNode.Kid kid : kids) {
      if (kid instanceof TagNode.Mark mark) {
        return mark.page();
      }
    }
    return -1;
  }

  private String kid(TagNode.Kid kid, int page) {
    if (kid instanceof TagNode.Part part) {
      return reference(part.node()).toString();
    }
    if (kid instanceof TagNode.Mark mark) {
      return mark.page() == page
          ? Integer.toString(mark.number())
          : "<</Type/MCR/Pg "
              + writer.getPageReference(mark.page() + 1)
              + "/MCID "
              + mark.number()
              + ">>";
    }
    TagNode.Note note = (TagNode.Note) kid;
    return "<</Type/OBJR/Obj "
        + note.reference()
        + "/Pg "
        + writer.getPageReference(note.page() + 1)
        + ">>";
  }

  /** From each marked piece and each link back to its part. */
  private String parentTree() {
    StringBuilder text = new StringBuilder("<</Nums[");
    for (int page = 0; page < pages.size(); page++) {
      text.append(page).append('[');
      pages.get(page).forEach(node -> text.append(reference(node)).append(' '));
      text.append(']');
    }
    for (int i = 0; i < annotations.size(); i++) {
      text.append(PAGES + i).append(' ').append(reference(annotations.get(i).node())).append(' ');
    }
    return text.append("]>>").toString();
  }
}
