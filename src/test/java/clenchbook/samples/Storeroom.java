package clenchbook.samples;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Buys what the visits use up, a little ahead of need, and counts the shelves each quarter. */
final class Storeroom {
  /** How an item is bought: its unit, pieces in the unit, and the lot it is ordered in. */
  record Buying(String unit, int pieces, int lot, String supplier) {}

  final Tab purchases =
      new Tab(
          "Purchases",
          "Date|Supplier|Item|Size|Quantity|Unit|Category|Net|Tax|Gross|Paid on|Receipt");
  final Tab counts = new Tab("Counts", "Date|Item|Size|Quantity");
  private final Scenario scenario;
  private final PriceList materials;
  private final Map<String, Buying> buying;
  private final Map<String, String> bars;
  private final Map<String, Double> barsPerShoe;
  private final Random random;
  private int receipt = 1001;

  Storeroom(
      Scenario scenario,
      PriceList materials,
      Map<String, Buying> buying,
      Map<String, String> bars,
      Map<String, Double> barsPerShoe,
      Random random) {
    this.scenario = scenario;
    this.materials = materials;
    this.buying = buying;
    this.bars = bars;
    this.barsPerShoe = barsPerShoe;
    this.random = random;
  }

  void keep(List<Visit> visits) {
    Map<String, TreeMap<LocalDate, Double>> uses = uses(visits);
    uses.forEach(this::keepOne);
    purchases.rows.sort(Comparator.comparing(row -> (LocalDate) row.get("Date")));
    counts.rows.sort(Comparator.comparing(row -> (LocalDate) row.get("Date")));
  }

  private Map<String, TreeMap<LocalDate, Double>> uses(List<Visit> visits) {
    Map<String, TreeMap<LocalDate, Double>> uses = new TreeMap<>();
    for (Visit visit : visits) {
      visit.used.forEach(
          (what, quantity) -> {
            String item = what.substring(0, what.indexOf('|'));
            String bar = bars.get(item);
            String key = bar == null ? what : bar + "|";
            double pieces = bar == null ? quantity : quantity * barsPerShoe.get(item);
            uses.computeIfAbsent(key, k -> new TreeMap<>()).merge(visit.date, pieces, Double::sum);
          });
    }
    return uses;
  }

  private void keepOne(String key, TreeMap<LocalDate, Double> uses) {
    String item = key.substring(0, key.indexOf('|'));
    String size = key.substring(key.indexOf('|') + 1);
    Buying how = buying.get(item);
    double weekly = uses.values().stream().mapToDouble(d -> d).sum() / 60;
    double hand = 0;
    for (LocalDate day = scenario.start(); !day.isAfter(scenario.end()); day = day.plusDays(1)) {
      boolean orderDay =
          day.equals(scenario.start())
              || day.getDayOfWeek() == DayOfWeek.MONDAY && day.getDayOfYear() % 2 == 0;
      double need = uses.subMap(day, day.plusDays(24)).values().stream().mapToDouble(d -> d).sum();
      if (orderDay && hand < need + weekly) {
        double lot = (double) how.lot() * how.pieces();
        double pieces = Math.ceil((need + weekly * 2.5 - hand) / lot) * lot;
        buy(day, item, size, pieces / how.pieces(), how);
        hand += pieces;
      }
      hand = Math.max(0, hand - uses.getOrDefault(day, 0.0));
      boolean quarter = day.plusDays(1).getDayOfMonth() == 1 && day.getMonthValue() % 3 == 0;
      if (quarter) {
        double counted = Math.max(0, Math.floor(hand) - random.nextInt(3) + random.nextInt(2));
        counts.add(day, item, size, counted);
        hand = counted;
      }
    }
  }

  private void buy(LocalDate day, String item, String size, double quantity, Buying how) {
    double list =
        materials.sized(item, size, how.unit().equals("pack") ? "Pack cost" : "Unit cost", day);
    double net = Job.cents(list * quantity * (0.97 + random.nextInt(5) / 100.0));
    boolean plain = how.unit().equals("piece") && random.nextBoolean();
    entry(day, how.supplier(), item, size, quantity, plain ? "" : how.unit(), "", net);
  }

  /** Writes one purchase with its tax; gross is a formula, as a farrier would have it. */
  void entry(
      LocalDate day,
      String supplier,
      String item,
      String size,
      Object quantity,
      String unit,
      String category,
      double net) {
    boolean untaxed =
        List.of(
                "Insurance",
                "Training",
                "Bank charges",
                "Vehicle insurance",
                "Rent",
                "Registration")
            .contains(category);
    double tax = untaxed ? 0 : Job.cents(net * scenario.taxRate() / 100);
    double gross = Job.cents(net + tax);
    LocalDate paid = random.nextInt(3) == 0 ? day.plusDays(random.nextInt(28)) : day;
    Map<String, Object> row =
        purchases.add(
            day,
            supplier,
            item,
            size,
            quantity,
            unit,
            category,
            BigDecimal.valueOf(net),
            BigDecimal.valueOf(tax),
            BigDecimal.valueOf(gross),
            paid.isAfter(scenario.end()) ? null : paid,
            "R-" + receipt++);
    if (random.nextBoolean()) {
      row.put("Gross", new Tab.Formula("H%d+I%d", gross));
    }
  }

  /**
   * Writes the running expenses from lines of {@code category;supplier;net;every days;first
   * offset}.
   */
  void expenses(List<String> lines) {
    for (String line : lines) {
      String[] part = line.split(";");
      LocalDate day = scenario.start().plusDays(Long.parseLong(part[4]));
      while (!day.isAfter(scenario.end())) {
        double net = Double.parseDouble(part[2]);
        boolean varies = net % 1 != 0;
        entry(
            day,
            part[1],
            "",
            "",
            "",
            "",
            part[0],
            varies ? Job.cents(net * (0.85 + random.nextInt(30) / 100.0)) : net);
        int every = Integer.parseInt(part[3]);
        day = every % 30 == 0 ? day.plusMonths(every / 30) : day.plusDays(every);
      }
    }
    purchases.rows.sort(Comparator.comparing(row -> (LocalDate) row.get("Date")));
  }
}
