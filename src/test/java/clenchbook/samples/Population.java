package clenchbook.samples;

import clenchbook.samples.Scenario.Kind;
import clenchbook.samples.Stable.Habit;
import clenchbook.samples.Stable.Horse;
import clenchbook.samples.Stable.Owner;
import clenchbook.samples.Stable.Share;
import clenchbook.samples.Stable.Yard;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/** Draws the horses, owners and places of a scenario. */
final class Population {
  private static final String[] SIZES = {"00", "0", "1", "2"};
  private final Scenario scenario;
  private final Random random;
  private final Stable stable = new Stable();
  private final List<String> names = new ArrayList<>();
  private final Set<String> used = new HashSet<>();
  private int horsesNamed;

  private Population(Scenario scenario, Random random) {
    this.scenario = scenario;
    this.random = random;
  }

  static Stable draw(Scenario scenario, Random random) {
    Population population = new Population(scenario, random);
    population.nameOwners();
    scenario.yards().forEach(population::settle);
    population.findNamesakes();
    population.shareAndSell();
    return population.stable;
  }

  private void nameOwners() {
    names.addAll(scenario.specialOwners());
    while (names.size() < 140) {
      String name = pick(scenario.firstNames()) + " " + pick(scenario.lastNames());
      if (used.add(name)) {
        names.add(name);
      }
    }
    java.util.Collections.shuffle(names.subList(scenario.specialOwners().size(), 140), random);
  }

  private void settle(String line) {
    String[] part = line.split(";");
    Yard yard = new Yard();
    yard.name = part[0];
    yard.address = part[1];
    yard.x = Double.parseDouble(part[2]);
    yard.y = Double.parseDouble(part[3]);
    yard.horses = Integer.parseInt(part[4]);
    yard.kind = part[5];
    yard.distance = (int) Math.max(1, Math.round(Math.hypot(yard.x, yard.y) * 1.25));
    yard.minutes = (int) Math.round(yard.distance * 1.75 + 3);
    stable.yards.add(yard);
    Owner one = null;
    for (int i = 0; i < yard.horses; i++) {
      boolean sameOwner = one != null && (!yard.kind.equals("livery") || random.nextInt(100) < 28);
      one = sameOwner ? one : owner(yard);
      stable.horses.add(horse(yard, one));
    }
  }

  private Owner owner(Yard yard) {
    Owner owner = new Owner();
    boolean business = Set.of("school", "stud", "charity", "estate").contains(yard.kind);
    owner.name = business ? yard.name : names.remove(0);
    owner.habit =
        business ? Habit.COMMERCIAL : random.nextInt(100) < 90 ? Habit.TRUCK : Habit.INVOICE;
    owner.discount = yard.kind.equals("school") ? 7.5 : yard.kind.equals("stud") ? 5 : 0;
    owner.exempt = yard.kind.equals("charity");
    owner.terms = business ? 30 : 0;
    owner.address =
        business || random.nextInt(3) > 0
            ? yard.address
            : yard.address.replaceFirst("^[^\\\\]*", (1 + random.nextInt(48)) + " Chapel Street");
    stable.owners.add(owner);
    return owner;
  }

  private Horse horse(Yard yard, Owner owner) {
    Horse horse = new Horse();
    List<String> pool = scenario.horseNames();
    horse.name = pool.get(horsesNamed % pool.size());
    horsesNamed++;
    horse.owner = owner;
    horse.yard = yard;
    horse.usual = usual(yard);
    size(horse);
    method(horse);
    horse.interval = interval(horse.usual);
    horse.shapeEffect = random.nextGaussian() * 0.8;
    horse.trimEffect = random.nextGaussian() * 1.6;
    horse.nailsPerShoe =
        horse.front.equals(scenario.smallSize()) || horse.front.equals("00")
            ? 6
            : random.nextInt(3) == 0 ? 6 : random.nextInt(5) == 0 ? 8 : 7;
    horse.resets = horse.usual == Kind.FULL && random.nextInt(100) < 38;
    horse.studs =
        Set.of(Kind.FULL, Kind.HANDMADE).contains(horse.usual) && random.nextInt(100) < 22;
    horse.due = scenario.start().plusDays(random.nextInt(horse.interval * 7));
    if (random.nextInt(100) < 7) {
      horse.arrives = scenario.start().plusDays(60 + random.nextInt(330));
      horse.due = horse.arrives;
    }
    return horse;
  }

  private Kind usual(Yard yard) {
    int draw = random.nextInt(100);
    if (yard.kind.equals("stud") || yard.kind.equals("charity")) {
      return draw < 70 ? Kind.TRIM : draw < 85 ? Kind.FRONTS : Kind.FULL;
    }
    if (draw < 27) {
      return Kind.TRIM;
    }
    if (draw < 47) {
      return Kind.FRONTS;
    }
    return draw < 85
        ? Kind.FULL
        : draw < 94 ? Kind.HANDMADE : draw < 97 ? Kind.ALUMINIUM : Kind.BAR;
  }

  private void size(Horse horse) {
    int draw = random.nextInt(100);
    int index = draw < 15 ? 0 : draw < 40 ? 1 : draw < 70 ? 2 : draw < 88 ? 3 : draw < 95 ? 4 : 5;
    boolean keg = Set.of(Kind.FULL, Kind.FRONTS, Kind.TRIM).contains(horse.usual);
    if (index == 4) {
      horse.front = keg ? scenario.smallSize() : "0";
      horse.hind = horse.front;
    } else if (index == 5) {
      horse.heavy = keg;
      horse.front = keg ? "5" : "2";
      horse.hind = horse.front;
    } else {
      horse.front = SIZES[index];
      horse.hind = index > 0 && random.nextInt(100) < 40 ? SIZES[index - 1] : SIZES[index];
    }
  }

  private void method(Horse horse) {
    double draw = random.nextDouble();
    double hot = scenario.hotShare();
    horse.alwaysHot = draw < hot || horse.usual == Kind.HANDMADE && draw < 0.8;
    horse.alwaysCold = !horse.alwaysHot && draw < hot + (1 - hot) * 0.5;
  }

  private int interval(Kind kind) {
    int draw = random.nextInt(100);
    if (kind == Kind.TRIM) {
      return draw < 15 ? 6 : draw < 40 ? 7 : draw < 80 ? 8 : 10;
    }
    return draw < 14 ? 5 : draw < 62 ? 6 : 7;
  }

  private void shareAndSell() {
    List<Horse> private1 =
        stable.horses.stream()
            .filter(h -> h.yard.kind.equals("livery") && h.arrives.getYear() < 2000 && !h.namesake)
            .toList();
    Horse halves = private1.get(3);
    halves.shares.add(new Share(halves.owner, 50));
    halves.shares.add(new Share(private1.get(9).owner, 50));
    Horse thirds = private1.get(14);
    thirds.shares.add(new Share(thirds.owner, 40));
    thirds.shares.add(new Share(private1.get(20).owner, 35));
    thirds.shares.add(new Share(private1.get(26).owner, 25));
    sell(private1.get(30), private1.get(17).owner);
    sell(private1.get(34), private1.get(5).owner);
    private1.get(38).leaves = scenario.start().plusDays(300);
    Horse leased = private1.get(24);
    leased.billTo =
        stable.owners.stream()
            .filter(o -> o.habit == Habit.COMMERCIAL && o.discount > 0)
            .findFirst()
            .orElseThrow();
    Horse daughters = private1.get(28);
    daughters.billTo = private1.get(1).owner;
  }

  private void findNamesakes() {
    for (Horse horse : stable.horses) {
      horse.namesake = stable.horses.stream().filter(h -> h.name.equals(horse.name)).count() > 1;
    }
  }

  private void sell(Horse horse, Owner buyer) {
    horse.leaves = scenario.start().plusDays(200 + random.nextInt(60));
    Horse again = horse(horse.yard, buyer);
    again.name = horse.name;
    again.usual = horse.usual;
    again.front = horse.front;
    again.hind = horse.hind;
    again.heavy = horse.heavy;
    again.arrives = horse.leaves.plusDays(1);
    again.due = again.arrives.plusDays(10);
    again.everSeen = true;
    again.namesake = true;
    horse.namesake = true;
    stable.horses.add(again);
  }

  private String pick(List<String> list) {
    return list.get(random.nextInt(list.size()));
  }

  static String slug(String text) {
    return java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFD)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z ]", "")
        .trim()
        .replace(' ', '.');
  }
}
