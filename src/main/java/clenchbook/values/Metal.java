package clenchbook.values;

import java.math.BigDecimal;

/** What a bar or shoe is made of. */
public enum Metal {
  /** Carbon steel, nominal density of the EN section tables (EN 10219). */
  STEEL("7850"),
  /** Wrought aluminium, nominal density (EN 1999, from memory). */
  ALUMINIUM("2700");

  private final BigDecimal density;

  Metal(String kgPerCubicMetre) {
    this.density = new BigDecimal(kgPerCubicMetre);
  }

  /**
   * Nominal density.
   *
   * @return kilograms per cubic metre
   */
  public BigDecimal kgPerCubicMetre() {
    return density;
  }
}
