package clenchbook.tax.jurisdiction.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.expenses.Expenses;
import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTables;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Under no country's rules each line is called by its name, which every language can say. */
class PlainHeadingsTest {
  private static final RateTables TABLES = RateFiles.bundled();
  private static final Map<String, Message> HEADINGS = new PlainJurisdiction().headings();

  @Test
  void every_word_for_a_cost_leads_to_a_line_or_a_heading_that_can_be_said() {
    Set<String> unsaid =
        TABLES.table("plain/categories").rows().stream()
            .map(Rate::value)
            .collect(Collectors.toCollection(TreeSet::new));
    unsaid.removeAll(HEADINGS.keySet());
    unsaid.removeAll(Expenses.NEVER);
    unsaid.remove(Expenses.PARKING);
    TABLES.table("plain/lines").rows().stream().map(Rate::code).forEach(unsaid::remove);
    assertEquals(Set.of(), unsaid);
  }

  @Test
  void every_line_has_a_text_and_no_number() {
    TABLES
        .table("plain/lines")
        .rows()
        .forEach(line -> assertTrue(line.isUnnumbered(), line.code()));
  }

  @Test
  void in_english_a_heading_is_its_code_with_a_capital() {
    HEADINGS.forEach(
        (code, said) ->
            assertEquals(
                Character.toUpperCase(code.charAt(0)) + code.substring(1), InEnglish.said(said)));
  }
}
