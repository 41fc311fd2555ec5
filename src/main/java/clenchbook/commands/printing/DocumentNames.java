package clenchbook.commands.printing;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.print.files.SafeFileNames;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the files of invoices and credit notes are named. */
public final class DocumentNames {
  private DocumentNames() {}

  /** The path of each document that is not void, by number, in the order of the documents. */
  public static Map<String, String> of(List<BilledDocument> documents) {
    SafeFileNames names = new SafeFileNames();
    Map<String, String> paths = new LinkedHashMap<>();
    for (BilledDocument document : documents) {
      if (document.counts()) {
        String words = document.number() + " " + document.owner();
        paths.put(document.number(), "invoices/" + names.name(words, ".pdf"));
      }
    }
    return paths;
  }

  /** The path of the structured invoice that goes with a document's PDF. */
  public static String eInvoice(String path) {
    return path.replaceFirst("^invoices/", "e-invoices/").replaceFirst("\\.pdf$", ".xml");
  }
}
