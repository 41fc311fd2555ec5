package clenchbook.reading.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.tax.rates.Rate;
import clenchbook.tax.rates.RateTables;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OverlayTest {
  private static final String HEADING = "code,name,value,unit,from,to,source,section,checked\n";

  @TempDir private Path folder;

  private void write(String file, String rows) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, HEADING + rows);
  }

  @Test
  void a_later_year_laid_over_is_found_and_marked() throws IOException {
    write(
        "us/mileage.csv",
        "business,Standard mileage rate,0.735,per mile,2027-01-01,2027-12-31,Notice"
            + " 2027-1,,2027-01-05\n");
    Rate rate =
        RateFiles.withOverlay(folder)
            .find("us/mileage", "business", LocalDate.of(2027, 5, 1))
            .orElseThrow();
    assertEquals("0.735", rate.value());
    assertTrue(rate.overlaid());
    assertTrue(rate.citation().endsWith("from your own rates file"));
  }

  @Test
  void a_period_laid_over_counts_and_the_days_around_it_stay() throws IOException {
    write(
        "us/mileage.csv",
        "business,Standard mileage rate,0.755,per"
            + " mile,2026-07-01,2026-12-31,Announcement,,2026-07-01\n");
    RateTables tables = RateFiles.withOverlay(folder);
    assertEquals(
        "0.725",
        tables.find("us/mileage", "business", LocalDate.of(2026, 6, 30)).orElseThrow().value());
    assertEquals(
        "0.755",
        tables.find("us/mileage", "business", LocalDate.of(2026, 7, 1)).orElseThrow().value());
    assertEquals(1, tables.overlaid().size());
  }

  @Test
  void a_gap_is_refused() throws IOException {
    int last =
        RateFiles.bundled().table("us/mileage").rows().stream()
            .filter(row -> row.code().equals("business"))
            .mapToInt(row -> row.to().getYear())
            .max()
            .orElseThrow();
    String year = (last + 2) + "-01-01," + (last + 2) + "-12-31";
    write("us/mileage.csv", "business,Rate,0.735,per mile," + year + ",Notice,,\n");
    refused("has a gap from " + (last + 1) + "-01-01 to " + (last + 1) + "-12-31");
  }

  @Test
  void an_overlap_is_refused() throws IOException {
    write(
        "us/mileage.csv",
        "business,Rate,0.735,per mile,2027-01-01,2027-12-31,Notice,,\n"
            + "business,Rate,0.745,per mile,2027-07-01,2027-12-31,Notice,,\n");
    refused("overlaps on 2027-07-01");
  }

  @Test
  void an_unknown_unit_is_refused_with_its_line() throws IOException {
    write("us/mileage.csv", "business,Rate,0.735,per furlong,2027-01-01,2027-12-31,Notice,,\n");
    refused("rates/us/mileage.csv, line 2: unknown unit 'per furlong'");
  }

  @Test
  void an_empty_source_is_refused_with_its_line() throws IOException {
    write("us/mileage.csv", "business,Rate,0.735,per mile,2027-01-01,2027-12-31,,,\n");
    refused("rates/us/mileage.csv, line 2: empty source");
  }

  @Test
  void a_value_that_is_no_number_is_refused() throws IOException {
    write("us/mileage.csv", "business,Rate,seventy,per mile,2027-01-01,2027-12-31,Notice,,\n");
    refused("line 2: 'seventy' is no per mile");
  }

  @Test
  void a_day_that_is_none_is_refused_with_what_a_day_looks_like() throws IOException {
    write("us/mileage.csv", "business,Rate,0.7,per mile,1 May 2027,2027-12-31,Notice,,\n");
    refused("line 2: '1 May 2027' is no day such as 2026-04-30");
  }

  @Test
  void another_heading_row_is_refused() throws IOException {
    Path path = folder.resolve("us/mileage.csv");
    Files.createDirectories(path.getParent());
    Files.writeString(path, "code,value\nbusiness,0.7\n");
    refused("the heading row must be");
  }

  /** Whoever copies one of the program's tables keeps its columns, and says own words. */
  @Test
  void a_row_laid_over_is_called_by_its_own_name() throws IOException {
    LocalDate day = LocalDate.of(2026, 6, 1);
    Rate bundled = RateFiles.bundled().find("at/turnover", "limit", day).orElseThrow();
    assertEquals(Message.of("tax.limit.austria"), bundled.said());
    Path path = folder.resolve("at/turnover.csv");
    Files.createDirectories(path.getParent());
    Files.writeString(
        path,
        HEADING.strip()
            + ",text\nlimit,My limit,1,money,2025-01-01,2026-12-31,Notice,,,tax.limit.austria\n");
    Rate own = RateFiles.withOverlay(folder).find("at/turnover", "limit", day).orElseThrow();
    assertEquals(Message.literal("My limit"), own.said());
  }

  @Test
  void no_folder_lays_nothing_over() {
    assertTrue(RateFiles.withOverlay(folder.resolve("none")).overlaid().isEmpty());
  }

  private void refused(String words) {
    RefusedRatesException refusal =
        assertThrows(RefusedRatesException.class, () -> RateFiles.withOverlay(folder));
    String said = InEnglish.said(refusal.message());
    assertTrue(said.contains(words), said);
  }
}
