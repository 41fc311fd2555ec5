package clenchbook.print.chart;

import java.awt.Color;

/** The colours of paper and page. */
public final class Palette {
  /** Text. */
  public static final Color INK = new Color(0x1D2429);

  /** Labels and small print. */
  public static final Color QUIET = new Color(0x59636B);

  /** Headings and what counts. */
  public static final Color RUST = new Color(0x8A3B12);

  /** Rules between rows. */
  public static final Color RULE = new Color(0xC6CCD1);

  /** Behind a caution or key figures. */
  public static final Color SAND = new Color(0xF6F1EC);

  private Palette() {}

  static String hex(Color colour) {
    return String.format(java.util.Locale.ROOT, "#%06X", colour.getRGB() & 0xFFFFFF);
  }
}
