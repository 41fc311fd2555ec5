package clenchbook.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The line that an expense stands on, as the authorities' own instructions sort it. Every row is an
 * example named there or the line's own title:
 *
 * <ul>
 *   <li>us: IRS, Instructions for Schedule C (Form 1040), Part II, lines 8 to 27; titles as on the
 *       form of 2024, examples (accounting, tax preparation on 17; postage on 18) as retold in a
 *       line by line guide of March 2016 (ridefreefearlessmoney.com).
 *   <li>uk: HMRC, Self-employment (full) notes SA103F, table of allowable expenses, as retold by
 *       the Low Incomes Tax Reform Group, "What business expenses are allowable?" (litrg.org.uk, 24
 *       April 2017, boxes of 2017/18).
 *   <li>ca: Canada Revenue Agency, "Expenses section of Form T2125", Part 4, list of deductible
 *       expenses (canada.ca).
 *   <li>au: Australian Taxation Office, Business and professional items schedule 2024 instructions,
 *       P8 (ato.gov.au): repairs of plant and implements, bad debts, rent, interest.
 *   <li>de: names of the lines of Anlage EÜR 2025 and its numbers, as in two public forms of that
 *       year; the examples beside them from memory.
 * </ul>
 */
class CategoryLinesTest {

  @ParameterizedTest(name = "{0}: {1} on {2}")
  @CsvSource({
    "us, Advertising, 8",
    "us, Business cards, 8",
    "us, Commissions, 10",
    "us, Subcontractor, 11",
    "us, Liability insurance, 15",
    "us, Loan interest, 16b",
    "us, Accountant, 17",
    "us, Tax preparation, 17",
    "us, Postage, 18",
    "us, Equipment rental, 20a",
    "us, Workshop rent, 20b",
    "us, Repairs and maintenance, 21",
    "us, Supplies, 22",
    "us, Business license, 23",
    "us, Hotel, 24a",
    "us, Telephone, 25",
    "us, Wages, 26",
    "uk, Materials, 17",
    "uk, Wages, 19",
    "uk, Hotel, 20",
    "uk, Train, 20",
    "uk, Rent, 21",
    "uk, Power, 21",
    "uk, Equipment repairs, 22",
    "uk, Phone, 23",
    "uk, Stationery, 23",
    "uk, Advertising, 24",
    "uk, Website, 24",
    "uk, Loan interest, 25",
    "uk, Bank charges, 26",
    "uk, Accountant, 28",
    "uk, Solicitor, 28",
    "ca, Advertising, 8521",
    "ca, Bad debts, 8590",
    "ca, Liability insurance, 8690",
    "ca, Bank charges, 8710",
    "ca, Membership, 8760",
    "ca, Office expenses, 8810",
    "ca, Supplies, 8811",
    "ca, Accountant, 8860",
    "ca, Rent, 8910",
    "ca, Maintenance, 8960",
    "ca, Wages, 9060",
    "ca, Property taxes, 9180",
    "ca, Travel, 9200",
    "ca, Telephone, 9220",
    "ca, Delivery, 9275",
    "au, Repairs, repairs and maintenance",
    "au, Bad debts, bad debts",
    "au, Rent, rent expenses",
    "au, Loan interest, interest expenses within Australia",
    "au, Subcontractor, 'contractor, sub-contractor and commission expenses'",
    "au, Superannuation, superannuation expenses",
    "de, Waren, 27",
    "de, Fremdleistungen, 29",
    "de, Gehalt, 30",
    "de, Miete, 39",
    "de, Telefon, 43",
    "de, Übernachtung, 44",
    "de, Fortbildung, 45",
    "de, Steuerberatung, 46",
    "de, Mietgerät, 47",
    "de, Werbung, 54",
  })
  void an_expense_stands_on_the_line_that_the_instructions_name(
      String country, String category, String line) {
    WrittenBook book =
        new WrittenBook()
            .setting(Setting.TAX_REGIME, country)
            .purchase(
                "Date: 2025-08-04, Supplier: Someone, Category: " + category + ", Gross: 100");
    assertEquals(Optional.of("100.00"), YearBook.amount(YearBook.end(book, List.of(), 2025), line));
  }
}
