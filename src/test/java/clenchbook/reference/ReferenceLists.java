package clenchbook.reference;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Dated look-ups in Work, Materials and Tax, and the list cost of a piece. */
final class ReferenceLists {
  private static final BigDecimal STEEL_KG_PER_MM3 = new BigDecimal("0.00000785");
  private static final BigDecimal INCH = new BigDecimal("25.4");
  private final PlainBook book;
  private final String order;

  ReferenceLists(PlainBook book) {
    this.book = book;
    this.order = book.setting("Date order");
  }

  static boolean same(String a, String b) {
    return a.trim().toLowerCase(Locale.ROOT).equals(b.trim().toLowerCase(Locale.ROOT));
  }

  private PlainRow newest(List<PlainRow> rows, LocalDate day) {
    PlainRow found = null;
    LocalDate since = LocalDate.MIN;
    for (PlainRow row : rows) {
      LocalDate from = row.text("From").isEmpty() ? LocalDate.MIN : row.date("From", order);
      if (!from.isAfter(day) && !from.isBefore(since)) {
        found = row;
        since = from;
      }
    }
    return found;
  }

  PlainRow work(String name, LocalDate day) {
    return newest(
        book.sheet("Work").stream().filter(row -> same(row.text("Work"), name)).toList(), day);
  }

  /** Gives the rate of a code as a fraction; no code or an unknown one is nought. */
  BigDecimal rate(String code, LocalDate day) {
    PlainRow row =
        newest(book.sheet("Tax").stream().filter(r -> same(r.text("Code"), code)).toList(), day);
    return row == null || code.isEmpty()
        ? BigDecimal.ZERO
        : row.figure("Rate %", BigDecimal.ZERO).movePointLeft(2);
  }

  /** Gives the size under which an item is kept: its own where it has a row, else none. */
  String shelf(String item, String size) {
    boolean own =
        book.sheet("Materials").stream()
            .anyMatch(row -> same(row.text("Item"), item) && same(row.text("Size"), size));
    return own ? size : "";
  }

  PlainRow material(String item, String size, LocalDate day) {
    List<PlainRow> rows = new ArrayList<>();
    for (PlainRow row : book.sheet("Materials")) {
      if (same(row.text("Item"), item) && same(row.text("Size"), shelf(item, size))) {
        rows.add(row);
      }
    }
    return newest(rows, day);
  }

  String onlyNail() {
    List<String> nails =
        book.sheet("Materials").stream()
            .filter(r -> same(r.text("Kind"), "nail"))
            .map(r -> r.text("Item"))
            .distinct()
            .toList();
    return nails.size() == 1 ? nails.get(0) : "";
  }

  /** Matches an extra's name ignoring case and a plural s. */
  String extra(String name) {
    for (PlainRow row : book.sheet("Materials")) {
      String item = row.text("Item");
      if (same(item, name) || same(item + "s", name) || same(item, name + "s")) {
        return item;
      }
    }
    return "";
  }

  BigDecimal pieces(String unit, PlainRow material) {
    if (same(unit, "pair")) {
      return BigDecimal.valueOf(2);
    }
    return same(unit, "pack") ? material.figure("Per pack", BigDecimal.ONE) : BigDecimal.ONE;
  }

  /** Gives the list cost of one piece, or of one Unit of a bar. */
  BigDecimal listCost(PlainRow material) {
    if (material.has("Pack cost") && material.has("Per pack")) {
      return Cents.over(material.figure("Pack cost"), material.figure("Per pack"));
    }
    return Cents.over(
        material.figure("Unit cost", BigDecimal.ZERO), pieces(material.text("Unit"), material));
  }

  private static BigDecimal length(PlainRow material) {
    BigDecimal inches = material.figure("Length in");
    return inches == null ? material.figure("Length mm") : inches.multiply(INCH);
  }

  /** Gives how much of its bar, in the bar's Unit, one handmade shoe takes. */
  BigDecimal barTaken(PlainRow shoe, PlainRow bar) {
    BigDecimal taken = length(shoe).add(shoe.figure("Cut mm", BigDecimal.ZERO));
    if (!same(bar.text("Unit"), "kg")) {
      return Cents.over(taken, bar.figure("Bar length mm"));
    }
    String section = bar.text("Section");
    String[] sides = section.replaceAll("[a-z]+$", "").split("x");
    BigDecimal unit = section.endsWith("in") ? INCH : BigDecimal.ONE;
    BigDecimal area = side(sides[0]).multiply(unit).multiply(side(sides[1]).multiply(unit));
    return area.multiply(taken).multiply(STEEL_KG_PER_MM3);
  }

  private static BigDecimal side(String text) {
    String[] part = text.trim().split("/");
    BigDecimal top = new BigDecimal(part[0]);
    return part.length == 1 ? top : Cents.over(top, new BigDecimal(part[1]));
  }
}
