package clenchbook.samples;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Set;

/** Decides what a table line's cell is: a date, a figure, or text that only looks like a figure. */
final class Cells {
  private static final Set<String> TEXT =
      Set.of("Size", "Section", "Setting", "Receipt", "Tax number", "Code", "Reference", "Invoice");

  private Cells() {}

  /** Gives a LocalDate for ISO text, a BigDecimal for plain figures, else the text. */
  static Object parsed(String heading, String text) {
    if (text.matches("\\d{4}-\\d{2}-\\d{2}")) {
      return LocalDate.parse(text);
    }
    if (!TEXT.contains(heading) && text.matches("-?\\d+(\\.\\d+)?")) {
      return new BigDecimal(text);
    }
    return text.replace("\\n", "\n");
  }
}
