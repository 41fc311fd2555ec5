package clenchbook.print.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** Reads a document as a reader for the blind does: by its structure, with PDFBox. */
final class TagsRead {
  private final Map<COSDictionary, Map<Integer, String>> texts = new HashMap<>();
  private final StringBuilder read = new StringBuilder();

  private TagsRead() {}

  /** The structure as indented text, a line a part; the document itself is left out. */
  static String of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      TagsRead reader = new TagsRead();
      for (PDPage page : document.getPages()) {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        Map<Integer, String> marks = new HashMap<>();
        extractor
            .getMarkedContents()
            .forEach(content -> marks.put(content.getMCID(), text(content)));
        reader.texts.put(page.getCOSObject(), marks);
      }
      COSDictionary root =
          document.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.STRUCT_TREE_ROOT);
      COSDictionary top = (COSDictionary) resolved(root.getDictionaryObject(COSName.K));
      reader.kids(top, -1);
      return reader.read.toString();
    }
  }

  private static String text(PDMarkedContent content) {
    StringBuilder text = new StringBuilder();
    for (Object piece : content.getContents()) {
      if (piece instanceof TextPosition letter) {
        text.append(letter.getUnicode());
      } else if (piece instanceof PDMarkedContent inner) {
        String actual = inner.getActualText();
        text.append(actual == null ? text(inner) : actual);
      }
    }
    return text.toString();
  }

  private static COSBase resolved(COSBase base) {
    return base instanceof COSObject object ? object.getObject() : base;
  }

  private void part(COSDictionary part, int depth) {
    read.append(" ".repeat(depth)).append(part.getNameAsString(COSName.S));
    String words = part.getString(COSName.ALT);
    if (words != null) {
      read.append(" (").append(words).append(')');
    }
    for (COSBase kid : list(part.getDictionaryObject(COSName.K))) {
      if (kid instanceof COSDictionary item && item.containsKey(COSName.ACTUAL_TEXT)) {
        boolean parted = Character.isWhitespace(read.charAt(read.length() - 1));
        read.append(parted ? "" : " ").append(item.getString(COSName.ACTUAL_TEXT));
      } else if (kid instanceof COSInteger mark && words == null) {
        String said = marked(part, mark.intValue());
        read.append(said.isBlank() || said.startsWith(" ") ? said : " " + said);
      } else if (kid instanceof COSDictionary item && "OBJR".equals(type(item))) {
        COSDictionary link = item.getCOSDictionary(COSName.OBJ);
        read.append(" -> ").append(link.getCOSDictionary(COSName.A).getString(COSName.URI));
      } else if (kid instanceof COSDictionary item && "MCR".equals(type(item))) {
        read.append(' ').append(marked(item, item.getInt(COSName.MCID)));
      }
    }
    read.append('\n');
    kids(part, depth);
  }

  private String marked(COSDictionary on, int mark) {
    return texts.get(on.getCOSDictionary(COSName.PG)).get(mark);
  }

  private static String type(COSDictionary item) {
    return item.getNameAsString(COSName.TYPE);
  }

  private void kids(COSDictionary part, int depth) {
    for (COSBase kid : list(part.getDictionaryObject(COSName.K))) {
      boolean spoken = kid instanceof COSDictionary span && span.containsKey(COSName.ACTUAL_TEXT);
      if (!spoken && kid instanceof COSDictionary item && item.containsKey(COSName.S)) {
        part(item, depth + 1);
      }
    }
  }

  private static List<COSBase> list(COSBase kids) {
    if (kids == null) {
      return List.of();
    }
    if (kids instanceof COSArray several) {
      return several.toList().stream().map(kid -> resolved((COSBase) kid)).toList();
    }
    return List.of(kids);
  }
}
