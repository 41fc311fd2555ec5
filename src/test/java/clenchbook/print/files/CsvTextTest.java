package clenchbook.print.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reports.blocks.FigureTable;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180, section 2, from memory; formula marks from OWASP, "CSV Injection". */
class CsvTextTest {
  @Test
  void rows_end_with_crlf_and_quotes_are_doubled() {
    FigureTable table =
        new FigureTable(
            "x",
            List.of("owner", "net"),
            List.of(List.of("Ash, \"Mill\" Barn\nUpper", "-12.50"), List.of("Żubr", "")));
    assertEquals(
        "owner,net\r\n\"Ash, \"\"Mill\"\" Barn\nUpper\",-12.50\r\nŻubr,\r\n",
        new String(CsvText.of(table), StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+44 1632 960417",
        "-2+3",
        "@SUM(A1)",
        "\tx",
        "\rx",
        "\nx",
        " =1",
        "＝1",
        "-",
        "--5",
        "-1e",
        "+",
        "=HYPERLINK(\"http://a.example\")"
      })
  void a_text_that_begins_like_a_formula_is_made_harmless(String cell) {
    assertEquals("'" + cell, CsvText.harmless(cell));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"-12.50", "+3", "-0", "0.001", "-1.5E-7", "", "a=b", "5/16", "2026-10-31"})
  void numbers_and_plain_words_stay(String cell) {
    assertEquals(cell, CsvText.harmless(cell));
  }
}
