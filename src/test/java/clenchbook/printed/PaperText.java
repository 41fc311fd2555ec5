package clenchbook.printed;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The words of a PDF or of the month's page, with plain blanks and plain minus signs. */
final class PaperText {
  private PaperText() {}

  static String of(Path file) throws IOException {
    return file.toString().endsWith(".pdf") ? pdf(file) : html(file);
  }

  /** The words of a PDF; its page numbers must run from 1 to the last. */
  private static String pdf(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      StringBuilder all = new StringBuilder();
      int pages = document.getNumberOfPages();
      for (int number = 1; number <= pages; number++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        String page = plain(stripper.getText(document));
        String foot = "Page " + number + " of " + pages;
        if (!page.endsWith(foot)) {
          throw new AssertionError(file + ": no foot on page " + number + ": " + page);
        }
        all.append(page, 0, page.length() - foot.length()).append(' ');
      }
      return all.toString();
    }
  }

  private static String html(Path file) throws IOException {
    String page = Files.readString(file, StandardCharsets.UTF_8);
    return plain(
        page.replaceAll("(?s)<style>.*?</style>|<svg.*?</svg>|<[^>]*>", " ")
            .replace("&nbsp;", " ")
            .replace("&#39;", "'")
            .replace("&amp;", "&"));
  }

  static String plain(String text) {
    return text.replaceAll("[\\s\u00A0\u202F]+", " ")
        .replaceAll("[\u2212\u2013](?=[^0-9A-Za-z ]?[0-9])", "-")
        .strip();
  }
}
