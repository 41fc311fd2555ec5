package clenchbook.reference;

import static clenchbook.reference.ReferenceLists.same;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Gas, sundries, travel, minutes, labour and overhead of every job of a month. */
final class ReferenceCosts {
  private static final BigDecimal KG_PER_LB = new BigDecimal("0.45359237");
  private static final BigDecimal LB_PER_GALLON = new BigDecimal("4.24");
  private final PlainBook book;
  private final String order;
  private final List<ReferenceVisit> all;
  private final List<ReferenceVisit> month = new ArrayList<>();
  private final BigDecimal overheadAnHour;

  ReferenceCosts(PlainBook book, List<ReferenceVisit> all, YearMonth month) {
    this.book = book;
    this.order = book.setting("Date order");
    this.all = all;
    all.stream()
        .filter(v -> YearMonth.from(v.date).equals(month) && !v.cancelled)
        .forEach(this.month::add);
    this.overheadAnHour = Cents.over(overheads(month), book.setting("Hours per year", "1500"));
  }

  void work() {
    minutes();
    forge();
    sundries();
    Map<LocalDate, List<ReferenceVisit>> days = new TreeMap<>();
    month.forEach(v -> days.computeIfAbsent(v.date, d -> new ArrayList<>()).add(v));
    days.forEach(this::travel);
    month.forEach(this::hours);
  }

  /** Gives the jobs of each stop: one date, one place. */
  private static Map<String, List<ReferenceVisit>> stops(List<ReferenceVisit> visits) {
    Map<String, List<ReferenceVisit>> stops = new LinkedHashMap<>();
    for (ReferenceVisit visit : visits) {
      stops
          .computeIfAbsent(
              visit.date + "|" + visit.place.toLowerCase(Locale.ROOT), k -> new ArrayList<>())
          .add(visit);
    }
    return stops;
  }

  private void minutes() {
    for (ReferenceVisit visit : month) {
      BigDecimal total = visit.row.minutes("Total min");
      BigDecimal parts =
          part(visit, "Trim min")
              .add(part(visit, "Shape min"))
              .add(part(visit, "Nail min"))
              .add(part(visit, "Grind min"));
      visit.jobMinutes = total == null ? parts : total;
      visit.measured = measured(visit);
    }
  }

  private static BigDecimal part(ReferenceVisit visit, String column) {
    BigDecimal own = visit.row.minutes(column);
    BigDecimal standard = visit.work == null ? null : visit.work.minutes(column);
    return own != null ? own : standard != null ? standard : BigDecimal.ZERO;
  }

  private static String measured(ReferenceVisit visit) {
    boolean trim = visit.row.has("Trim min");
    boolean shape = visit.row.has("Shape min");
    boolean nail = visit.row.has("Nail min");
    if (visit.fee || visit.row.has("Total min") || trim && (visit.shoes == 0 || shape && nail)) {
      return "yes";
    }
    return trim || shape || nail || visit.row.has("Grind min") ? "part" : "no";
  }

  /** Gives the gas for some minutes of burning, before rounding. */
  private BigDecimal gas(BigDecimal minutes) {
    BigDecimal kgPerHour =
        book.setting("Gas burn lb per hour").isEmpty()
            ? book.setting("Gas burn kg per hour", "0.8")
            : book.setting("Gas burn lb per hour", "0").multiply(KG_PER_LB);
    BigDecimal perKg = book.setting("Gas cost per kg", "0");
    if (!book.setting("Gas cost per lb").isEmpty()) {
      perKg = Cents.over(book.setting("Gas cost per lb", "0"), KG_PER_LB);
    }
    if (!book.setting("Gas cost per gallon").isEmpty()) {
      perKg =
          Cents.over(
              Cents.over(book.setting("Gas cost per gallon", "0"), LB_PER_GALLON), KG_PER_LB);
    }
    return Cents.over(minutes.multiply(kgPerHour).multiply(perKg), Cents.SIXTY);
  }

  private void forge() {
    for (ReferenceVisit visit : month) {
      BigDecimal standard =
          visit.work == null || !visit.hot()
              ? BigDecimal.ZERO
              : visit.work.figure("Forge min", BigDecimal.ZERO);
      BigDecimal own = visit.row.minutes("Forge min");
      visit.gas = Cents.round(gas((own == null ? standard : own).add(visit.makingForge)));
    }
    for (List<ReferenceVisit> stop : stops(month).values()) {
      List<ReferenceVisit> hot = stop.stream().filter(ReferenceVisit::hot).toList();
      if (!hot.isEmpty()) {
        List<BigDecimal> shares =
            Cents.equally(Cents.round(gas(book.setting("Forge setup gas min", "5"))), hot.size());
        BigDecimal setup = Cents.over(book.setting("Forge setup min", "5"), Cents.of(hot.size()));
        for (int i = 0; i < hot.size(); i++) {
          hot.get(i).gas = hot.get(i).gas.add(shares.get(i));
          hot.get(i).jobMinutes = hot.get(i).jobMinutes.add(setup);
        }
      }
    }
  }

  private void sundries() {
    Set<String> seen = new HashSet<>();
    for (ReferenceVisit visit : month) {
      String owner = oneHorse(visit.horse) ? "" : visit.owner;
      String horse = (visit.date + "|" + visit.horse + "|" + owner).toLowerCase(Locale.ROOT);
      if (!visit.fee && seen.add(horse)) {
        visit.sundries = Cents.round(book.setting("Sundries per horse", "0"));
      }
    }
  }

  /** Shares of one name are one horse, and so are periods that don't overlap: a horse sold on. */
  private boolean oneHorse(String name) {
    List<PlainRow> rows =
        book.sheet("Horses").stream().filter(row -> same(row.text("Horse"), name)).toList();
    if (rows.isEmpty() || rows.stream().anyMatch(row -> row.has("Share %"))) {
      return !rows.isEmpty();
    }
    for (PlainRow one : rows) {
      for (PlainRow other : rows) {
        if (one != other && !before(one, other) && !before(other, one)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean before(PlainRow one, PlainRow other) {
    LocalDate until = one.date("Until", order);
    LocalDate from = other.date("From", order);
    return until != null && from != null && until.isBefore(from);
  }

  private static BigDecimal driven(PlainRow trip) {
    BigDecimal distance = trip.figure("Distance");
    if (distance != null) {
      return distance;
    }
    boolean odometer = trip.has("Odometer start") && trip.has("Odometer end");
    return odometer
        ? trip.figure("Odometer end").subtract(trip.figure("Odometer start"))
        : BigDecimal.ZERO;
  }

  private List<PlainRow> trips(LocalDate day) {
    return book.sheet("Trips").stream()
        .filter(
            trip -> day.equals(trip.date("Date", order)) && !same(trip.text("Purpose"), "private"))
        .toList();
  }

  private void travel(LocalDate day, List<ReferenceVisit> visits) {
    List<List<ReferenceVisit>> stops = new ArrayList<>(stops(visits).values());
    List<PlainRow> trips = trips(day);
    BigDecimal rate = book.setting("Vehicle cost per distance", "0");
    if (trips.isEmpty()) {
      for (List<ReferenceVisit> stop : stops) {
        BigDecimal out = place(stop.get(0).place, "Distance", BigDecimal.ZERO);
        BigDecimal minutes = place(stop.get(0).place, "Drive min", BigDecimal.ZERO);
        BigDecimal two = Cents.of(2);
        share(stop, Cents.round(out.multiply(two).multiply(rate)), minutes.multiply(two));
      }
      return;
    }
    BigDecimal miles = BigDecimal.ZERO;
    BigDecimal minutes = BigDecimal.ZERO;
    for (PlainRow trip : trips) {
      miles = miles.add(driven(trip));
      BigDecimal drive = trip.minutes("Drive min");
      minutes = minutes.add(drive == null ? BigDecimal.ZERO : drive);
    }
    List<BigDecimal> weights = weights(stops);
    List<BigDecimal> costs = Cents.split(Cents.round(miles.multiply(rate)), weights);
    for (int i = 0; i < stops.size(); i++) {
      share(
          stops.get(i),
          costs.get(i),
          Cents.over(minutes.multiply(weights.get(i)), Cents.sum(weights)));
    }
  }

  private List<BigDecimal> weights(List<List<ReferenceVisit>> stops) {
    List<BigDecimal> weights = new ArrayList<>();
    for (List<ReferenceVisit> stop : stops) {
      weights.add(place(stop.get(0).place, "Distance", null));
    }
    if (weights.contains(null) || Cents.sum(weights).signum() == 0) {
      weights.replaceAll(weight -> BigDecimal.ONE);
    }
    return weights;
  }

  private static void share(List<ReferenceVisit> stop, BigDecimal cost, BigDecimal minutes) {
    List<BigDecimal> costs = Cents.equally(cost, stop.size());
    for (int i = 0; i < stop.size(); i++) {
      stop.get(i).travel = costs.get(i);
      stop.get(i).driveMinutes = Cents.over(minutes, Cents.of(stop.size()));
    }
  }

  private BigDecimal place(String name, String column, BigDecimal missing) {
    for (PlainRow place : book.sheet("Places")) {
      if (!name.isEmpty() && same(place.text("Place"), name)) {
        BigDecimal figure = place.minutes(column);
        return figure == null ? missing : figure;
      }
    }
    return missing;
  }

  private void hours(ReferenceVisit visit) {
    BigDecimal hours = Cents.over(visit.minutes(), Cents.SIXTY);
    BigDecimal helper = visit.row.minutes("Helper min");
    BigDecimal helperHours = helper == null ? BigDecimal.ZERO : Cents.over(helper, Cents.SIXTY);
    visit.labour =
        Cents.round(
            hours
                .multiply(book.setting("Hourly wage", "0"))
                .add(helperHours.multiply(book.setting("Helper wage", "0"))));
    visit.overhead = Cents.round(overheadAnHour.multiply(hours));
  }

  private BigDecimal overheads(YearMonth month) {
    if (!book.setting("Yearly overheads").isEmpty()) {
      return book.setting("Yearly overheads", "0");
    }
    LocalDate first = month.minusMonths(11).atDay(1);
    LocalDate last = month.atEndOfMonth();
    BigDecimal sum = BigDecimal.ZERO;
    for (PlainRow row : book.sheet("Purchases")) {
      LocalDate day = row.date("Date", order);
      boolean within = day != null && !day.isBefore(first) && !day.isAfter(last);
      if (within && !row.has("Item") && !left(row.text("Category"))) {
        sum = sum.add(ReferenceStock.cost(book, row));
      }
    }
    Set<LocalDate> worked = new HashSet<>();
    all.stream().filter(v -> !v.cancelled).forEach(v -> worked.add(v.date));
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
      if (!worked.contains(day)) {
        for (PlainRow trip : trips(day)) {
          sum = sum.add(driven(trip).multiply(book.setting("Vehicle cost per distance", "0")));
        }
      }
    }
    return sum;
  }

  private static boolean left(String category) {
    String lower = category.toLowerCase(Locale.ROOT);
    return List.of("gas", "propane", "vehicle", "asset", "private").stream()
        .anyMatch(lower::contains);
  }
}
