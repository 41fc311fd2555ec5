package clenchbook.reading.formats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.formats.cells.DamagedSheet;
import clenchbook.reading.formats.cells.TableSource;
import clenchbook.reading.formats.cells.UnreadableWorkbook;
import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Packed files whose directory says what no workbook would, or not what is in them. The layout of
 * the directory: PKWARE, APPNOTE 6.3.10, 4.3.12 (from memory).
 */
class PackedDirectoryTest {
  private static final int ENTRY = 0x02014B50;
  private static final int PACKED_SIZE = 20;
  private static final int SIZE = 24;
  private static final int NAME_LENGTH = 28;
  private static final int NAME = 46;
  private static final int FOUR_GB = 0xFFFFFFFE;

  @TempDir Path folder;

  private static ByteBuffer bytes(Path file) throws IOException {
    return ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** Where the entry of a part begins in the directory. */
  private static int entry(ByteBuffer file, String part) {
    for (int at = 0; at < file.limit() - NAME; at++) {
      if (file.getInt(at) == ENTRY) {
        byte[] name = new byte[file.getShort(at + NAME_LENGTH)];
        file.get(at + NAME, name);
        if (new String(name, StandardCharsets.UTF_8).equals(part)) {
          return at;
        }
      }
    }
    throw new AssertionError(part);
  }

  private Path declaring(Path book, String part, int offset, int value) throws IOException {
    ByteBuffer file = bytes(book);
    file.putInt(entry(file, part) + offset, value);
    return Files.write(book, file.array());
  }

  private static String refusedAtOnce(Path file) {
    UnreadableWorkbook refusal =
        assertThrows(
            UnreadableWorkbook.class, () -> TableFile.open(file, Optional.empty()).close());
    assertEquals(
        1, InEnglish.said(refusal.message()).lines().count(), InEnglish.said(refusal.message()));
    return InEnglish.said(refusal.message());
  }

  private Path book() throws IOException {
    return Zipped.sheet("<row><c><v>85</v></c></row>").part("xl/media/a.bmp", "B").write(folder);
  }

  /**
   * A sound list of sheets would be read before the sheet is unpacked; the directory comes first.
   */
  @Test
  void what_would_unpack_to_four_gigabytes_is_refused_before_anything_is_unpacked()
      throws IOException {
    for (String part : List.of("xl/worksheets/sheet1.xml", "xl/media/a.bmp")) {
      String told = refusedAtOnce(declaring(book(), part, SIZE, FOUR_GB));
      assertTrue(told.contains("2 GB or 200 times"), told);
    }
  }

  @Test
  void a_part_to_be_read_may_not_declare_more_than_two_hundred_times_its_size() throws IOException {
    int size = 2 << 20;
    String told = refusedAtOnce(declaring(book(), "xl/worksheets/sheet1.xml", SIZE, size));
    assertTrue(told.contains("200 times"), told);
    assertEquals(List.of("1: N0=85"), Zipped.rows(declaring(book(), "xl/media/a.bmp", SIZE, size)));
  }

  @Test
  void a_part_that_claims_to_be_larger_than_its_file_gains_nothing() throws IOException {
    Path book = declaring(book(), "xl/worksheets/sheet1.xml", PACKED_SIZE, 1 << 30);
    String told = refusedAtOnce(declaring(book, "xl/worksheets/sheet1.xml", SIZE, 1 << 30));
    assertTrue(told.contains("200 times"), told);
  }

  @Test
  void parts_that_are_each_small_enough_may_be_too_much_together() throws IOException {
    Zipped many = Zipped.sheet("");
    for (int i = 0; i < 100; i++) {
      many.part("xl/more/" + i + ".xml", "<x/>");
    }
    Path book = many.write(folder);
    ByteBuffer file = bytes(book);
    for (int i = 0; i < 100; i++) {
      file.putInt(entry(file, "xl/more/" + i + ".xml") + SIZE, 1_000_000);
    }
    Files.write(book, file.array());
    String told = refusedAtOnce(book);
    assertTrue(told.contains("200 times"), told);
  }

  @Test
  void a_part_longer_than_it_declares_breaks_off() throws IOException {
    Path book = declaring(book(), "xl/worksheets/sheet1.xml", SIZE, 10);
    try (TableSource source = TableFile.open(book, Optional.empty())) {
      assertThrows(DamagedSheet.class, () -> source.rows(0, row -> true));
    }
  }

  @Test
  void two_parts_of_one_name_are_damage() throws IOException {
    Path book = Zipped.sheet("").part("xl/worksheets/sheet2.xml", "<worksheet/>").write(folder);
    String text = new String(Files.readAllBytes(book), StandardCharsets.ISO_8859_1);
    Files.write(
        book, text.replace("sheet2.xml", "sheet1.xml").getBytes(StandardCharsets.ISO_8859_1));
    assertTrue(refusedAtOnce(book).contains("two parts of one name"));
  }

  // sheets that are listed and missing

  @Test
  void a_listed_sheet_whose_part_is_missing_is_damage() throws IOException {
    String sheets =
        "<workbook xmlns:r=\"http://r\"><sheets><sheet name=\"Visits\" r:id=\"rId0\"/><sheet"
            + " name=\"Work\" r:id=\"rId1\"/></sheets></workbook>";
    String relations =
        Zipped.relations(
            Zipped.REL, "worksheet", "worksheets/sheet1.xml", "worksheet", "worksheets/none.xml");
    Path book =
        Zipped.sheet("")
            .part("xl/workbook.xml", sheets)
            .part("xl/_rels/workbook.xml.rels", relations)
            .write(folder);
    String wanted = "the file is damaged: it lists the sheet 'Work', which is not in it";
    assertEquals(wanted, refusedAtOnce(book));
    String one = Zipped.relations(Zipped.REL, "worksheet", "worksheets/sheet1.xml");
    assertEquals(
        wanted,
        refusedAtOnce(
            Zipped.sheet("")
                .part("xl/workbook.xml", sheets)
                .part("xl/_rels/workbook.xml.rels", one)
                .write(folder)));
  }

  @Test
  void a_listed_chart_or_module_is_no_sheet_and_may_be_missing() throws IOException {
    String sheets =
        "<workbook xmlns:r=\"http://r\"><sheets><sheet name=\"Visits\" r:id=\"rId0\"/><sheet"
            + " name=\"Chart\" r:id=\"rId1\"/><sheet name=\"Module\""
            + " r:id=\"\"/></sheets></workbook>";
    String relations =
        Zipped.relations(
            Zipped.REL, "worksheet", "worksheets/sheet1.xml", "chartsheet", "chartsheets/1.xml");
    Path book =
        Zipped.sheet("<row><c><v>1</v></c></row>")
            .part("xl/workbook.xml", sheets)
            .part("xl/_rels/workbook.xml.rels", relations)
            .write(folder);
    assertEquals(List.of("1: N0=1"), Zipped.rows(book));
  }
}
