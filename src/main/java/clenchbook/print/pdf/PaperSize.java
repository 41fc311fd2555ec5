package clenchbook.print.pdf;

import clenchbook.reports.letters.PrintLocale;
import java.util.Set;

/** The sheet a document is printed on, in points of 1/72 inch. */
enum PaperSize {
  /** ISO 216, 210 x 297 mm. */
  A4("a4", 595, 842),
  /** 8 1/2 x 11 in. */
  LETTER("letter", 612, 792);

  /** Countries whose everyday sheet is Letter; from memory. */
  private static final Set<String> LETTER_COUNTRIES =
      Set.of(
          "US", "CA", "MX", "PH", "CL", "CO", "VE", "CR", "GT", "PA", "DO", "PR", "SV", "NI", "HN");

  private final String key;
  private final int width;
  private final int height;

  PaperSize(String key, int width, int height) {
    this.key = key;
    this.width = width;
    this.height = height;
  }

  static PaperSize of(PrintLocale locale) {
    return LETTER_COUNTRIES.contains(locale.country()) ? LETTER : A4;
  }

  String key() {
    return key;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }
}
