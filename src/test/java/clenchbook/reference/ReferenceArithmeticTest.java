package clenchbook.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plain arithmetic is itself checked on a few figures worked out on paper, row by row. */
class ReferenceArithmeticTest {
  @TempDir Path folder;

  @Test
  void a_set_in_two_sizes_from_bought_and_listed_shoes_agrees_with_paper() throws IOException {
    ReferenceMonth month = month("alder-metric");
    // 20 bought for 70.20, 2 used; 10 more for 38.10: (18 x 3.51 + 38.10) / 28 = 3.6171...;
    // 2 x 3.6171 + 2 x 3.35 + 27 x 24.30 / 250 = 16.558.
    assertEquals(new BigDecimal("16.56"), visit(month, 4).materials);
    // 18 min x 0.77 / 60 x 2.63 = 0.6075; set-up 5 min = 0.17 over three: 0.06, 0.06, 0.05.
    assertEquals(new BigDecimal("0.67"), visit(month, 4).gas);
  }

  @Test
  void three_shares_of_a_price_lose_no_cent() throws IOException {
    ReferenceMonth month = month("alder-metric");
    // 95.00 at 33, 33, 34 = 31.35, 31.35, 32.30; the third less 3.3 % = 31.2341.
    assertEquals(
        new BigDecimal("31.35"), month.bills.invoices.get("Odd Pike").lines.get(0).charged);
    assertEquals(
        new BigDecimal("31.23"), month.bills.invoices.get("Quin Roe").lines.get(0).charged);
  }

  @Test
  void goods_and_rest_of_a_line_make_the_charge_and_only_goods_are_taxed() throws IOException {
    ReferenceMonth month = month("birch-imperial");
    // 215.55 x 33 % = 71.1315; 71.13 x 5.75 % = 4.09 twice, 27.80 x 5.75 % = 1.60.
    ReferenceBills.Invoice abel = month.bills.invoices.get("Abel Ames");
    assertEquals(new BigDecimal("71.13"), abel.lines.get(0).net);
    assertEquals(new BigDecimal("144.42"), abel.lines.get(1).net);
    assertEquals(new BigDecimal("9.78"), abel.tax);
  }

  @Test
  void the_largest_remainder_gives_ties_to_the_earlier_row() {
    List<BigDecimal> three = Cents.equally(new BigDecimal("0.17"), 3);
    assertEquals(
        List.of(new BigDecimal("0.06"), new BigDecimal("0.06"), new BigDecimal("0.05")), three);
  }

  private ReferenceMonth month(String book) throws IOException {
    Path file = SmallBooks.write(book, Map.of(), folder.resolve(book + ".xlsx"));
    return new ReferenceMonth(file, YearMonth.of(2026, 3));
  }

  private static ReferenceVisit visit(ReferenceMonth month, int row) {
    return month.visits.stream().filter(v -> v.row.number == row).findFirst().orElseThrow();
  }
}
