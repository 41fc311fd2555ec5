package clenchbook.tax.jurisdiction.uk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.Jurisdictions;
import clenchbook.tax.YearBook;
import clenchbook.tax.YearEnd;
import clenchbook.tax.YearEndFindings;
import clenchbook.tax.jurisdiction.TextFile;
import clenchbook.tax.year.StockValue;
import clenchbook.tax.year.TaxYear;
import clenchbook.tax.year.YearEndInput;
import clenchbook.tax.year.YearStart;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The quarterly update, judged by the authority's own schema: hmrc/self-employment-business-api,
 * createAmendCumulativePeriodSummary/request.json, version 5.0, tax years 2025-26 and after.
 * Numbers are read as exact decimals: in binary, steps of 0.01 refuse sound amounts such as 0.07.
 */
class UpdateBodyTest {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.TAX_REGIME, "uk")
        .setting(Setting.DISTANCE_UNIT, "mile")
        .payment("Date: 2026-04-03, Owner: Elm, Amount: 5")
        .payment("Date: 2026-04-06, Owner: Ash, Amount: 1467.90")
        .payment("Date: 2026-08-01, Owner: Ash, Amount: 0.07")
        .purchase("Date: 2026-05-01, Supplier: Forge Supply, Item: keg, Quantity: 10, Net: 50.14")
        .purchase("Date: 2026-05-02, Supplier: Ink Shop, Category: Stationery, Gross: 12.28")
        .purchase("Date: 2026-05-03, Supplier: Inn, Category: Entertaining, Gross: 40")
        .purchase("Date: 2026-05-04, Supplier: Paper, Category: Advertising, Gross: 30")
        .purchase("Date: 2026-05-05, Supplier: Basket Shop, Category: Client gifts, Gross: 20")
        .purchase("Date: 2026-05-06, Supplier: Fair, Category: Lucky charms, Gross: 9")
        .purchase("Date: 2026-10-06, Supplier: Ink Shop, Category: Stationery, Gross: 3")
        .asset("Asset: Anvil, Bought: 2026-06-15, Cost: 1000, Class: anvil")
        .trip("Date: 2026-05-05, From: Home, To: Oak, Distance: 14, Purpose: rounds");
  }

  private static YearEndFindings end(
      WrittenBook book, int year, Optional<Integer> quarter, boolean calendar) {
    TaxYear standard =
        TaxYear.of(
            Jurisdictions.find("uk").orElseThrow().regime(),
            year,
            new YearStart(RateFiles.bundled().table("uk/year"), Optional.empty()));
    TaxYear taxYear = calendar ? standard.withCalendarQuarters() : standard;
    return YearEnd.of(
        new YearEndInput(
            book.jobs(), List.of(), taxYear, quarter, RateFiles.bundled(), StockValue.NONE));
  }

  private static JsonNode update(int quarter, boolean calendar) throws IOException {
    List<TextFile> files = end(book(), 2026, Optional.of(quarter), calendar).files();
    assertEquals("quarterly-update.json", files.get(0).name());
    assertEquals(1, files.size());
    return JSON.readTree(files.get(0).text());
  }

  private static List<String> faults(JsonNode body) throws IOException {
    try (InputStream schema =
        UpdateBodyTest.class.getResourceAsStream("/schemas/quarterly-update.schema.json")) {
      JsonNode document = JSON.readTree(schema);
      Schema published =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4).getSchema(document);
      return published.validate(body).stream().map(Object::toString).toList();
    }
  }

  @ParameterizedTest
  @CsvSource({"1,false", "2,false", "3,false", "4,false", "1,true", "2,true", "3,true", "4,true"})
  void every_quarters_body_is_what_the_published_schema_asks_for(int quarter, boolean calendar)
      throws IOException {
    assertEquals(List.of(), faults(update(quarter, calendar)));
  }

  /** The judge itself: what the schema forbids is refused, the official example is not. */
  @Test
  void the_judge_refuses_what_the_schema_forbids() throws IOException {
    String official =
        "{\"periodDates\":{\"periodStartDate\":\"2025-04-06\",\"periodEndDate\":\"2025-07-05\"},"
            + "\"periodIncome\":{\"turnover\":1000.99,\"other\":1000.09},"
            + "\"periodExpenses\":{\"consolidatedExpenses\":1000.99}}";
    assertEquals(List.of(), faults(JSON.readTree(official)));
    assertFalse(faults(JSON.readTree(official.replace("other", "others"))).isEmpty());
    assertFalse(faults(JSON.readTree(official.replace("1000.99,", "1000.999,"))).isEmpty());
    assertFalse(faults(JSON.readTree(official.replace("1000.99,", "-1,"))).isEmpty());
    for (int pence = 1; pence < 2000; pence++) {
      String amount = BigDecimal.valueOf(pence, 2).toPlainString();
      assertEquals(List.of(), faults(JSON.readTree(official.replace("1000.99,", amount + ","))));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1,false,2026-04-06,2026-07-05", "2,false,2026-04-06,2026-10-05",
    "3,false,2026-04-06,2027-01-05", "4,false,2026-04-06,2027-04-05",
    "1,true,2026-04-01,2026-06-30", "2,true,2026-04-01,2026-09-30",
    "3,true,2026-04-01,2026-12-31", "4,true,2026-04-01,2027-03-31"
  })
  void each_update_runs_from_the_years_first_day(
      int quarter, boolean calendar, String first, String last) throws IOException {
    JsonNode dates = update(quarter, calendar).get("periodDates");
    assertEquals(first, dates.get("periodStartDate").asText());
    assertEquals(last, dates.get("periodEndDate").asText());
  }

  private static void assertAmount(String want, JsonNode part, String field) {
    assertEquals(0, new BigDecimal(want).compareTo(part.get(field).decimalValue()), field);
  }

  /** By hand; 14 miles at 0.45; the anvil is an expense on the cash basis. */
  @Test
  void single_fields_hold_the_boxes_and_zeros_are_sent() throws IOException {
    JsonNode body = update(2, false);
    assertAmount("1467.97", body.get("periodIncome"), "turnover");
    assertAmount("0", body.get("periodIncome"), "other");
    JsonNode expenses = body.get("periodExpenses");
    assertAmount("50.14", expenses, "costOfGoods");
    assertAmount("12.28", expenses, "adminCosts");
    assertAmount("6.30", expenses, "carVanTravelExpenses");
    assertAmount("1000", expenses, "otherExpenses");
    assertAmount("0", expenses, "professionalFees");
    assertFalse(expenses.has("consolidatedExpenses"));
    assertAmount("1467.90", update(1, false).get("periodIncome"), "turnover");
    assertAmount("1472.90", update(1, true).get("periodIncome"), "turnover");
    assertAmount("15.28", update(3, false).get("periodExpenses"), "adminCosts");
  }

  /** Field less disallowable is the summary's box: 30 of advertising, nothing of the rest. */
  @Test
  void advertising_and_entertaining_stand_apart_and_entertaining_is_not_allowed()
      throws IOException {
    JsonNode body = update(1, false);
    assertAmount("30", body.get("periodExpenses"), "advertisingCosts");
    assertAmount("60", body.get("periodExpenses"), "businessEntertainmentCosts");
    assertAmount(
        "60", body.get("periodDisallowableExpenses"), "businessEntertainmentCostsDisallowable");
  }

  @Test
  void a_whole_year_and_a_year_before_the_schema_have_no_update() {
    assertEquals(List.of(), end(book(), 2026, Optional.empty(), false).files());
    assertEquals(List.of(), end(book(), 2024, Optional.of(1), false).files());
    YearEndFindings beyond = end(book(), 2030, Optional.of(1), false);
    assertEquals(List.of(), beyond.files());
    assertTrue(
        YearBook.errors(beyond).stream().anyMatch(error -> error.contains("uk/update-fields")));
  }

  @Test
  void what_the_file_leaves_out_is_said() {
    assertTrue(
        YearBook.notes(end(book(), 2026, Optional.of(1), false)).stream()
            .anyMatch(note -> note.startsWith("Costs of an unknown category stand in none")));
  }
}
