package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.problem.ProblemKind;
import clenchbook.texts.InEnglish;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Headings that say of the tax what the Settings do not. Rates: common practice, no source. */
class HeadingTaxTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final String ON_TOP = "invoices add it on top";
  private static final String WITHIN = "invoices take it as included";
  private static final String NONE = "so invoices add none";

  @TempDir Path folder;

  private static SmallBook book(String charge, String price, String code, String... settings) {
    SmallBook book =
        SmallBook.visits("Date|Owner|Horse|Work|" + charge)
            .visit(DAY, "Ann", "Bramble", "Trim", 50)
            .sheet("Work", "Work|" + price + "|Tax")
            .row("Work", "Trim", 45, code)
            .sheet("Tax", "Code|Name|Rate %|Kind")
            .row("Tax", "S", "VAT", 20, "standard")
            .row("Tax", "Z", "Zero", 0, "zero")
            .sheet("Settings", "Setting|Value");
    for (String setting : settings) {
      book.row("Settings", (Object[]) setting.split("="));
    }
    return book;
  }

  private List<String> told(SmallBook book) {
    return book.read(folder).problems().stream()
        .filter(problem -> problem.kind() == ProblemKind.HEADING_TAX_OTHER)
        .map(problem -> problem.at() + " " + InEnglish.said(problem.problem()))
        .map(line -> line.replaceFirst(" .*(but|rate,) ", " "))
        .toList();
  }

  @Test
  void a_price_with_tax_warns_where_tax_is_added() {
    assertEquals(List.of("Visits!E1 " + ON_TOP), told(book("Prix TTC", "Price", "S")));
    assertEquals(List.of("Work!B1 " + ON_TOP), told(book("Charge", "Preis inkl. MwSt.", "S")));
  }

  @Test
  void a_price_without_tax_warns_where_prices_include_it() {
    String included = "Prices include tax=yes";
    assertEquals(
        List.of("Visits!E1 " + WITHIN), told(book("Betrag netto", "Price", "S", included)));
    assertEquals(List.of("Work!B1 " + WITHIN), told(book("Charge", "Prix HT", "S", included)));
  }

  @Test
  void a_price_without_tax_warns_where_one_who_is_registered_adds_none() {
    String registered = "Tax number=GB123456789";
    assertEquals(
        List.of("Visits!E1 " + NONE), told(book("Price ex VAT", "Price", "Z", registered)));
    assertEquals(List.of(), told(book("Price ex VAT", "Price", "Z")));
    assertEquals(List.of(), told(book("Price inc VAT", "Price", "Z", registered)));
  }

  @Test
  void a_heading_that_agrees_or_says_nothing_is_quiet() {
    String included = "Prices include tax=yes";
    assertEquals(List.of(), told(book("Prix TTC", "Prix TTC", "S", included)));
    assertEquals(List.of(), told(book("Prix HT", "Preis netto", "S")));
    assertEquals(List.of(), told(book("Charge", "Price", "S", included)));
    assertEquals(List.of(), told(book("Prix TTC", "Price", "Z")));
    assertEquals(List.of(), told(book("Prix TTC", "Price", "S", "Tax regime=uk")));
  }

  @Test
  void the_price_of_what_is_sold_beside_the_work_warns_too() {
    SmallBook book = book("Charge", "Price", "S").sheet("Materials", "Item|Kind|Price inc VAT");
    assertEquals(
        List.of("Materials!C1 " + ON_TOP), told(book.row("Materials", "Pad", "other", 12)));
  }
}
