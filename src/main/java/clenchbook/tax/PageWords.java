package clenchbook.tax;

import clenchbook.reports.blocks.FigureText;
import clenchbook.tax.page.Wording;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** What the tax pages say in one language, and their numbers as that language writes them. */
final class PageWords {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  private final FigureText text;

  PageWords(FigureText text) {
    this.text = text;
  }

  String say(String key, Object... gaps) {
    return text.say(key, gaps);
  }

  String say(Message message) {
    return text.say(message);
  }

  String say(Wording wording) {
    return text.say(wording.said());
  }

  /** All of them, in order. */
  List<String> say(List<Message> all) {
    return all.stream().map(text::say).toList();
  }

  /** An amount or another number with the digits it has. */
  String amount(BigDecimal amount) {
    return text.number(amount, Math.max(0, amount.scale()));
  }

  /** A cell of a file: a number as this language writes it, any other text as it is. */
  String cell(String cell) {
    return NUMBER.matcher(cell).matches() ? amount(new BigDecimal(cell)) : cell;
  }

  /** The same where a whole number of up to four digits may be a year and stays. */
  String text(String cell) {
    return cell.matches("\\d{1,4}") ? cell : cell(cell);
  }

  static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }
}
