package clenchbook.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.texts.TextFiles;
import clenchbook.reports.blocks.FigureText;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cells of files, with numbers as the page's language writes them. */
class PageWordsTest {
  private static final PageWords PAGE =
      new PageWords(new FigureText(TextFiles.in("de", "DE"), "EUR"));

  /** A whole number of up to four digits may be a year and stays; in a column it is grouped. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026|2026|2.026",
        "9999|9999|9.999",
        "10000|10.000|10.000",
        "2026.50|2.026,50|2.026,50",
        "0.5|0,5|0,5",
        "-1234.50|\u22121.234,50|\u22121.234,50",
        "1.2.3|1.2.3|1.2.3",
        "12 months|12 months|12 months"
      })
  void numbers_are_written_as_the_language_writes_them(String cell, String text, String column) {
    assertEquals(text, PAGE.text(cell));
    assertEquals(column, PAGE.cell(cell));
  }

  @Test
  void an_amount_keeps_its_digits() {
    assertEquals("12.345,60", PAGE.amount(new BigDecimal("12345.60")));
    assertEquals("100", PAGE.amount(new BigDecimal("1E+2")));
  }
}
