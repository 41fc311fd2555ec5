package clenchbook.values;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The section of a flat bar.
 *
 * @param widthMm width in millimetres, positive
 * @param thicknessMm thickness in millimetres, positive
 */
public record Section(BigDecimal widthMm, BigDecimal thicknessMm) {
  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
  private static final Pattern FORM =
      Pattern.compile(
          "\\s*([0-9./,\\s]+?)\\s*(mm|in|inch|inches|\")?\\s*[x×*]\\s*([0-9./,\\s]+?)\\s*(mm|in|inch|inches|\")?\\s*");

  /**
   * Reads a section such as {@code 3/4 x 5/16 in}, {@code 20 x 8 mm} or {@code 20 mm x 5/16 in};
   * without a unit it is millimetres, unless a fraction shows inches.
   *
   * @param text what the farrier wrote; blank or unreadable gives empty
   * @return the section, exact to 20 figures
   */
  public static Optional<Section> parse(String text) {
    Matcher matcher = FORM.matcher(text.toLowerCase(Locale.ROOT).replace('”', '"'));
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String last = matcher.group(4) == null ? "" : matcher.group(4);
    String first = matcher.group(2) == null ? last : matcher.group(2);
    return Fraction.parse(matcher.group(1))
        .flatMap(
            width ->
                Fraction.parse(matcher.group(3))
                    .map(
                        thickness ->
                            new Section(
                                width.multiply(perUnit(first, text)),
                                thickness.multiply(perUnit(last.isEmpty() ? first : last, text)))))
        .filter(section -> section.widthMm.signum() > 0 && section.thicknessMm.signum() > 0);
  }

  private static BigDecimal perUnit(String unit, String text) {
    boolean inches = unit.isEmpty() ? text.contains("/") : !unit.equals("mm");
    return inches ? MM_PER_INCH : BigDecimal.ONE;
  }

  /**
   * The area of the section.
   *
   * @return width times thickness in square millimetres, exact
   */
  public BigDecimal areaMm2() {
    return widthMm.multiply(thicknessMm);
  }

  /**
   * The mass of a length of this bar.
   *
   * @param lengthMm length in millimetres
   * @param metal what it is made of
   * @return mass in kilograms, exact
   */
  public BigDecimal massKg(BigDecimal lengthMm, Metal metal) {
    return areaMm2()
        .multiply(lengthMm)
        .multiply(metal.kgPerCubicMetre())
        .movePointLeft(9)
        .round(MathContext.DECIMAL128);
  }
}
