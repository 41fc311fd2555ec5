package clenchbook.reading.formats.xls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Visit;
import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import clenchbook.reading.formats.TableFile;
import clenchbook.reading.formats.Zipped;
import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Books whose bytes are made by hand, since no library writes what other programs do. */
class XlsSourceTest {
  private static final long TEXT_FOLLOWS = 0xFFFF_0000_0000_0000L;
  private static final long TRUE_FOUND = 0xFFFF_0000_0001_0001L;
  private static final long NOT_AVAILABLE = 0xFFFF_0000_002A_0002L;
  private static final long NO_TEXT = 0xFFFF_0000_0000_0003L;

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("book.xls");
  }

  private static long of(double result) {
    return Double.doubleToLongBits(result);
  }

  /** Two charges of 100, kept by formulas under the numbers of Excel 3 and 4, were not billed. */
  @ParameterizedTest
  @ValueSource(ints = {0x0006, 0x0206, 0x0406})
  void a_charge_that_a_formula_made_is_read_under_each_of_its_records(int kind) throws IOException {
    Biff book = Biff.book(Biff.YEAR_97, "Visits").end().sheet();
    String[] headings = {"Date", "Owner", "Horse", "Work", "Charge"};
    for (int column = 0; column < headings.length; column++) {
      book.label(0, column, headings[column]);
    }
    book.number(1, 0, 1, 46_095).label(1, 1, "Ada Larch").label(1, 2, "Bramble");
    book.label(1, 3, "Trim").formula(kind, 1, 4, of(100)).end();
    ReadResult result = BookReader.read(book.write(file), ReadOptions.of(Locale.UK));
    Visit visit = result.book().visits().get(0);
    assertEquals(Optional.of(new BigDecimal("100")), visit.charge());
  }

  @ParameterizedTest
  @ValueSource(ints = {0x0006, 0x0206, 0x0406})
  void each_kind_of_stored_result_is_read(int kind) throws IOException {
    Biff book = Biff.book(Biff.YEAR_97, "Visits").end().sheet();
    book.formula(kind, 0, 0, of(99.5)).formula(kind, 0, 1, TEXT_FOLLOWS).result("Émile");
    book.formula(kind, 0, 2, TRUE_FOUND).formula(kind, 0, 3, NOT_AVAILABLE);
    book.formula(kind, 0, 4, NO_TEXT).end();
    assertEquals(List.of("1: N0=99.5 T1=Émile T2=TRUE F3=#N/A"), Zipped.rows(book.write(file)));
  }

  @Test
  void a_formula_whose_text_does_not_follow_has_no_value_and_is_not_blank() throws IOException {
    Biff book = Biff.book(Biff.YEAR_97, "Visits").end().sheet();
    book.formula(0x0006, 0, 0, TEXT_FOLLOWS).number(0, 1, 0, 7);
    book.formula(0x0006, 1, 0, TEXT_FOLLOWS).end();
    assertEquals(List.of("1: N0=(formula) N1=7", "2: N0=(formula)"), Zipped.rows(book.write(file)));
  }

  /** A calculation's setting and a what-if table, longer than they should be. */
  @Test
  void records_that_need_not_be_read_may_be_as_they_like() throws IOException {
    Biff book = Biff.book(Biff.YEAR_97, "Visits").of(0x0031, 3).u8(1).u16(2).end().sheet();
    book.of(0x0010, 16).f64(0.001).u64(7).of(0x0236, 18).raw(new byte[18]);
    book.number(0, 0, 2, 85.1).of(0x0236, 1).u8(9).number(1, 0, 0, 2).end();
    assertEquals(List.of("1: N0=85.1", "2: N0=2"), Zipped.rows(book.write(file)));
  }

  @Test
  void a_chart_within_a_sheet_is_passed_over_and_the_sheet_goes_on() throws IOException {
    Biff book = Biff.book(Biff.YEAR_97, "Visits", "Work").end();
    book.sheet().begin(0x0020).number(0, 0, 0, 9).end().number(0, 0, 0, 1).end();
    book.sheet().number(0, 0, 0, 2).end().write(file);
    assertEquals(List.of("1: N0=1"), Zipped.rows(file));
    assertEquals(List.of("1: N0=2"), Zipped.rows(file, 1, Optional.empty()));
  }

  @Test
  void a_book_of_1995_is_read_with_the_texts_of_its_code_page() throws IOException {
    Biff book = Biff.book(Biff.YEAR_95, "Visits", "Preise").end().sheet();
    book.number(0, 0, 1, 46_095).label(0, 1, "Zoë");
    book.formula(0x0006, 0, 2, TEXT_FOLLOWS).result("Émile");
    book.of(0x027E, 10).at(0, 3, 0).u32(85 << 2 | 2);
    book.of(0x00BD, 18).u16(0).u16(4).u16(0).u32(8510 << 2 | 3).u16(0).u32(7 << 2 | 2).u16(5);
    book.of(0x0205, 8).at(0, 6, 0).u8(1).u8(0);
    book.of(0x00D6, 13).at(0, 7, 0).u16(4).raw(new byte[] {'h', 'u', 'f', (byte) 0xDF}).u8(0);
    book.end().sheet().label(0, 0, "Beschlag").end().write(file);
    assertEquals(
        List.of("1: M0=2026-03-14 T1=Zoë T2=Émile N3=85 N4=85.1 N5=7 T6=TRUE T7=hufß"),
        Zipped.rows(file));
    assertEquals(List.of("1: T0=Beschlag"), Zipped.rows(file, 1, Optional.empty()));
  }

  @Test
  void a_book_of_1995_under_a_password_says_what_to_do() throws IOException {
    Biff.book(Biff.YEAR_95, "Visits").of(0x002F, 4).u16(1).u16(2).end().write(file);
    assertTrue(refusal().contains("Excel 5 or 95"), refusal());
    assertTrue(refusal().contains("save it again as .xlsx"), refusal());
  }

  private String refusal() {
    UnreadableWorkbook refusal =
        assertThrows(UnreadableWorkbook.class, () -> Zipped.rows(file, 0, Optional.empty()));
    assertEquals(1, InEnglish.said(refusal.message()).lines().count());
    return InEnglish.said(refusal.message());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0900 0400", "0902 0600", "0904 0600"})
  void a_sheet_of_the_first_programs_says_what_to_do(String start) throws IOException {
    byte[] bytes = java.util.HexFormat.of().parseHex(start.replace(" ", "") + "00001000");
    java.nio.file.Files.write(file, bytes);
    assertTrue(refusal().contains("Excel 4 or an older program"), refusal());
  }

  @Test
  void a_listed_sheet_that_is_not_in_the_book_is_damage() throws IOException {
    Biff.book(Biff.YEAR_97, "Visits", "Work").end().sheet().number(0, 0, 0, 1).end().write(file);
    UnreadableWorkbook refusal =
        assertThrows(UnreadableWorkbook.class, () -> Zipped.rows(file, 1, Optional.empty()));
    assertEquals(
        "the file is damaged: it lists the sheet 'Work', which is not in it",
        InEnglish.said(refusal.message()));
  }

  @Test
  void a_sheet_that_breaks_off_gives_the_rows_before_it() throws IOException {
    Biff book = Biff.book(Biff.YEAR_97, "Visits").end().sheet();
    book.number(0, 0, 0, 1).number(1, 0, 0, 2).of(0x0203, 14).u16(2).write(file);
    List<String> rows = new java.util.ArrayList<>();
    try (var source = TableFile.open(file, Optional.empty())) {
      assertThrows(DamagedSheet.class, () -> source.rows(0, row -> rows.add("" + row.number())));
    }
    assertEquals(List.of("1"), rows);
  }
}
