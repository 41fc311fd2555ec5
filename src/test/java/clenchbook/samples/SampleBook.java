package clenchbook.samples;

import clenchbook.samples.Stable.Horse;
import clenchbook.samples.Stable.Owner;
import clenchbook.samples.Stable.Share;
import clenchbook.samples.Stable.Yard;
import clenchbook.samples.Storeroom.Buying;
import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Puts one sample workbook together, sheet by sheet, in the order a farrier keeps them. */
final class SampleBook {
  /** The tables of one scenario, as text. */
  record Tables(
      Scenario scenario,
      String work,
      String materials,
      Map<String, Buying> buying,
      Map<String, String> bars,
      Map<String, Double> barsPerShoe,
      List<String> expenses,
      String settings,
      String tax,
      String assets,
      String headings) {}

  static final Tables THORNFIELD =
      new Tables(
          ThornfieldMetric.SCENARIO,
          ThornfieldMetric.WORK,
          ThornfieldMetric.MATERIALS,
          ThornfieldMetric.BUYING,
          ThornfieldMetric.BARS,
          ThornfieldMetric.BARS_PER_SHOE,
          ThornfieldMetric.EXPENSES,
          ThornfieldMetric.SETTINGS,
          ThornfieldMetric.TAX,
          ThornfieldMetric.ASSETS,
          ThornfieldMetric.HEADINGS);

  static final Tables CEDAR_HOLLOW =
      new Tables(
          CedarHollowImperial.SCENARIO,
          CedarHollowImperial.WORK,
          CedarHollowImperial.MATERIALS,
          CedarHollowImperial.BUYING,
          CedarHollowImperial.BARS,
          CedarHollowImperial.BARS_PER_SHOE,
          CedarHollowImperial.EXPENSES,
          CedarHollowImperial.SETTINGS,
          CedarHollowImperial.TAX,
          CedarHollowImperial.ASSETS,
          CedarHollowImperial.HEADINGS);

  private static final String VISITS =
      "Date|Place|Owner|Horse|Work|Shoe|Size|Shoes|New shoes|Shaping|Nail|Nails|Extras|Trim"
          + " min|Shape min|Nail min|Grind min|Forge min|Total min|Helper"
          + " min|Charge|Paid|How|Reason|Lost|Vet|Remarks";

  private final Tables tables;
  private final Scenario scenario;
  private final Random random;
  private final Stable stable;
  private final boolean metric;
  private final Purse purse;

  private SampleBook(Tables tables) {
    this.tables = tables;
    this.scenario = tables.scenario();
    this.random = new Random(scenario.seed());
    this.stable = Population.draw(scenario, random);
    this.metric = scenario.included();
    this.purse = new Purse(scenario, random);
  }

  static List<Tab> tabs(Tables tables) {
    return new SampleBook(tables).made();
  }

  private List<Tab> made() {
    Tab work =
        filled(
            "Work",
            "Work|Kind|Price|Tax|Shoe|Shoes|Shaping|Nail|Nails per shoe|Trim min|Shape min|Nail"
                + " min|Grind min|Forge min|Taxed part|Compare as|From",
            tables.work());
    Tab materials =
        filled(
            "Materials",
            "Item|Kind|Size|Unit|Unit cost|Per pack|Pack cost|Price|Section|"
                + (metric
                    ? "Length mm|Cut mm|Bar|Bar length mm"
                    : "Length in|Cut mm|Bar|Bar length mm")
                + "|Making min|Making forge min|Reorder at|Supplier|From",
            tables.materials());
    PriceList materialPrices = new PriceList(materials, "Item");
    Diary diary = new Diary(scenario, stable, new PriceList(work, "Work"), materialPrices, random);
    diary.keep();
    purse.settle(diary.visits);
    purse.oddEntries(stable.owners);
    Storeroom store =
        new Storeroom(
            scenario, materialPrices, tables.buying(), tables.bars(), tables.barsPerShoe(), random);
    store.keep(diary.visits);
    store.expenses(tables.expenses());
    sundries(store);
    store.purchases.rows.get(160).computeIfPresent("Item", (k, v) -> v + "s'");
    Tab trips =
        new Roads(
                random,
                metric ? 48210 : 61877,
                metric ? "Van" : "Truck",
                metric ? "Marrowby Farriers' Supply" : "Three Ridge Horseshoe Co-op")
            .drive(scenario, diary.visits);
    if (metric) {
      trips.totals = "Distance";
    } else {
      rename(trips, "Vehicle", "Truck");
      purse.payments.title = "Money in";
    }
    List<Tab> tabs =
        new ArrayList<>(
            List.of(
                visits(diary.visits),
                work,
                materials,
                owners(),
                horses(),
                places(),
                trips,
                store.purchases,
                purse.payments));
    tabs.add(
        filled("Assets", "Asset|Bought|Cost|Class|Business use %|Sold|Proceeds", tables.assets()));
    tabs.add(store.counts);
    tabs.add(filled("Tax", "Code|Name|Rate %|Kind|From", tables.tax()));
    tabs.add(strain());
    tabs.add(filled("Settings", "Setting|Value", tables.settings()));
    tabs.add(filled("Headings", "Sheet|Mine|Means", tables.headings()));
    return tabs;
  }

  private Tab visits(List<Visit> visits) {
    Tab tab = new Tab("Visits", VISITS);
    tab.rows.addAll(Mistakes.log(visits));
    for (Map<String, Object> row : tab.rows) {
      rename(row, "Notes", "Remarks");
      if (row.get("Size") instanceof String size
          && size.matches("[0-5]")
          && random.nextInt(3) > 0) {
        row.put("Size", Integer.valueOf(size));
      }
    }
    new Mistakes(tab.rows)
        .plant(DateTimeFormatter.ofPattern(metric ? "dd/MM/uuuu" : "M/d/uuuu"), !metric);
    return tab;
  }

  private static void rename(Tab tab, String heading, String mine) {
    for (Map<String, Object> row : tab.rows) {
      rename(row, heading, mine);
    }
    List<String> headings = new ArrayList<>(tab.headings);
    headings.set(headings.indexOf(heading), mine);
    tab.headings.clear();
    tab.headings.addAll(headings);
  }

  private static void rename(Map<String, Object> row, String heading, String mine) {
    Object value = row.remove(heading);
    if (value != null) {
      row.put(mine, value);
    }
  }

  private Tab owners() {
    Tab tab =
        new Tab(
            metric ? "Clients" : "Owners",
            "Owner|Invoice name|Address|Email|Terms days|Tax exempt|Tax"
                + " number|Country|Language|Discount %|Opening balance");
    for (Owner owner : stable.owners) {
      boolean business = owner.habit == Stable.Habit.COMMERCIAL;
      String slug = Population.slug(owner.name);
      Object email =
          slug.length() < 4
              ? "client" + tab.rows.size() + "@mail.example"
              : random.nextInt(12) == 0 ? "" : slug + "@mail.example";
      String number = business && metric ? "GB 999 9999 73" : owner.exempt ? "EX-00417" : "";
      tab.add(
          owner.name,
          business ? owner.address.split("\\\\n")[0] + ", Accounts" : "",
          owner.address.replace("\\n", "\n"),
          email,
          owner.terms == 0 ? null : owner.terms,
          owner.exempt ? "yes" : random.nextInt(8) == 0 ? "no" : "",
          number,
          metric ? "GB" : "US",
          random.nextInt(4) == 0 ? "en" : "",
          owner.discount == 0 ? null : BigDecimal.valueOf(owner.discount),
          purse.opening.get(owner.name));
    }
    tab.rows.sort(Comparator.comparing((Map<String, Object> row) -> row.get("Owner").toString()));
    return tab;
  }

  private Tab horses() {
    Tab tab =
        new Tab(
            "Horses",
            "Horse|Owner|Share %|Bill to|Place|"
                + (metric ? "Every" : "Interval weeks")
                + "|From|Until|Notes");
    for (Horse horse : stable.horses) {
      List<Share> shares =
          horse.shares.isEmpty() ? List.of(new Share(horse.owner, 0)) : horse.shares;
      for (Share share : shares) {
        tab.add(
            horse.name,
            share.owner().name,
            share.percent() == 0 ? null : share.percent(),
            horse.billTo == null ? "" : horse.billTo.name,
            horse.yard.name,
            horse.interval,
            horse.arrives.getYear() > 2000 ? horse.arrives : null,
            horse.leaves.getYear() < 3000 ? horse.leaves : null,
            horse.heavy
                ? "heavy, needs the stocks"
                : horse.billTo != null ? "on loan, rider pays" : "");
      }
    }
    if (!metric) {
      tab.rows.stream()
          .filter(row -> row.containsKey("Share %"))
          .findFirst()
          .ifPresent(row -> row.put("Share %", 45));
    }
    return tab;
  }

  private Tab places() {
    Tab tab = new Tab("Places", "Place|Address|Distance|Drive min");
    for (Yard yard : stable.yards) {
      tab.add(
          yard.name,
          yard.address.replace("\\n", "\n"),
          yard.distance,
          yard.horses == 2 && yard.distance > 20 ? null : yard.minutes);
    }
    return tab;
  }

  private void sundries(Storeroom store) {
    Buying how = tables.buying().get("Rasp");
    for (int month = 0; month < 14; month += 2) {
      store.entry(
          scenario.start().plusMonths(month).plusDays(9),
          how.supplier(),
          "Rasp",
          "",
          4,
          "",
          "",
          metric ? 78 : 96);
    }
    store.counts.add(scenario.end().minusDays(31), "Rasp", "", 5);
    store.purchases.rows.sort(Comparator.comparing(row -> (java.time.LocalDate) row.get("Date")));
  }

  private Tab strain() {
    return filled(
        "Strain",
        "Task|Effort CR10|Efforts per min|Seconds per effort|Wrist deg|Wrist direction|Vibration"
            + " m/s2|Noise dBA|Trunk deg|Longest hold s|Blows per shoe",
        """
        trim|4|14|2|25|flexion||76|70|75|
        shape hot|3|28|0.5|20|extension||94|15||26
        shape cold|4|34|0.5|20|extension||97|15||44
        nail|3.5|30|0.6|30|flexion||88|65|60|38
        make|3.5|32|0.5|20|extension||95|15||120
        grind|2.5|6|8|15|extension|4.2|96|30|20|
        drive|1|4|2|10|extension||70|5||
        """);
  }

  private static Tab filled(String name, String headings, String lines) {
    Tab tab = new Tab(name, headings);
    tab.lines(lines);
    return tab;
  }

  static Map<String, Tables> all() {
    Map<String, Tables> all = new LinkedHashMap<>();
    all.put(THORNFIELD.scenario().fileName(), THORNFIELD);
    all.put(CEDAR_HOLLOW.scenario().fileName(), CEDAR_HOLLOW);
    return all;
  }
}
