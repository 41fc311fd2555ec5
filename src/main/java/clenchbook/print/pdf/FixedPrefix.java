package clenchbook.print.pdf;

import java.security.SecureRandom;

/**
 * Draws the same every time. The PDF library asks for a number by lot only to name the embedded
 * part of a font, and equal documents shall be equal.
 */
final class FixedPrefix extends SecureRandom {
  static final SecureRandom ALWAYS = new FixedPrefix();

  private static final long serialVersionUID = 1L;

  private FixedPrefix() {
    super();
  }

  @Override
  public double nextDouble() {
    return 0;
  }
}
