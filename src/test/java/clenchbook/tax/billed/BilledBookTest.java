package clenchbook.tax.billed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.book.Setting;
import clenchbook.jobs.WrittenBook;
import clenchbook.tax.YearBook;
import clenchbook.values.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All that was billed, by documents and by visits that no document bears; sums on paper. */
class BilledBookTest {
  private static WrittenBook book() {
    return new WrittenBook()
        .setting(Setting.CURRENCY, "GBP")
        .setting(Setting.TAX_NUMBER, "GB1")
        .tax("Code: S, Name: VAT, Rate %: 20")
        .work("Work: Trim, Tax: S, Price: 100")
        .work("Work: Half, Tax: S, Price: 100, Taxed part: 0.3");
  }

  private static String visit(String day, String cells) {
    return "Horse: Bess, Owner: Ruth, Work: Trim, Date: " + day + ", " + cells;
  }

  private static List<String> written(List<Billed> billed) {
    return billed.stream()
        .map(
            each ->
                each.standing()
                    + " "
                    + each.number()
                    + " "
                    + each.date()
                    + " "
                    + each.owner()
                    + " "
                    + each.net().toPlainString()
                    + " "
                    + each.tax().toPlainString())
        .toList();
  }

  @Test
  void documents_and_the_visits_beside_them_stand_oldest_first() {
    WrittenBook march = book().visit(visit("2026-03-02", "Charge: list"));
    List<BilledDocument> register = YearBook.run(march, List.of(), "2026-03");
    WrittenBook book =
        book()
            .visit(visit("2026-03-02", "Charge: list"))
            .visit(visit("2026-02-01", "Charge: 50"))
            .visit(visit("2026-03-15", "Charge: 60"))
            .visit(visit("2026-03-16", "Charge: 0"))
            .visit(visit("2026-03-17", "Charge: 70, Reason: cancelled"));
    assertEquals(
        List.of(
            "BEFORE_REGISTER  2026-02-01 Ruth 50.00 10.00",
            "ON_NO_INVOICE  2026-03-15 Ruth 60.00 12.00",
            "INVOICE 2026-0001 2026-03-31 Ruth 100.00 20.00"),
        written(BilledBook.of(book.jobs(), register)));
    assertEquals(
        List.of(true, false, true),
        BilledBook.of(book.jobs(), register).stream().map(Billed::isIncome).toList());
    assertEquals(
        List.of(false, false, true),
        BilledBook.of(book.jobs(), register).stream().map(Billed::isOfRegister).toList());
  }

  @Test
  void a_void_document_and_one_without_lines_are_no_bills() {
    WrittenBook march = book().visit(visit("2026-03-02", "Charge: list"));
    List<BilledDocument> register = new ArrayList<>(YearBook.run(march, List.of(), "2026-03"));
    register.set(0, register.get(0).voided());
    assertEquals(
        List.of("BEFORE_REGISTER  2026-03-02 Ruth 100.00 20.00"),
        written(BilledBook.of(march.jobs(), register)));
    assertEquals(Optional.empty(), BilledBook.begins(register));
  }

  /** 30.00 of goods bear 6.00; each sharer has half of either part. */
  @Test
  void a_visit_is_billed_to_each_sharer_by_goods_and_services() {
    WrittenBook shared =
        book()
            .horse("Horse: Jet, Owner: Ruth, Share %: 50")
            .horse("Horse: Jet, Owner: Adam, Share %: 50")
            .visit("Date: 2026-03-02, Horse: Jet, Work: Half, Charge: list");
    List<Billed> billed = BilledBook.of(shared.jobs(), List.of());
    assertEquals(
        List.of(
            "BEFORE_REGISTER  2026-03-02 Adam 50.00 3.00",
            "BEFORE_REGISTER  2026-03-02 Ruth 50.00 3.00"),
        written(billed));
    assertEquals(
        List.of("goods S 15.00 3.00", "services  35.00 0.00"),
        billed.get(0).lines().stream()
            .map(
                line ->
                    line.part()
                        + " "
                        + line.taxCode()
                        + " "
                        + line.net().toPlainString()
                        + " "
                        + line.tax().toPlainString())
            .toList());
    assertEquals(true, billed.get(0).bears("Visits", 2));
    assertEquals(false, billed.get(0).bears("Visits", 3));
    assertEquals(false, billed.get(0).bears("Other", 2));
    assertEquals(new BigDecimal("53.00"), billed.get(0).gross());
  }

  /** Three lines of 1.13 at 20 % are 0.678 of tax: 0.68, of which 0.23, 0.23 and 0.22. */
  @ParameterizedTest
  @CsvSource({"invoice, 0.23 0.23 0.22", "line, 0.23 0.23 0.23"})
  void a_documents_tax_is_split_over_its_lines_to_the_cent(String taxOn, String taxes) {
    WrittenBook book = book().setting(Setting.TAX_ON, taxOn);
    for (int day = 1; day <= 3; day++) {
      book.visit(visit("2026-03-0" + day, "Charge: 1.13"));
    }
    List<Billed> billed = BilledBook.of(book.jobs(), YearBook.run(book, List.of(), "2026-03"));
    assertEquals(
        taxes,
        String.join(
            " ", billed.get(0).lines().stream().map(line -> line.tax().toPlainString()).toList()));
  }

  @Test
  void lines_of_two_codes_bear_each_their_own_tax() {
    WrittenBook book =
        book()
            .tax("Code: R, Name: VAT, Rate %: 5, Kind: reduced")
            .work("Work: Book, Tax: R, Price: 40")
            .visit(visit("2026-03-01", "Charge: list"))
            .visit("Date: 2026-03-02, Horse: Bess, Owner: Ruth, Work: Book, Charge: list");
    List<Billed> billed = BilledBook.of(book.jobs(), YearBook.run(book, List.of(), "2026-03"));
    assertEquals(
        List.of("20.00", "2.00"),
        billed.get(0).lines().stream().map(line -> line.tax().toPlainString()).toList());
  }

  @Test
  void a_line_stands_at_the_row_where_its_visit_is_now() {
    WrittenBook march = book().visit(visit("2026-03-02", "Charge: list"));
    List<BilledDocument> register = YearBook.run(march, List.of(), "2026-03");
    WrittenBook sorted =
        book().visit(visit("2026-01-02", "Charge: 0")).visit(visit("2026-03-02", "Charge: list"));
    assertEquals(3, BilledBook.of(sorted.jobs(), register).get(0).lines().get(0).row());
    WrittenBook gone = book();
    assertEquals(2, BilledBook.of(gone.jobs(), register).get(0).lines().get(0).row());
  }

  @Test
  void what_the_book_charges_today_is_known_by_row_and_period() {
    WrittenBook book =
        book()
            .visit(visit("2026-03-02", "Charge: 50"))
            .visit(visit("2026-04-02", "Charge: 60"))
            .visit(visit("2026-03-03", "Charge: 70, Reason: cancelled"));
    BookNets nets = BookNets.of(book.jobs());
    assertEquals(Optional.of(new BigDecimal("50.00")), nets.net("Visits", 2));
    assertEquals(Optional.empty(), nets.net("Visits", 4));
    assertEquals(
        new BigDecimal("50.00"),
        nets.within(new Period(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 31))));
  }

  /** 120 owed at the end of March, of which 20 were paid in April; 30 stood open before. */
  @Test
  void owners_owe_what_the_register_says_at_both_ends() {
    WrittenBook book =
        book()
            .owner("Owner: Ruth, Opening balance: 30")
            .visit(visit("2026-03-02", "Charge: list"))
            .payment("Date: 2026-04-10, Owner: Ruth, Amount: 20");
    List<BilledDocument> register = YearBook.run(book, List.of(), "2026-03");
    OwnerDebts debts =
        OwnerDebts.of(
                book.jobs(),
                register,
                new Period(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 4, 30)))
            .orElseThrow();
    assertEquals(LocalDate.of(2026, 3, 1), debts.openingDate());
    assertEquals(new BigDecimal("150.00"), debts.before());
    assertEquals(new BigDecimal("130.00"), debts.after());
    assertEquals(
        Optional.empty(),
        OwnerDebts.of(
            book.jobs(),
            List.of(),
            new Period(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 4, 30))));
  }

  @Test
  void an_opening_date_of_the_settings_goes_before_the_registers() {
    WrittenBook book =
        book()
            .setting(Setting.OPENING_DATE, "2026-02-15")
            .visit(visit("2026-03-02", "Charge: list"));
    List<BilledDocument> register = YearBook.run(book, List.of(), "2026-03");
    Period march = new Period(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 31));
    assertEquals(
        LocalDate.of(2026, 2, 15),
        OwnerDebts.of(book.jobs(), register, march).orElseThrow().openingDate());
  }
}
