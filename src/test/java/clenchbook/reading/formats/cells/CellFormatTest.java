package clenchbook.reading.formats.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellFormatTest {
  private static boolean dated(CellFormat format) {
    return format.kind() == CellFormat.Kind.DATE || format.kind() == CellFormat.Kind.TIME;
  }

  /** Outside check: Apache POI's DateUtil says of the same codes whether they show a date. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "General",
        "0",
        "0.00",
        "#,##0.00",
        "0%",
        "0.00E+00",
        "# ?/?",
        "@",
        "m/d/yy",
        "d-mmm-yy",
        "d-mmm",
        "mmm-yy",
        "h:mm AM/PM",
        "h:mm:ss",
        "m/d/yy h:mm",
        "mm:ss",
        "[h]:mm:ss",
        "mm:ss.0",
        "yyyy\\-mm\\-dd",
        "dd/mm/yyyy",
        "dd.mm.yyyy;@",
        "[$-809]dd mmmm yyyy;@",
        "[$-F800]dddd, mmmm dd, yyyy",
        "[Red]#,##0.00",
        "[$£-809]#,##0.00",
        "#,##0.00 [$€-407]",
        "_-* #,##0.00_-;-* #,##0.00_-",
        "0\" min\"",
        "000",
        "0.0",
        "[mm]:ss",
        "[s]",
        "yyyy/mm/dd hh:mm:ss",
        "[>100]0;0.00",
        "\"day\" 0",
        "##0.0E+0",
        "[Blue]dd/mm/yy",
        "mmm d, yyyy",
      })
  void a_code_shows_a_date_where_the_reference_library_says_so(String code) {
    boolean reference = DateUtil.isADateFormat(200, code);
    assertEquals(reference, dated(CellFormat.of(code)), code);
  }

  /** Outside check: the built-in formats, by the same library's list of them. */
  @Test
  void built_in_numbers_mean_what_the_reference_library_says() {
    for (int number = 0; number <= 49; number++) {
      if (number >= 27 && number <= 36) {
        continue; // Dates of East Asian editions, which the library leaves out.
      }
      String code = BuiltinFormats.getBuiltinFormat(number);
      boolean reference = DateUtil.isADateFormat(number, code);
      assertEquals(reference, dated(CellFormat.builtIn(number)), number + " " + code);
    }
  }

  /** Here the reference library reads the quoted letters as well, and errs. */
  @Test
  void letters_in_quotes_are_no_part_of_a_date() {
    assertEquals(CellFormat.Kind.PLAIN, CellFormat.of("\"d\"0").kind());
    assertEquals(CellFormat.Kind.DATE, CellFormat.of("d\"th\" mmm yyyy").kind());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "h:mm | TIME", "[h]:mm | TIME", "mm:ss | TIME", "dd/mm/yyyy | DATE", "m/d/yy h:mm | DATE",
        "mmm-yy | DATE", "0% | PERCENT", "0.00%;-0.00% | PERCENT", "# ?/? | FRACTION",
            "# ??/16 | FRACTION",
        "0.00 | PLAIN", "General | PLAIN", "@ | PLAIN", "[$€-407] #,##0.00 | PLAIN",
            "[Red]0 | PLAIN",
      })
  void a_code_has_a_kind(String code, CellFormat.Kind kind) {
    assertEquals(kind, CellFormat.of(code).kind());
  }

  @Test
  void a_month_and_year_show_no_day() {
    assertEquals(false, CellFormat.of("mmm-yy").showsDay());
    assertEquals(true, CellFormat.of("d-mmm").showsDay());
    assertEquals(false, CellFormat.of("mmm \"d\" yy").showsDay());
  }
}
