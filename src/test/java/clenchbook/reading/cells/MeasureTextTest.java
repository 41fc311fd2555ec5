package clenchbook.reading.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Units behind numbers. The factors: international yard and pound agreement of 1959, in force in
 * the United States by the Federal Register notice of 30 June 1959 (24 FR 5348) and printed in NIST
 * Handbook 44, appendix C, section 4 (the digits from memory): inch 25.4 mm, mile 1609.344 m, pound
 * 0.45359237 kg.
 */
class MeasureTextTest {
  private static final MeasureText POINT = new MeasureText(new NumberText(Locale.UK));
  private static final MeasureText COMMA = new MeasureText(new NumberText(Locale.GERMANY));

  private static Optional<BigDecimal> read(String text, Measure own) {
    return POINT.read(text, own).map(NumberText.Reading::value);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "13 1/2 in | MM | 342.9",
        "13½\" | MM | 342.9",
        "13.5 inches | MM | 342.9",
        "343 mm | MM | 343",
        "34.3 cm | MM | 343",
        "10 ft | MM | 3048",
        "10' | MM | 3048",
        "5' 6\" | MM | 1676.4",
        "5 ft 6 in | INCH | 66",
        "254 mm | INCH | 10",
        "3 m | FOOT | 9.842519685",
        "10 km | MILE | 6.2137119224",
        "10 miles | KM | 16.09344",
        "10 mi. | MILE | 10",
        "45 min | SECOND | 2700",
        "1 h 15 min | MINUTE | 75",
        "42 days | WEEK | 6",
        "6 wks | WEEK | 6",
        "2 weeks | DAY | 14",
        "3 lb | KG | 1.36077711",
        "1 lb 8 oz | KG | 0.680388555",
        "500 g | KG | 0.5",
        "2 kg | LB | 4.4092452437",
        "10 gal | KG_OF_PROPANE | 19.232316488",
        "2 pairs | PIECE | 4",
        "100 pcs | PIECE | 100",
        "3.5 m/s2 | METRES_PER_SECOND_SQUARED | 3.5",
        "85 dB(A) | DECIBEL | 85",
        "-30° | DEGREE | -30",
      })
  void a_typed_unit_is_converted_to_the_columns_own(String text, Measure own, BigDecimal value) {
    assertEquals(Optional.of(value), read(text, own));
  }

  @ParameterizedTest
  @CsvSource({
    "3 kg,MM",
    "10 m,KM",
    "10 m,MILE",
    "6 months,WEEK",
    "3 packs,PIECE",
    "10 km,MM",
    "5 gal,KG",
    "5 ft 6,MM",
    "10 or so,MM",
    "ten miles,MILE",
    "in,MM",
  })
  void what_is_no_unit_of_the_column_is_not_read(String text, Measure own) {
    assertEquals(Optional.empty(), read(text, own));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "13,5 Zoll | MM | 342.9",
        "6 Wochen | WEEK | 6",
        "3 Fuß | MM | 914.4",
        "10 Meilen | KM | 16.09344",
        "2 pulgadas | MM | 50.8",
        "8 semaines | WEEK | 8",
        "6 weken | WEEK | 6",
        "1.234,5 mm | MM | 1234.5",
      })
  void the_units_of_five_languages_are_known(String text, Measure own, BigDecimal value) {
    assertEquals(Optional.of(value), COMMA.read(text, own).map(NumberText.Reading::value));
  }

  @Test
  void a_number_with_a_unit_is_told_from_words() {
    assertTrue(POINT.isWithUnit("3 kg"));
    assertFalse(POINT.isWithUnit("one or two"));
    assertFalse(POINT.isWithUnit("3"));
    assertTrue(POINT.isIn("3 lb", Measure.KG));
    assertFalse(POINT.isIn("3", Measure.KG));
  }
}
