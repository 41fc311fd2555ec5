package clenchbook.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellLinesTest {
  @ParameterizedTest
  @CsvSource({
    "'',10,1",
    "short,10,1",
    "exactly 10,10,1",
    "two words here,10,2",
    "one two three four,9,3",
    "unbreakablywide,5,3",
    "a unbreakablywide,5,4",
  })
  void a_text_takes_the_lines_that_its_words_need(String text, int width, int lines) {
    assertEquals(lines, CellLines.lines(text, width));
    assertEquals(15 * lines, CellLines.height(text, width));
  }
}
