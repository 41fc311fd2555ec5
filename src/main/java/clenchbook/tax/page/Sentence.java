package clenchbook.tax.page;

import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * English sentences of countries that have not been moved into the texts yet. It goes with the last
 * of them.
 */
public final class Sentence {
  private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

  private Sentence() {}

  /** A sentence with these gaps filled; numbers as the language writes them. */
  public static Message of(String english, String... gaps) {
    List<Object> pieces = new ArrayList<>();
    Matcher gap = GAP.matcher(english);
    int from = 0;
    while (gap.find()) {
      pieces.add(english.substring(from, gap.start()));
      pieces.add(filled(gaps[Integer.parseInt(gap.group(1))]));
      from = gap.end();
    }
    pieces.add(english.substring(from));
    return new Message("", pieces);
  }

  /** A whole number of up to four digits may be a year and stays. */
  private static Object filled(String text) {
    boolean number = text.matches("-?\\d+(\\.\\d+)?") && !text.matches("\\d{1,4}");
    return number ? new BigDecimal(text) : text;
  }
}
