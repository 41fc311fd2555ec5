package clenchbook.tax.jurisdiction.us;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.rates.RateLookup;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstalmentTest {
  private final RateLookup rates = new RateLookup(RateFiles.bundled());

  /**
   * 2022: taxplaceinc.com, "Dates and Deadlines", 2022 federal estimated tax payments, which also
   * gives 18 January 2022 for the fourth of 2021; 18 April for Emancipation Day in Washington, 17
   * January 2023 for Martin Luther King Day. 2025: deductionatlas.com, "Estimated taxes" (the four
   * days, moved to the next business day). 2019, 2020, the rest of 2021, 2023 and 2024: from
   * memory. 2026: by the calendar.
   */
  @ParameterizedTest
  @CsvSource({
    "2019,2019-04-15,2019-06-17,2019-09-16,2020-01-15",
    "2020,2020-07-15,2020-07-15,2020-09-15,2021-01-15",
    "2021,2021-04-15,2021-06-15,2021-09-15,2022-01-18",
    "2022,2022-04-18,2022-06-15,2022-09-15,2023-01-17",
    "2023,2023-04-18,2023-06-15,2023-09-15,2024-01-16",
    "2024,2024-04-15,2024-06-17,2024-09-16,2025-01-15",
    "2025,2025-04-15,2025-06-16,2025-09-15,2026-01-15",
    "2026,2026-04-15,2026-06-15,2026-09-15,2027-01-15"
  })
  void due_days_move_off_weekends_and_holidays(
      int year, LocalDate first, LocalDate second, LocalDate third, LocalDate fourth) {
    assertEquals(
        Stream.of(first, second, third, fourth).toList(),
        Instalment.of(year, rates).stream().map(Instalment::due).toList());
  }
}
