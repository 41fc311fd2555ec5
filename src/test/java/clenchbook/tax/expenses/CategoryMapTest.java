package clenchbook.tax.expenses;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.reading.rates.RateFiles;
import clenchbook.tax.jurisdiction.uk.UkJurisdiction;
import clenchbook.tax.jurisdiction.us.UsJurisdiction;
import clenchbook.tax.rates.RateLookup;
import clenchbook.tax.year.Regime;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CategoryMapTest {

  /** Which line a word counts on is common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "Insurance,insurance,premises",
    "INSURANCE ,insurance,premises",
    "Bank charge,other,bank charges",
    "Truck fuel,vehicle,vehicle",
    "Vehicle: washing,vehicle,vehicle",
    "Fuel & oil,vehicle,vehicle",
    "Fuel for forge,supplies,cost of goods",
    "Accountant and bookkeeper,legal and professional,professional",
    "Private use,private,private",
    "Restaurant meals,restaurant meals,car and travel",
    "Lucky charms,unmapped,unmapped",
    "'',unmapped,unmapped"
  })
  void a_word_leads_to_its_line(String word, String us, String uk) {
    assertEquals(us, find(UsJurisdiction.REGIME, word));
    assertEquals(uk, find(UkJurisdiction.REGIME, word));
  }

  private static String find(Regime regime, String word) {
    RateLookup rates = new RateLookup(RateFiles.bundled());
    return new CategoryMap(regime, LocalDate.of(2026, 12, 31), rates).find(word).code();
  }
}
