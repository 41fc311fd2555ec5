package clenchbook.tax.year;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.WrittenBook;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class StockValueTest {

  /**
   * By hand: ten shoes for 60, four nailed on in December, two more in January; six and four are
   * left at 6.00.
   */
  @Test
  void what_is_on_the_shelf_at_both_ends_at_its_average() {
    WrittenBook book =
        new WrittenBook()
            .material("Item: keg, Kind: keg, Unit cost: 5")
            .purchase(
                "Date: 2025-11-10, Supplier: Forge Supply, Item: keg, Quantity: 10, Gross: 60")
            .visit("Date: 2025-12-30, Horse: Bess, Owner: Ash, Work: Set, Shoe: keg, Shoes: 4")
            .visit("Date: 2026-01-30, Horse: Duke, Owner: Ash, Work: Fronts, Shoe: keg, Shoes: 2");
    Period year = new Period(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));
    StockValue found = StockValue.of(book.jobs(), year);
    assertEquals(new StockValue(new BigDecimal("36.00"), new BigDecimal("24.00"), false), found);
  }
}
