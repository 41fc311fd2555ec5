package clenchbook.writing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.book.Setting;
import clenchbook.book.SheetControl;
import clenchbook.book.SheetKind;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Terminal;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.BookReader;
import clenchbook.reading.Office;
import clenchbook.reading.ReadOptions;
import clenchbook.reading.ReadResult;
import clenchbook.reading.SmallBook;
import clenchbook.reading.starter.StarterPlan;
import clenchbook.texts.InEnglish;
import clenchbook.texts.Message;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The starter and the marked copy, looked at with Apache POI and LibreOffice as other readers. */
class WrittenBooksTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static byte[] starter() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    StarterWorkbook.write("en", "clenchbook", bytes);
    return bytes.toByteArray();
  }

  /** Nothing but that the examples count for nothing. */
  private static final List<ProblemKind> ALL_WELL = List.of(ProblemKind.EXAMPLE_ROWS);

  private static List<ProblemKind> kinds(List<Problem> problems) {
    return problems.stream().map(Problem::kind).toList();
  }

  private static List<Problem> checked(Path book) {
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    Machine machine = new Machine(LocalDate.of(2026, 12, 31), Locale.UK, Optional.empty());
    return OpenBook.read(book, machine, new Terminal(nowhere, nowhere, false)).problems();
  }

  @Test
  void the_starter_passes_check_and_every_sheet_has_its_example() throws IOException {
    Path book = Files.write(folder.resolve("starter.xlsx"), starter());
    assertEquals(ALL_WELL, kinds(checked(book)));
    ReadResult result = BookReader.read(book, ReadOptions.of(Locale.UK));
    Set<SheetKind> lists =
        Set.of(
            SheetKind.WORK,
            SheetKind.MATERIALS,
            SheetKind.OWNERS,
            SheetKind.HORSES,
            SheetKind.PLACES,
            SheetKind.TAX);
    assertEquals(
        EnumSet.complementOf(EnumSet.copyOf(lists)),
        Set.copyOf(result.book().present()),
        "a list of examples only must not make names unknown; a sheet of money, trips or stock"
            + " stands there, only empty");
    assertEquals(SheetKind.values().length, result.book().controls().size());
    for (SheetControl control : result.book().controls()) {
      assertTrue(control.rows() > 0, control.toString());
    }
  }

  @Test
  void the_starter_lists_every_setting_and_every_heading_of_the_everyday_sheets()
      throws IOException {
    List<StarterPlan.Sheet> sheets = StarterPlan.load("en").sheets();
    List<String> listed =
        sheets.stream()
            .flatMap(s -> s.settings().stream())
            .map(StarterPlan.SettingLine::name)
            .toList();
    for (Setting setting : Setting.values()) {
      assertTrue(listed.contains(setting.title()), setting.title());
    }
    List<String> visits =
        sheets.get(0).columns().stream().map(StarterPlan.Column::heading).toList();
    assertEquals(27, visits.size());
    assertEquals(13, sheets.get(0).columns().stream().filter(c -> !c.folded()).count());
  }

  @Test
  void the_starter_opens_in_another_program_with_notes_lists_formats_and_frozen_heads()
      throws IOException {
    Path book = Files.write(folder.resolve("starter.xlsx"), starter());
    try (InputStream stream = Files.newInputStream(book);
        XSSFWorkbook read = new XSSFWorkbook(stream)) {
      Sheet visits = read.getSheet("Visits");
      assertEquals(
          "The day of the visit.",
          visits.getRow(0).getCell(0).getCellComment().getString().getString());
      assertTrue(visits.getDataValidations().size() >= 8);
      assertEquals(1, visits.getPaneInformation().getHorizontalSplitPosition());
      assertEquals("yyyy-mm-dd", visits.getRow(1).getCell(0).getCellStyle().getDataFormatString());
      assertEquals("@", visits.getColumnStyle(6).getDataFormatString());
      assertTrue(visits.isColumnHidden(13));
    }
  }

  @Test
  void the_starter_opens_clean_in_libreoffice_and_is_the_same_book() throws IOException {
    Office.require();
    Path book = Files.write(folder.resolve("starter.xlsx"), starter());
    Path office = Files.createDirectory(folder.resolve("office"));
    Office.convert(book, "ods", office);
    Office.convert(office.resolve("starter.ods"), "xlsx", office);
    assertEquals(ALL_WELL, kinds(checked(office.resolve("starter.ods"))));
    assertEquals(ALL_WELL, kinds(checked(office.resolve("starter.xlsx"))));
    ReadResult own = BookReader.read(book, ReadOptions.of(Locale.UK));
    ReadResult other = BookReader.read(office.resolve("starter.xlsx"), ReadOptions.of(Locale.UK));
    assertEquals(own.book().visits().toString(), other.book().visits().toString());
  }

  @Test
  void both_are_always_the_same_bytes() throws IOException {
    assertArrayEquals(starter(), starter());
    Path book = faulty().write(folder);
    assertArrayEquals(marked(book), marked(book));
  }

  private static SmallBook faulty() {
    return SmallBook.visits("Date|Horse|Work|Owner|Charge|Size")
        .visit("tomorow", "Bramble", "Trim", "Ann", 45, "00")
        .visit(DAY, "Rosie", "Trim", "Ann", "=1+1", new SmallBook.Styled("46158", "d-mmm"))
        .visit("", "Jack", "Trim", "Ann", 45.5, "<&>\n2");
  }

  private static byte[] marked(Path book) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    List<Problem> problems = BookReader.read(book, ReadOptions.of(Locale.UK)).problems();
    MarkedCopyWriter.write(book, Optional.empty(), problems, InEnglish.TEXTS, bytes);
    return bytes.toByteArray();
  }

  @Test
  void the_marked_copy_colours_and_notes_each_problem_cell_and_lists_them_with_links()
      throws IOException {
    Path copy = Files.write(folder.resolve("marked.xlsx"), marked(faulty().write(folder)));
    try (InputStream stream = Files.newInputStream(copy);
        XSSFWorkbook read = new XSSFWorkbook(stream)) {
      Sheet list = read.getSheetAt(0);
      assertEquals("Problems", list.getSheetName());
      assertEquals(4, list.getLastRowNum());
      assertEquals("'Visits'!A2", list.getRow(1).getCell(1).getHyperlink().getAddress());
      assertEquals("held", list.getRow(1).getCell(2).getStringCellValue());
      Sheet visits = read.getSheet("Visits");
      assertMarked(visits.getRow(1).getCell(0), "FFF4B6B0", "'tomorow' is not a date");
      assertMarked(visits.getRow(2).getCell(4), "FFF4B6B0", "no amount of money");
      assertMarked(visits.getRow(2).getCell(5), "FFFCE6A9", "5/16");
      assertMarked(visits.getRow(3).getCell(0), "FFF4B6B0", "missing");
      assertEquals("=1+1", visits.getRow(2).getCell(4).getStringCellValue());
      assertEquals(45.5, visits.getRow(3).getCell(4).getNumericCellValue());
      assertEquals("<&>\n2", visits.getRow(3).getCell(5).getStringCellValue());
      assertEquals(DAY, visits.getRow(2).getCell(0).getLocalDateTimeCellValue().toLocalDate());
    }
  }

  private static void assertMarked(Cell cell, String colour, String told) {
    XSSFCell marked = (XSSFCell) cell;
    assertEquals(colour, marked.getCellStyle().getFillForegroundXSSFColor().getARGBHex());
    String note = marked.getCellComment().getString().getString();
    assertTrue(note.contains(told), note);
  }

  @Test
  void a_marked_copy_of_the_sample_book_is_the_same_book_and_the_book_stays_as_it_was()
      throws IOException {
    Path sample = Path.of("sample-workbooks", "thornfield-metric.xlsx");
    byte[] before = Files.readAllBytes(sample);
    Path copy = Files.write(folder.resolve("marked.xlsx"), marked(sample));
    ReadResult own = BookReader.read(sample, ReadOptions.of(Locale.UK));
    ReadResult other = BookReader.read(copy, ReadOptions.of(Locale.UK));
    assertEquals(bare(own), bare(other));
    assertArrayEquals(before, Files.readAllBytes(sample));
  }

  @Test
  void a_marked_copy_has_the_same_bytes_in_every_time_zone() throws IOException {
    TimeZone machine = TimeZone.getDefault();
    Files.writeString(folder.resolve("Visits.csv"), "Date,Horse,Work,Owner\nx,y,z,w\n");
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("America/New_York"));
      byte[] west = marked(folder);
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      assertArrayEquals(west, marked(folder));
    } finally {
      TimeZone.setDefault(machine);
    }
  }

  private static String bare(ReadResult result) {
    return (result.book().visits().toString() + result.book().purchases())
        .replaceAll("sheetIndex=\\d+", "");
  }

  @Test
  void sheets_whose_names_a_workbook_cannot_have_are_renamed_in_the_copy() throws IOException {
    Files.writeString(folder.resolve("Visits.csv"), "Date,Horse,Work,Owner\nx,y,z,w\n");
    Files.writeString(folder.resolve("Problems.csv"), "a\n");
    Files.writeString(folder.resolve("A very long name of a sheet [with] marks.csv"), "a\n");
    Problem problem =
        Problem.held(
            ProblemKind.DATE_UNREADABLE,
            new CellRef("Visits", 2, "A"),
            Message.literal("no"),
            Message.literal("yes"),
            "x");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    MarkedCopyWriter.write(folder, Optional.empty(), List.of(problem), InEnglish.TEXTS, bytes);
    Path copy = Files.write(folder.resolve("copy.xlsx"), bytes.toByteArray());
    try (InputStream stream = Files.newInputStream(copy);
        XSSFWorkbook read = new XSSFWorkbook(stream)) {
      assertEquals("Problems found", read.getSheetName(0));
      assertEquals(4, read.getNumberOfSheets());
    }
  }
}
