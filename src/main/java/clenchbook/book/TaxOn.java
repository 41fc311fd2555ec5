package clenchbook.book;

import java.util.Locale;

/** Where the tax of a document is rounded. */
public enum TaxOn {
  /** Once for each code of the whole document. */
  INVOICE,
  /** On each line. */
  LINE;

  /** The choice that a setting's word names. */
  static TaxOn of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** The word of the setting. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
