package clenchbook.document;

import java.awt.Color;

/** The colours of paper and page. */
final class Palette {
  /** Text. */
  static final Color INK = new Color(0x1D2429);

  /** Labels and small print. */
  static final Color QUIET = new Color(0x59636B);

  /** Headings and what counts. */
  static final Color RUST = new Color(0x8A3B12);

  /** Rules between rows. */
  static final Color RULE = new Color(0xC6CCD1);

  /** Behind a caution or key figures. */
  static final Color SAND = new Color(0xF6F1EC);

  private Palette() {}

  static String hex(Color colour) {
    return String.format(java.util.Locale.ROOT, "#%06X", colour.getRGB() & 0xFFFFFF);
  }
}
