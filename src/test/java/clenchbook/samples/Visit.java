package clenchbook.samples;

import clenchbook.samples.Scenario.Kind;
import clenchbook.samples.Stable.Horse;
import clenchbook.samples.Stable.Yard;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/** One row of the log with what the other sheets need to know of it. */
final class Visit {
  final LocalDate date;
  final Yard yard;
  final Horse horse;
  final Kind kind;
  final Map<String, Object> cells = new LinkedHashMap<>();

  /** What was used up: item and size, with the quantity in pieces. */
  final Map<String, Double> used = new LinkedHashMap<>();

  /** What the owner is charged, tax included, after discount; as the farrier works it out. */
  double gross;

  double paid;
  boolean cancelled;

  Visit(LocalDate date, Yard yard, Horse horse, Kind kind) {
    this.date = date;
    this.yard = yard;
    this.horse = horse;
    this.kind = kind;
  }

  void use(String item, String size, double quantity) {
    used.merge(item + "|" + size, quantity, Double::sum);
  }
}
