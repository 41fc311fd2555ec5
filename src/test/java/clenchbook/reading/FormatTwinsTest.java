package clenchbook.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One book in every format, each written by LibreOffice, is the same book. */
class FormatTwinsTest {
  private static final Path SAMPLE = Path.of("sample-workbooks", "thornfield-metric.xlsx");
  private static final String CSV =
      "csv:Text - txt - csv (StarCalc):%s,34,%s,1,,0,false,true,false,false,false,-1";

  @TempDir Path folder;

  private static String told(Path book) throws IOException {
    return ToldBook.of(BookReader.read(book, ReadOptions.of(Locale.UK)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"ods", "xls", "xlsx:Calc MS Excel 2007 XML", "xlsm:Calc MS Excel 2007 VBA XML"})
  void the_sample_book_passes_through_another_program_and_is_the_same(String form)
      throws IOException {
    Office.require();
    Office.convert(SAMPLE, form, folder);
    String suffix = form.replaceFirst(":.*", "");
    Path twin = folder.resolve("thornfield-metric." + suffix);
    assertEquals(told(SAMPLE), told(twin));
  }

  @Test
  void the_sample_book_passes_through_a_second_format_and_back() throws IOException {
    Office.require();
    Office.convert(SAMPLE, "ods", folder);
    Path back = Files.createDirectory(folder.resolve("back"));
    Office.convert(folder.resolve("thornfield-metric.ods"), "xlsx", back);
    assertEquals(told(SAMPLE), told(back.resolve("thornfield-metric.xlsx")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"44 76", "59 76", "9 76"})
  void a_folder_of_text_files_is_the_same_book(String delimiterAndCharset) throws IOException {
    Office.require();
    String[] parts = delimiterAndCharset.split(" ");
    Office.convert(SAMPLE, String.format(CSV, parts[0], parts[1]), folder);
    String told = told(folder);
    assertFalse(told.isEmpty());
    assertEquals(told(SAMPLE), told);
  }
}
