package clenchbook.book;

import java.util.Locale;

/** What a material is. */
public enum MaterialKind {
  /** A machine-made steel shoe. */
  KEG,
  /** A shoe forged by hand from bar. */
  HANDMADE,
  /** An aluminium shoe; worked cold only. */
  ALUMINIUM,
  /** Bar stock. */
  BAR,
  /** A nail. */
  NAIL,
  /** A pad. */
  PAD,
  /** A stud. */
  STUD,
  /** Glue. */
  ADHESIVE,
  /** Packing under a pad. */
  PACKING,
  /** Forge gas. */
  GAS,
  /** Anything else used up. */
  SUNDRY;

  /**
   * Whether it is a shoe.
   *
   * @return true for keg, handmade and aluminium
   */
  public boolean shoe() {
    return this == KEG || this == HANDMADE || this == ALUMINIUM;
  }

  /**
   * The word used in the workbook and in files.
   *
   * @return in lower case
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
