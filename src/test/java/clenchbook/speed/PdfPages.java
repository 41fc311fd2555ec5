package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** How many pages each document below a folder has, counted by another library. */
final class PdfPages {
  private PdfPages() {}

  static List<String> below(Path folder) throws IOException {
    List<String> pages = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(file -> file.toString().endsWith(".pdf")).sorted().toList()) {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
          pages.add(String.valueOf(document.getNumberOfPages()));
        }
      }
    }
    return pages;
  }
}
