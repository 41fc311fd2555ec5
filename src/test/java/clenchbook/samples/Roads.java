package clenchbook.samples;

import clenchbook.samples.Stable.Yard;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/** Writes the trips that the visits make needful, with an odometer that never runs back. */
final class Roads {
  private final Tab trips =
      new Tab(
          "Trips", "Date|From|To|Distance|Odometer start|Odometer end|Drive min|Purpose|Vehicle");
  private final Random random;
  private final String vehicle;
  private final String supplier;
  private int odometer;

  Roads(Random random, int odometer, String vehicle, String supplier) {
    this.random = random;
    this.odometer = odometer;
    this.vehicle = vehicle;
    this.supplier = supplier;
  }

  Tab drive(Scenario scenario, List<Visit> visits) {
    Map<LocalDate, Set<Yard>> rounds = new TreeMap<>();
    visits.stream()
        .filter(v -> !v.cancelled)
        .forEach(v -> rounds.computeIfAbsent(v.date, d -> new LinkedHashSet<>()).add(v.yard));
    for (LocalDate day = scenario.start(); !day.isAfter(scenario.end()); day = day.plusDays(1)) {
      if (rounds.containsKey(day)) {
        round(day, new ArrayList<>(rounds.get(day)));
      } else {
        other(day);
      }
    }
    return trips;
  }

  private void round(LocalDate day, List<Yard> yards) {
    if (random.nextInt(32) == 0) {
      odometer += yards.get(0).distance * 2;
      return;
    }
    boolean whole = random.nextInt(9) == 0;
    int miles = yards.get(0).distance;
    for (int i = 1; i < yards.size(); i++) {
      miles += whole ? between(yards, i) : 0;
    }
    if (whole) {
      miles += yards.get(yards.size() - 1).distance;
      trip(
          day,
          "Home",
          yards.size() == 1 ? yards.get(0).name : "round of " + yards.size() + " yards",
          miles,
          "round");
      return;
    }
    trip(day, "Home", yards.get(0).name, miles, "visit");
    for (int i = 1; i < yards.size(); i++) {
      trip(day, yards.get(i - 1).name, yards.get(i).name, between(yards, i), "visit");
    }
    trip(
        day,
        yards.get(yards.size() - 1).name,
        "Home",
        yards.get(yards.size() - 1).distance,
        "home");
  }

  private static int between(List<Yard> yards, int i) {
    return (int) Math.max(1, Math.round(yards.get(i - 1).milesTo(yards.get(i))));
  }

  private void other(LocalDate day) {
    boolean weekend = day.getDayOfWeek().getValue() > 5;
    if (weekend && random.nextInt(10) < 5) {
      trip(
          day,
          "Home",
          day.getDayOfWeek() == DayOfWeek.SUNDAY ? "family" : "town",
          6 + random.nextInt(40),
          "private");
    } else if (!weekend && random.nextInt(6) == 0) {
      trip(day, "Home", supplier, 34, "supplier");
    }
  }

  private void trip(LocalDate day, String from, String to, int miles, String purpose) {
    int draw = random.nextInt(20);
    boolean odometerOnly = draw < 2;
    boolean distanceOnly = draw > 8;
    Object minutes =
        random.nextInt(25) == 0
            ? null
            : (Object) (int) Math.round(miles * (1.6 + random.nextDouble() * 0.4) + 2);
    trips.add(
        day,
        from,
        to,
        odometerOnly ? null : miles,
        distanceOnly ? null : odometer,
        distanceOnly ? null : odometer + miles,
        minutes,
        purpose,
        vehicle);
    odometer += miles;
  }
}
