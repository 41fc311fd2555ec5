package clenchbook.reference;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;

/** A row as read: the heading in lower case without spaces or signs, and the cell's value. */
final class PlainRow {
  final int number;
  private final Map<String, Object> cells;

  PlainRow(int number, Map<String, Object> cells) {
    this.number = number;
    this.cells = cells;
  }

  static String key(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
  }

  boolean has(String heading) {
    return cells.containsKey(key(heading));
  }

  String text(String heading) {
    Object value = cells.get(key(heading));
    if (value == null) {
      return "";
    }
    return value instanceof BigDecimal number
        ? number.stripTrailingZeros().toPlainString()
        : value.toString().trim();
  }

  /** Gives the figure, or null where the cell is blank; an unreadable one is an error. */
  BigDecimal figure(String heading) {
    String text = text(heading).replaceAll("[£$€, ]", "").replace("%", "");
    return text.isEmpty() ? null : new BigDecimal(text);
  }

  BigDecimal figure(String heading, BigDecimal blank) {
    BigDecimal figure = figure(heading);
    return figure == null ? blank : figure;
  }

  boolean readable(String heading) {
    try {
      figure(heading);
      return true;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /** Gives minutes from plain figures or h:mm, or null where the cell is blank or an error. */
  BigDecimal minutes(String heading) {
    String text = text(heading);
    if (text.startsWith("#")) {
      return null;
    }
    if (!text.contains(":")) {
      return figure(heading);
    }
    String[] part = text.split(":");
    return new BigDecimal(part[0]).multiply(new BigDecimal(60)).add(new BigDecimal(part[1]));
  }

  LocalDate date(String heading, String order) {
    String text = text(heading);
    if (text.matches("\\d{4}-\\d{2}-\\d{2}")) {
      return LocalDate.parse(text);
    }
    if (text.matches("\\d{1,2}/\\d{1,2}/\\d{4}")) {
      String[] part = text.split("/");
      int first = Integer.parseInt(part[0]);
      int second = Integer.parseInt(part[1]);
      boolean monthFirst = order.equals("mdy");
      return LocalDate.of(
          Integer.parseInt(part[2]), monthFirst ? first : second, monthFirst ? second : first);
    }
    return null;
  }
}
