package clenchbook.values;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a metre of flat bar weighs, against steel tables. */
class SectionTest {
  private static final BigDecimal METRE = new BigDecimal("1000");
  private static final BigDecimal FOOT = new BigDecimal("304.8");
  private static final BigDecimal KG_PER_LB = new BigDecimal("0.45359237");

  /**
   * Kilograms a metre. 50 x 6: 2.355, documentation of a table of steel sections (package
   * steel-sections 0.2.1 on pypi.org, "formulas", density 7850). The others, rounded as EN 10058
   * tables print them: 40 x 5, 20 x 10 and 25 x 8 the same 1.57, 20 x 8 1.26, 40 x 8 2.51, 50 x 5
   * 1.96 (from memory).
   */
  @ParameterizedTest(name = "{0} mm: {1} kg/m")
  @CsvSource({
    "50 x 6, 2.355",
    "40 x 5, 1.57",
    "20 x 10, 1.57",
    "25 x 8, 1.57",
    "20 x 8, 1.26",
    "20 x 6, 0.942",
    "40 x 8, 2.51",
    "50 x 5, 1.96"
  })
  void a_metre_of_flat_steel_weighs_what_the_tables_print(String section, BigDecimal printed) {
    assertEquals(printed, weight(section, METRE).setScale(printed.scale(), RoundingMode.HALF_UP));
  }

  /**
   * Pounds a foot. 3 x 2 in: 20.4 lb (dmsteel.com, "Hot-Roll Flat Bar 2 x 3"). 3/8 x 1 in: 1.28,
   * 1/4 x 1 in: 0.85, by the rule of US steel handbooks of 3.4 lb a foot and square inch, which is
   * 0.1 % under 7850 kg a cubic metre (from memory).
   */
  @ParameterizedTest(name = "{0}: {1} lb/ft")
  @CsvSource({"3 x 2 in, 20.4", "3/8 x 1 in, 1.28", "1/4 x 1 in, 0.85"})
  void a_foot_of_flat_steel_weighs_what_the_tables_print(String section, BigDecimal printed) {
    BigDecimal pounds = weight(section, FOOT).divide(KG_PER_LB, 10, RoundingMode.HALF_UP);
    assertEquals(printed, pounds.setScale(printed.scale(), RoundingMode.HALF_UP));
  }

  /**
   * A bar note's worked example: 1/2 x 2 x 120 in, 120 cubic inches at 0.2833 lb, is 33.996 lb
   * (ubraintv-jp.com, "weight of cubic inch of steel", which prints 33.99); 7850 kg a cubic metre
   * gives 34.03, the tenth of a per cent by which the two constants differ.
   */
  @Test
  void ten_feet_of_two_by_a_half_is_within_the_two_constants_in_use() {
    BigDecimal pounds =
        weight("1/2 x 2 in", new BigDecimal("3048")).divide(KG_PER_LB, 10, RoundingMode.HALF_UP);
    assertEquals(33.996, pounds.doubleValue(), 33.996 * 0.0012);
  }

  private static BigDecimal weight(String section, BigDecimal length) {
    return Section.parse(section).orElseThrow().massKg(length, Metal.STEEL);
  }
}
