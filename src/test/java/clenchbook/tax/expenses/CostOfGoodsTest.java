package clenchbook.tax.expenses;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class CostOfGoodsTest {

  /** Schedule C, Part III, lines 35 to 42 (figures by arithmetic). */
  @Test
  void opening_stock_and_what_was_added_less_closing_stock() {
    CostOfGoods goods =
        new CostOfGoods(n("1200"), n("5400"), n("0"), n("800"), n("100"), n("1650"));
    assertEquals(n("7500"), goods.available());
    assertEquals(n("5850"), goods.sold());
  }

  private static BigDecimal n(String text) {
    return new BigDecimal(text);
  }
}
