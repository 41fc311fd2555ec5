package clenchbook.print.scripts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Unicode Standard Annex 9, in its own notation: capitals stand for letters from the right. */
class LineOrderTest {
  /** A letter as a piece of a line; it notes where it is put. */
  private record Letter(String text, List<Letter> log, List<Float> at) implements Piece {
    @Override
    public float width() {
      return text.length();
    }

    @Override
    public void write(PdfContentByte pen, float x, float y) {
      log.add(this);
      at.add(x);
    }
  }

  private static String hebrew(String text) {
    StringBuilder written = new StringBuilder();
    text.chars()
        .forEach(c -> written.append((char) (c >= 'A' && c <= 'Z' ? '\u05D0' + c - 'A' : c)));
    return written.toString();
  }

  private static String capitals(String text) {
    StringBuilder written = new StringBuilder();
    text.chars().forEach(c -> written.append((char) (c >= '\u05D0' ? 'A' + c - '\u05D0' : c)));
    return written.toString();
  }

  /** What is seen from the left. */
  private static String seen(String spoken) {
    String text = hebrew(spoken);
    List<Letter> log = new ArrayList<>();
    List<Float> at = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>();
    List<Integer> levels = new ArrayList<>();
    for (LineOrder.Part part : LineOrder.parts(text, 0, text.length())) {
      String said = text.substring(part.from(), part.to());
      pieces.add(new Letter(part.rightToLeft() ? LineOrder.turned(said) : said, log, at));
      levels.add(part.level());
    }
    SeenLine.of(pieces, levels).write(null, 0, 0);
    StringBuilder seen = new StringBuilder();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < log.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparing(at::get));
    order.forEach(i -> seen.append(log.get(i).text()));
    return capitals(seen.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "abc, abc",
    "ABC, CBA",
    "ABC 12, 12 CBA",
    "ABC (12), (12) CBA",
    "ms ABC ash, ms CBA ash",
    "ABC · invoice 7, CBA · invoice 7",
    "ab (CD) ef, ab (DC) ef",
    "AB «CD», «DC» BA"
  })
  void a_line_is_seen_as_the_annex_orders_it(String spoken, String seen) {
    assertEquals(seen, seen(spoken));
  }

  @Test
  void pieces_are_written_as_they_are_spoken() {
    List<Letter> log = new ArrayList<>();
    List<Float> at = new ArrayList<>();
    List<Piece> pieces = List.of(new Letter("one", log, at), new Letter("2", log, at));
    SeenLine line = SeenLine.of(pieces, List.of(1, 2));
    line.write(null, 10, 0);
    assertEquals(List.of("one", "2"), log.stream().map(Letter::text).toList());
    assertEquals(List.of(11f, 10f), at);
    assertEquals(4f, line.width());
  }
}
