package clenchbook.samples;

import clenchbook.samples.Scenario.Kind;
import clenchbook.samples.Scenario.Shoe;
import clenchbook.samples.Stable.Habit;
import clenchbook.samples.Stable.Horse;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Works one horse: what was done, how long it took, what it used, what was paid. */
final class Job {
  private static final Set<Kind> FOUR =
      Set.of(Kind.FULL, Kind.RESET, Kind.HANDMADE, Kind.ALUMINIUM);
  private static final String[] VETS = {"L. Okafor", "M. Brandvold", "S. Quill"};
  private final Scenario scenario;
  private final PriceList work;
  private final PriceList materials;
  private final Random random;

  Job(Scenario scenario, PriceList work, PriceList materials, Random random) {
    this.scenario = scenario;
    this.work = work;
    this.materials = materials;
    this.random = random;
  }

  List<Visit> routine(LocalDate day, Horse horse, boolean helped, boolean hotStop) {
    List<Visit> rows = new ArrayList<>();
    Visit visit = new Visit(day, horse.yard, horse, kind(horse));
    boolean lame = visit.kind != Kind.TRIM && random.nextInt(50) == 0;
    head(visit, lame);
    if (visit.kind != Kind.TRIM) {
      shoe(visit, hotStop);
    }
    extras(visit);
    minutes(visit, lame, helped);
    money(visit);
    rows.add(visit);
    if (random.nextInt(50) == 0) {
      rows.add(repair(day, horse));
    }
    horse.everSeen = true;
    return rows;
  }

  private Kind kind(Horse horse) {
    boolean reset = horse.resets && horse.shod && !horse.lastWasReset;
    horse.lastWasReset = reset;
    return reset ? Kind.RESET : horse.usual;
  }

  private void head(Visit visit, boolean lame) {
    Horse horse = visit.horse;
    common(visit);
    boolean first = !horse.everSeen && horse.arrives.getYear() > 2000;
    if (lame) {
      visit.cells.put("Reason", "lameness");
      visit.cells.put(
          "Vet",
          VETS[random.nextInt(VETS.length)]
              + ": "
              + (random.nextBoolean()
                  ? "roll the toes, see in five weeks"
                  : "bruised sole, pads a cycle"));
    } else if (first) {
      visit.cells.put("Reason", "new horse");
    } else if (random.nextInt(6) == 0) {
      visit.cells.put("Reason", "routine");
    }
    if (horse.lost > 0) {
      visit.cells.put("Lost", horse.lost);
      horse.lost = 0;
    }
    String note = note();
    if (!note.isEmpty()) {
      visit.cells.put("Notes", note);
    }
  }

  private void common(Visit visit) {
    Horse horse = visit.horse;
    visit.cells.put("Date", visit.date);
    if (random.nextInt(100) < 88) {
      visit.cells.put("Place", horse.yard.name);
    }
    if (horse.shares.isEmpty() && (horse.namesake || random.nextInt(100) < 92)) {
      visit.cells.put("Owner", horse.owner.name);
    }
    visit.cells.put("Horse", horse.name);
    visit.cells.put("Work", scenario.workNames().get(visit.kind));
  }

  private void shoe(Visit visit, boolean hotStop) {
    Horse horse = visit.horse;
    int shoes = FOUR.contains(visit.kind) ? 4 : 2;
    boolean aluminium = visit.kind == Kind.ALUMINIUM;
    boolean hot = !aluminium && (horse.alwaysHot || !horse.alwaysCold && hotStop);
    Shoe shoe =
        aluminium
            ? Shoe.ALUMINIUM
            : visit.kind == Kind.HANDMADE
                ? Shoe.HANDMADE
                : visit.kind == Kind.BAR ? Shoe.BAR : horse.heavy ? Shoe.HEAVY : Shoe.KEG;
    String name = scenario.shoes().get(shoe);
    boolean mixed = visit.kind == Kind.HANDMADE && horse.front.equals("2");
    visit.cells.put(
        "Shoe",
        mixed
            ? name + ": 2; " + scenario.shoes().get(Shoe.KEG) + ": 2"
            : random.nextInt(8) == 0
                    && work.text(scenario.workNames().get(visit.kind), "Shoe").equals(name)
                ? ""
                : name);
    boolean parts = shoes == 4 && !horse.front.equals(horse.hind);
    visit.cells.put("Size", parts ? horse.front + ": 2; " + horse.hind + ": 2" : horse.front);
    visit.cells.put("Shoes", shoes);
    int fresh =
        visit.kind == Kind.RESET
            ? 0
            : visit.kind == Kind.FULL && random.nextInt(25) == 0 ? 2 : shoes;
    if (fresh < shoes || random.nextInt(3) == 0) {
      visit.cells.put("New shoes", fresh);
    }
    visit.cells.put("Shaping", hot ? "hot" : "cold");
    horse.lastHot = hot;
    horse.shod = true;
    take(visit, name, mixed, parts, fresh);
    nails(visit, shoes);
    lose(horse, shoes, hot, shoe);
  }

  private void take(Visit visit, String name, boolean mixed, boolean parts, int fresh) {
    Horse horse = visit.horse;
    String hindName = mixed ? scenario.shoes().get(Shoe.KEG) : name;
    int fronts = parts || mixed ? Math.min(2, fresh) : fresh;
    visit.use(name, horse.front, fronts);
    if (fresh > fronts) {
      visit.use(hindName, parts ? horse.hind : horse.front, fresh - fronts);
    }
  }

  private void nails(Visit visit, int shoes) {
    Horse horse = visit.horse;
    int nails = shoes * horse.nailsPerShoe - random.nextInt(2);
    visit.cells.put("Nails", nails);
    String usual = String.valueOf(work.text(scenario.workNames().get(visit.kind), "Nail"));
    String nail =
        visit.kind == Kind.ALUMINIUM || horse.heavy
            ? usual
            : horse.nailsPerShoe == 6 ? "Nail 4 slim" : usual;
    nail = horse.heavy ? "Nail 7 heavy" : nail;
    if (!nail.equals(usual) || random.nextInt(4) == 0) {
      visit.cells.put("Nail", nail);
    }
    visit.use(nail, "", nails);
  }

  private void lose(Horse horse, int shoes, boolean hot, Shoe shoe) {
    double chance = hot ? 0.012 : 0.024;
    horse.lost = 0;
    for (int i = 0; i < shoes; i++) {
      if (random.nextDouble() < (shoe == Shoe.HANDMADE ? 0.008 : chance)) {
        horse.lost++;
      }
    }
  }

  private void extras(Visit visit) {
    List<String> extras = new ArrayList<>();
    if (visit.kind == Kind.BAR) {
      extras.add("Leather pad 2");
    } else if (FOUR.contains(visit.kind) && random.nextInt(24) == 0) {
      extras.add("leather pads 2");
    }
    int month = visit.date.getMonthValue();
    if (visit.horse.studs && (month > 3 && month < 10 || random.nextInt(3) == 0)) {
      extras.add(random.nextInt(3) == 0 ? "studs 8" : "studs 4");
    }
    if (!extras.isEmpty() && extras.get(0).startsWith("Leather")) {
      extras.add("Pad packing 2");
    }
    if (!extras.isEmpty()) {
      visit.cells.put("Extras", String.join("; ", extras));
    }
    for (String extra : extras) {
      int count = extra.charAt(extra.length() - 1) - '0';
      String item =
          extra.startsWith("Pad")
              ? "Pad packing"
              : extra.startsWith("stud") ? "Stud" : "Leather pad";
      visit.use(item, "", count);
    }
  }

  private void minutes(Visit visit, boolean lame, boolean helped) {
    Horse horse = visit.horse;
    int shoes = visit.cells.get("Shoes") instanceof Integer n ? n : 0;
    boolean hot = "hot".equals(visit.cells.get("Shaping"));
    double slow = lame ? 1.55 : helped ? 0.84 : 1;
    double trim = (shoes == 0 ? 21 : 19) + horse.trimEffect + random.nextGaussian() * 2.2;
    double perShoe =
        shapePerShoe(visit.kind, hot) + horse.shapeEffect + random.nextGaussian() * 0.7;
    double nail = shoes * (4.9 + random.nextGaussian() * 0.4);
    int trimMinutes = whole(trim * slow, 15);
    int shapeMinutes = whole(perShoe * shoes * slow, 0);
    int nailMinutes = whole(nail * slow, 0);
    int grind =
        Set.of(Kind.HANDMADE, Kind.BAR, Kind.ALUMINIUM).contains(visit.kind)
            ? 3 + random.nextInt(5)
            : 0;
    int total = trimMinutes + shapeMinutes + nailMinutes + grind + 1 + random.nextInt(4);
    write(visit, trimMinutes, shapeMinutes, nailMinutes, grind, total);
    if (hot && random.nextInt(10) < 6) {
      visit.cells.put("Forge min", whole(shoes * 5.2 + random.nextGaussian() * 2, 5));
    }
    if (helped && (shoes > 0 || random.nextInt(3) == 0)) {
      visit.cells.put("Helper min", whole(total * 0.55, 5));
    }
  }

  private static double shapePerShoe(Kind kind, boolean hot) {
    return switch (kind) {
      case RESET -> hot ? 3.4 : 4.6;
      case HANDMADE -> hot ? 5.4 : 7.8;
      case BAR -> hot ? 7.2 : 9.8;
      case ALUMINIUM -> 6.8;
      default -> hot ? 5.7 : 7.6;
    };
  }

  private void write(Visit visit, int trim, int shape, int nail, int grind, int total) {
    int draw = random.nextInt(100);
    if (draw < 72) {
      visit.cells.put("Trim min", draw == 7 ? "0:" + trim : trim);
      put(visit.cells, "Shape min", shape);
      put(visit.cells, "Nail min", nail);
      put(visit.cells, "Grind min", grind);
      if (draw < 30) {
        visit.cells.put("Total min", total);
      }
    } else if (draw < 80) {
      put(visit.cells, "Shape min", shape);
    } else if (draw < 92) {
      visit.cells.put("Total min", draw < 84 ? new Tab.Clock(total) : total);
    }
  }

  private static void put(Map<String, Object> cells, String column, int minutes) {
    if (minutes > 0) {
      cells.put(column, minutes);
    }
  }

  private void money(Visit visit) {
    double list = price(visit) * (1 - visit.horse.payer().discount / 100);
    double extras = extrasPrice(visit) * (1 - visit.horse.payer().discount / 100);
    int draw = random.nextInt(400);
    if (visit.horse.heavy && visit.kind != Kind.TRIM) {
      list = Math.round(price(visit) * 1.12);
      extras = 0;
      visit.cells.put("Charge", list);
    } else if (draw < 6) {
      list = Math.max(0, Math.round(price(visit) * 0.9));
      extras = 0;
      visit.cells.put("Charge", list);
      visit.cells.putIfAbsent("Notes", "bill as agreed on the phone");
    } else if (draw > 5 && draw < 9) {
      list = 0;
      extras = 0;
      visit.cells.put("Charge", 0);
      visit.cells.put("Notes", "no charge, clench risen after last visit");
    }
    charge(visit, list, extras);
  }

  private void charge(Visit visit, double net, double extras) {
    double taxed = 0;
    if (!scenario.included() && !visit.horse.payer().exempt) {
      String name = scenario.workNames().get(visit.kind);
      taxed =
          net * work.at(name, "Taxed part", visit.date) / 100
              + (work.text(name, "Tax").equals("") ? 0 : extras);
    }
    boolean lessTax = scenario.included() && visit.horse.payer().exempt;
    double gross = (net + extras) / (lessTax ? 1 + scenario.taxRate() / 100 : 1);
    visit.gross = cents(gross + cents(taxed * scenario.taxRate() / 100));
    boolean atTruck =
        visit.horse.payer().habit == Habit.TRUCK
            && visit.horse.shares.isEmpty()
            && visit.horse.billTo == null;
    if (atTruck && visit.gross > 0 && random.nextInt(100) < 94) {
      visit.paid = visit.gross;
      visit.cells.put("Paid", visit.gross);
      int how = random.nextInt(10);
      visit.cells.put(
          "How",
          how < 4 ? "cash" : how < 8 ? "card" : scenario.included() ? "bank transfer" : "check");
    }
  }

  private double price(Visit visit) {
    return work.at(scenario.workNames().get(visit.kind), "Price", visit.date);
  }

  private double extrasPrice(Visit visit) {
    double sum = 0;
    for (Map.Entry<String, Double> use : visit.used.entrySet()) {
      String item = use.getKey().substring(0, use.getKey().indexOf('|'));
      if (Set.of("Leather pad", "Pad packing", "Stud", "Hoof adhesive").contains(item)) {
        sum += use.getValue() * materials.at(item, "Price", visit.date);
      }
    }
    return sum;
  }

  Visit lostShoe(LocalDate day, Horse horse) {
    Visit visit = new Visit(day, horse.yard, horse, Kind.LOST);
    common(visit);
    visit.cells.put("Reason", "lost shoe");
    visit.cells.put("Lost", horse.lost);
    String shoe =
        scenario
            .shoes()
            .get(
                horse.heavy
                    ? Shoe.HEAVY
                    : horse.usual == Kind.ALUMINIUM ? Shoe.ALUMINIUM : Shoe.KEG);
    visit.cells.put("Shoe", shoe);
    visit.cells.put("Size", horse.front);
    visit.cells.put("Shoes", horse.lost);
    int fresh = random.nextInt(3) == 0 ? 0 : horse.lost;
    visit.cells.put("New shoes", fresh);
    visit.cells.put("Shaping", horse.lastHot && random.nextBoolean() ? "hot" : "cold");
    visit.use(shoe, horse.front, fresh);
    nails(visit, horse.lost);
    visit.cells.put("Total min", 15 + random.nextInt(14));
    horse.lost = 0;
    money(visit);
    return visit;
  }

  private Visit repair(LocalDate day, Horse horse) {
    Visit visit = new Visit(day, horse.yard, horse, Kind.REPAIR);
    common(visit);
    visit.cells.put("Extras", "Hoof adhesive 1");
    visit.use("Hoof adhesive", "", 1);
    visit.cells.put("Trim min", 8 + random.nextInt(8));
    visit.cells.put("Notes", "crack in the near fore filled");
    money(visit);
    return visit;
  }

  Visit fee(LocalDate day, Horse horse, Kind kind, String note) {
    Visit visit = new Visit(day, horse.yard, horse, kind);
    common(visit);
    visit.cells.put("Owner", horse.owner.name);
    if (kind == Kind.CALLOUT || random.nextBoolean()) {
      visit.cells.remove("Horse");
      visit.cells.put("Place", horse.yard.name);
    }
    if (!note.isEmpty()) {
      visit.cells.put("Notes", note);
    }
    charge(visit, price(visit) * (1 - horse.owner.discount / 100), 0);
    return visit;
  }

  Visit cancelled(LocalDate day, Horse horse, String note) {
    Visit visit = new Visit(day, horse.yard, horse, horse.usual);
    visit.cancelled = true;
    common(visit);
    visit.cells.put("Reason", "cancelled");
    visit.cells.put("Notes", note);
    return visit;
  }

  private String note() {
    String[] notes = {
      "good to do", "fidgets behind", "tied up short, quiet", "off hind flat, watch",
          "white line clean",
      "thrush near fore, told owner", "seedy toe pared out", "needs two to hold", "dry hard feet",
          "keep toes short"
    };
    return random.nextInt(100) < 17 ? notes[random.nextInt(notes.length)] : "";
  }

  private int whole(double minutes, int least) {
    return (int) Math.max(least, Math.round(minutes));
  }

  static double cents(double amount) {
    return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP).doubleValue();
  }
}
