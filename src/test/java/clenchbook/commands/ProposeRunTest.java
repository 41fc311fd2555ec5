package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.reading.FileSum;
import clenchbook.reading.Office;
import clenchbook.reading.SmallBook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check --propose} guesses a stranger's headings, and the next run reads by them. */
class ProposeRunTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final List<String> WORKS = List.of("Trim", "Full set", "Fronts");
  private static final List<String> PRICES = List.of("45.00", "110.00", "70.00");
  private static final List<String> HEADINGS =
      List.of("The day", "Custmer", "Hrse name", "Wrk done", "Quid", "Mobile no");

  @TempDir Path folder;

  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  /** Eighteen visits under a stranger's headings, as text. */
  private static String csv(String mark) {
    StringBuilder csv = new StringBuilder(String.join(mark, HEADINGS)).append('\n');
    for (int row = 0; row < 18; row++) {
      String owner = List.of("Ruth Ashby", "Ivo Penhale", "Joan Tarrant").get(row % 3);
      String horse = List.of("Bess", "Jet", "Dot", "Fig", "Moss", "Tansy").get(row % 6);
      String visit =
          String.join(
              mark,
              DAY.plusDays(row).toString(),
              owner,
              horse,
              WORKS.get(row * 5 % 7 % 3),
              "£" + PRICES.get(row * 5 % 7 % 3),
              "07700 9001" + (10 + row));
      csv.append(visit).append('\n');
    }
    return csv.toString();
  }

  private static SmallBook xlsx(String sheet) {
    SmallBook book = new SmallBook();
    csv("|").lines().forEach(line -> book.rows(sheet, typed(line)));
    return book;
  }

  private static Object[] typed(String line) {
    Object[] cells = List.of(line.split("\\|")).toArray();
    if (cells[0].toString().startsWith("2")) {
      cells[0] = LocalDate.parse(cells[0].toString());
      cells[4] = new SmallBook.Styled(cells[4].toString().substring(1), "£#,##0.00");
    }
    return cells;
  }

  /** The same visits as an old workbook whose cells are all texts. */
  private Path xls() throws IOException {
    Path file = folder.resolve("old.xls");
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      Sheet sheet = book.createSheet("Doings");
      for (String line : csv("|").lines().toList()) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (String cell : line.split("\\|")) {
          row.createCell(Math.max(0, row.getLastCellNum())).setCellValue(cell);
        }
      }
      book.write(file.toFile());
    }
    return file;
  }

  private static Machine machine() {
    return new Machine(LocalDate.of(2026, 4, 1), Locale.UK, Optional.empty());
  }

  private int check(Path book, boolean propose) {
    said.reset();
    return new BookCheck(book, Optional.empty(), Optional.empty(), propose, machine(), terminal())
        .run();
  }

  private Terminal terminal() {
    PrintStream to = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Terminal(to, to, false);
  }

  private String said() {
    return said.toString(StandardCharsets.UTF_8);
  }

  private static List<String> means(Path file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      assertEquals(List.of("Sheet", "Mine", "Means", "Sure", "Why"), rows.getHeaderNames());
      return rows.stream().map(row -> row.get("Mine") + "=" + row.get("Means")).toList();
    }
  }

  private void assertProposed(Path book, Path file) throws IOException {
    String before = FileSum.sha256(book);
    assertEquals(0, check(book, true), said());
    assertEquals(
        List.of(
            "=Visits",
            "The day=Date",
            "Custmer=Owner",
            "Hrse name=Horse",
            "Wrk done=Work",
            "Quid=Charge",
            "Mobile no="),
        means(file));
    assertTrue(said().contains("Guessed 6 of 7 sheets and headings that are not known, in "));
    assertEquals(0, check(book, false), said());
    assertTrue(said().contains("your own words are taken from " + file.getFileName()), said());
    assertTrue(said().contains("'Quid' = Charge, by Headings"), said());
    assertEquals(before, FileSum.sha256(book));
  }

  @Test
  void an_xlsx_of_a_stranger_is_read_after_its_headings_are_guessed() throws IOException {
    assertProposed(xlsx("Doings").write(folder), folder.resolve("book.headings.csv"));
  }

  @Test
  void a_single_csv_and_a_folder_of_them_are_read_after_their_headings_are_guessed()
      throws IOException {
    Path alone = Files.writeString(folder.resolve("my doings.csv"), csv(";"));
    assertProposed(alone, folder.resolve("my doings.headings.csv"));
    Path book = Files.createDirectories(folder.resolve("books"));
    Files.writeString(book.resolve("Doings.csv"), csv(","));
    assertProposed(book, folder.resolve("books.headings.csv"));
  }

  @Test
  void an_ods_is_read_after_its_headings_are_guessed() throws IOException {
    Office.require();
    Office.convert(xls(), "ods", folder);
    assertProposed(folder.resolve("old.ods"), folder.resolve("old.headings.csv"));
  }

  @Test
  void an_old_xls_is_read_after_its_headings_are_guessed() throws IOException {
    assertProposed(xls(), folder.resolve("old.headings.csv"));
  }

  @Test
  void a_file_of_headings_is_never_written_over() throws IOException {
    Path book = xlsx("Doings").write(folder);
    Path file = Files.writeString(folder.resolve("book.headings.csv"), "Sheet,Mine,Means\n");
    RunFault fault = assertThrows(RunFault.class, () -> check(book, true));
    assertEquals(
        "book.headings.csv is already there and is not written over; rename it, then ask again",
        fault.getMessage());
    assertEquals("Sheet,Mine,Means\n", Files.readString(file));
    assertEquals("", said());
  }

  @Test
  void a_book_of_known_words_gets_no_file() throws IOException {
    Path book =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .write(folder);
    assertEquals(0, check(book, true));
    assertTrue(said().contains("Every sheet and heading is known; there is nothing to guess."));
    assertFalse(Files.exists(folder.resolve("book.headings.csv")));
  }

  @Test
  void a_heading_that_looks_like_a_formula_is_made_harmless_and_read_back_the_same()
      throws IOException {
    SmallBook book = SmallBook.visits("Date|Owner|Horse|Work|=cmd|'!A0'!;£|+/-");
    for (int row = 0; row < 12; row++) {
      BigDecimal shoes = BigDecimal.valueOf(row % 3 == 0 ? 2 : 4);
      Object money = new SmallBook.Styled(PRICES.get(row % 3), "£#,##0.00");
      book.visit(DAY.plusDays(row), "Ruth", "Bess" + row % 4, "Trim", "x" + row, "", shoes);
      book.sheet("@Prices", "Work|Quid").row("@Prices", WORKS.get(row % 3), money);
    }
    Path file = book.write(folder);
    check(file, true);
    String written = Files.readString(folder.resolve("book.headings.csv"));
    assertTrue(written.contains("Visits,'=cmd,"), written);
    assertTrue(written.contains("Visits,'+/-,Shoes,"), written);
    check(file, false);
    assertTrue(said().contains("'+/-' = Shoes, by Headings"), said());
  }

  @Test
  void the_invoices_bear_the_prices_of_the_guessed_columns() throws IOException {
    Path book = xlsx("Doings").write(folder);
    assertEquals(0, check(book, true));
    said.reset();
    MonthEndRequest request =
        new MonthEndRequest(
            book,
            YearMonth.of(2026, 3),
            Optional.empty(),
            RegisterChoice.USUAL,
            false,
            Optional.empty(),
            Optional.empty());
    assertEquals(MonthEndRun.DONE, new MonthEndRun(request, machine(), terminal()).run());
    assertTrue(said().contains("Headings: your own words are taken from book.headings.csv"));
    Path invoices = folder.resolve("book reports/2026-03/figures/invoices.csv");
    BigDecimal sum = BigDecimal.ZERO;
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = CSVParser.parse(invoices, StandardCharsets.UTF_8, format)) {
      for (CSVRecord row : rows) {
        sum = sum.add(new BigDecimal(row.get("net")));
      }
    }
    BigDecimal typed =
        csv("|")
            .lines()
            .skip(1)
            .map(line -> new BigDecimal(line.split("\\|")[4].substring(1)))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(0, typed.compareTo(sum), typed + " typed, " + sum + " billed");
  }

  @Test
  void a_book_with_a_sheet_headings_is_told_where_the_rows_count() throws IOException {
    Path book =
        xlsx("Visits")
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "Visits", "Quid", "Charge")
            .write(folder);
    check(book, true);
    assertTrue(said().contains("copy its rows to where your words stand now"), said());
    assertFalse(means(folder.resolve("book.headings.csv")).contains("Quid=Charge"));
  }

  @Test
  void a_book_without_visits_is_told_of_the_guess_until_there_is_one() throws IOException {
    Path book = xlsx("Doings").write(folder);
    RunFault fault = assertThrows(RunFault.class, () -> check(book, false));
    assertTrue(fault.getMessage().endsWith(" --propose"), fault.getMessage());
    Files.writeString(folder.resolve("book.headings.csv"), "Sheet,Mine,Means\nDoings,Quid,\n");
    RunFault later = assertThrows(RunFault.class, () -> check(book, false));
    String message = later.getMessage();
    assertTrue(message.endsWith("look through what Means says in book.headings.csv"), message);
  }
}
