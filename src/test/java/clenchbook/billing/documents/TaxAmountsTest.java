package clenchbook.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.documents.TaxAmounts.Item;
import clenchbook.jobs.charge.LineTax;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TaxAmountsTest {
  private static final MinorUnit CENT = new MinorUnit(2);

  /**
   * EN 16931 example invoice 2 (ConnectingEurope/eInvoicing-EN16931,
   * ubl/examples/ubl-tc434-example2.xml): rules BR-CO-14, BR-CO-15 and BR-CO-17, half up.
   */
  @Test
  void the_european_example_invoice_comes_out_to_the_cent() {
    List<Item> items =
        List.of(
            item("1273.00", "S25", "25"),
            item("-3.96", "S15", "15"),
            item("4.96", "S15", "15"),
            item("-25.00", "E", "0"),
            item("187.50", "S25", "25"),
            item("-100.00", "S25", "25"),
            item("100.00", "S25", "25"));
    TaxAmounts amounts = TaxAmounts.of(items, false, CENT);
    assertEquals("365.13", tax(amounts, "S25"), "365.125 goes up");
    assertEquals("0.15", tax(amounts, "S15"));
    assertEquals("0.00", tax(amounts, "E"));
    assertEquals("1460.50", net(amounts, "S25"));
    BigDecimal total =
        amounts.totals().stream().map(TaxTotal::tax).reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals("365.28", total.toPlainString());
    BigDecimal net =
        amounts.totals().stream().map(TaxTotal::net).reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals("1801.78", net.add(total).toPlainString());
  }

  /** HMRC VAT Notice 700 paragraph 17.5 leaves both levels open; 20 % on three lines of 1.13. */
  @Test
  void tax_on_lines_and_on_the_invoice_differ_by_a_penny() {
    List<Item> items =
        List.of(item("1.13", "S", "20"), item("1.13", "S", "20"), item("1.13", "S", "20"));
    assertEquals("0.69", tax(TaxAmounts.of(items, true, CENT), "S"));
    assertEquals("0.68", tax(TaxAmounts.of(items, false, CENT), "S"));
  }

  @Test
  void an_exempt_owner_pays_the_net_and_the_net_stands_under_its_code() {
    LineTax exempt = new LineTax("S", "VAT", new BigDecimal("20"), true, true);
    TaxAmounts amounts =
        TaxAmounts.of(List.of(new Item(new BigDecimal("120.00"), exempt)), false, CENT);
    assertEquals("100.00", net(amounts, "S"));
    assertEquals("0.00", tax(amounts, "S"));
  }

  /**
   * 20 % within 10.00 + 10.00 + 0.05: 20.05 / 1.2 = 16.708, so 16.71; the parts are 8.334, 8.334
   * and 0.042, which leave one penny over: it goes to the first of the two equal remainders. On
   * paper.
   */
  @ParameterizedTest
  @CsvSource({"1, 8.34 8.33 0.04, 16.71, 3.34", "-1, -8.34 -8.33 -0.04, -16.71, -3.34"})
  void lines_taken_back_are_split_as_they_were_charged(
      BigDecimal sign, String nets, String net, String tax) {
    TaxAmounts amounts = TaxAmounts.of(included(sign), false, CENT);
    assertEquals(nets, text(amounts.nets()));
    assertEquals(net, net(amounts, "S"));
    assertEquals(tax, tax(amounts, "S"));
  }

  /** The same by line: 10.00 / 1.2 = 8.333 and 0.05 / 1.2 = 0.0417, each rounded by itself. */
  @ParameterizedTest
  @CsvSource({"1, 8.33 8.33 0.04, 16.70, 3.35", "-1, -8.33 -8.33 -0.04, -16.70, -3.35"})
  void by_line_each_line_is_rounded_by_itself(
      BigDecimal sign, String nets, String net, String tax) {
    TaxAmounts amounts = TaxAmounts.of(included(sign), true, CENT);
    assertEquals(nets, text(amounts.nets()));
    assertEquals(net, net(amounts, "S"));
    assertEquals(tax, tax(amounts, "S"));
  }

  private static List<Item> included(BigDecimal sign) {
    LineTax tax = new LineTax("S", "VAT", new BigDecimal("20"), false, true);
    return Stream.of("10.00", "10.00", "0.05")
        .map(amount -> new Item(new BigDecimal(amount).multiply(sign), tax))
        .toList();
  }

  private static String text(List<BigDecimal> amounts) {
    return amounts.stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 2, 3})
  void net_and_tax_add_to_what_was_charged_and_lines_to_their_code(int digits) {
    MinorUnit unit = new MinorUnit(digits);
    SplittableRandom random = new SplittableRandom(20261031 + digits);
    for (int round = 0; round < 500; round++) {
      boolean perLine = random.nextBoolean();
      LineTax tax = new LineTax("S", "VAT", BigDecimal.valueOf(random.nextInt(1, 30)), false, true);
      List<Item> items =
          IntStream.range(0, random.nextInt(1, 9))
              .mapToObj(i -> BigDecimal.valueOf(random.nextInt(1, 90_000), digits))
              .map(amount -> new Item(amount, tax))
              .toList();
      TaxAmounts amounts = TaxAmounts.of(items, perLine, unit);
      BigDecimal charged =
          items.stream().map(Item::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
      TaxTotal total = amounts.totals().get(0);
      assertEquals(0, charged.compareTo(total.net().add(total.tax())));
      BigDecimal lines = amounts.nets().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
      assertEquals(0, lines.compareTo(total.net()));
      amounts.nets().forEach(net -> assertEquals(digits, net.scale()));
    }
  }

  private static Item item(String amount, String code, String rate) {
    return new Item(
        new BigDecimal(amount), new LineTax(code, code, new BigDecimal(rate), false, false));
  }

  private static String tax(TaxAmounts amounts, String code) {
    return find(amounts, code).tax().toPlainString();
  }

  private static String net(TaxAmounts amounts, String code) {
    return find(amounts, code).net().toPlainString();
  }

  private static TaxTotal find(TaxAmounts amounts, String code) {
    return amounts.totals().stream().filter(t -> t.code().equals(code)).findFirst().orElseThrow();
  }
}
