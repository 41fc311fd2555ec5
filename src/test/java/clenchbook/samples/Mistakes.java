package clenchbook.samples;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Plants the honest mistakes of a busy year, each on a row fit for it. */
final class Mistakes {
  private final List<Map<String, Object>> rows;
  private int from;

  Mistakes(List<Map<String, Object>> rows) {
    this.rows = rows;
  }

  /**
   * Plants them.
   *
   * @param textDates how this farrier types a date that the spreadsheet then keeps as text
   * @param held whether some slips are such that their rows cannot be billed
   */
  void plant(DateTimeFormatter textDates, boolean held) {
    int last = rows.size();
    from = 60;
    row(r -> r.get("Total min") instanceof Integer).put("Total min", 6500);
    from = last - 45;
    row(r -> r.containsKey("Nails") && !r.containsKey("Total min")).remove("Nails");
    row(r -> "hot".equals(r.get("Shaping")) && slips(r.get("Horse").toString()))
        .computeIfPresent("Horse", (k, v) -> slip(v.toString()));
    duplicate();
    row(r -> !r.containsKey("Charge") && r.containsKey("Owner") && r.containsKey("Helper min"))
        .put(held ? "Charge" : "Helper min", new Tab.Broken("#REF!"));
    row(r -> r.containsKey("Nails") && r.get("Shoes") instanceof Integer n && n == 4)
        .put("Nails", 64);
    from = last / 2;
    row(r -> String.valueOf(r.get("Shoe")).startsWith("Alumin")).put("Shaping", "hot");
    row(r -> r.get("Date") instanceof LocalDate day && day.getDayOfMonth() > 12)
        .computeIfPresent("Date", (k, day) -> textDates.format((LocalDate) day));
    from = last / 3;
    row(r -> "Trim".equals(r.get("Work")) && r.containsKey("Trim min")).put("Shoes", 2);
    Map<String, Object> trim = row(r -> "Trim".equals(r.get("Work")));
    trim.put("Work", "Trimm");
    row(r -> r.containsKey("Owner") && r.containsKey("Paid"))
        .computeIfPresent("Owner", (k, v) -> v + "e");
    from = last / 4;
    if (held) {
      row(r -> r.containsKey("Horse") && r.containsKey("Paid")).remove("Date");
      row(r -> r.containsKey("Trim min")).put("Date", "next wk");
    } else {
      trim.put("Charge", 36);
    }
  }

  private void duplicate() {
    Map<String, Object> twice = row(r -> r.containsKey("Shoe") && !r.containsKey("Paid"));
    rows.add(rows.indexOf(twice) + 1, new LinkedHashMap<>(twice));
  }

  private Map<String, Object> row(Predicate<Map<String, Object>> fit) {
    for (int i = from; i < rows.size(); i++) {
      if (fit.test(rows.get(i))) {
        from = i + 3;
        return rows.get(i);
      }
    }
    throw new IllegalStateException("no row fit for a mistake after row " + from);
  }

  private static boolean slips(String name) {
    return name.length() > 4 && name.charAt(2) != name.charAt(3);
  }

  /** Two letters changed places, as fingers do it. */
  private static String slip(String name) {
    return name.substring(0, 2) + name.charAt(3) + name.charAt(2) + name.substring(4);
  }

  /** Gives the rows of visits as the log shows them, in the order worked. */
  static List<Map<String, Object>> log(List<Visit> visits) {
    List<Map<String, Object>> rows = new ArrayList<>();
    visits.forEach(visit -> rows.add(visit.cells));
    return rows;
  }
}
