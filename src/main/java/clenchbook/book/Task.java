package clenchbook.book;

import java.util.Locale;

/** A task of the body that Strain rates. */
public enum Task {
  /** Trimming. */
  TRIM,
  /** Shaping hot at the anvil. */
  SHAPE_HOT,
  /** Shaping cold at the stall jack. */
  SHAPE_COLD,
  /** Nailing and clenching. */
  NAIL,
  /** Making shoes from bar. */
  MAKE,
  /** Grinding. */
  GRIND,
  /** Driving. */
  DRIVE;

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case, words separated by spaces
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
