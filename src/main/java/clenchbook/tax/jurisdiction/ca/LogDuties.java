package clenchbook.tax.jurisdiction.ca;

import clenchbook.book.Names;
import clenchbook.book.Trip;
import clenchbook.tax.vehicle.MileageLog;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * What a log of business trips must hold (canada.ca, Keeping motor vehicle records): each trip's
 * date, destination, purpose and kilometres, and the odometer at both ends of the year.
 *
 * @param trips how many business trips it holds
 * @param withoutPurpose how many of them say no purpose
 * @param withoutDestination how many say no destination
 * @param vehiclesWithoutReadings vehicles of the log without a reading at its first or last trip
 */
record LogDuties(
    long trips, long withoutPurpose, long withoutDestination, long vehiclesWithoutReadings) {

  /** What a log lacks. */
  static LogDuties of(MileageLog log) {
    List<Trip> business = log.trips().stream().filter(Trip::business).toList();
    TreeMap<String, List<Trip>> byVehicle = new TreeMap<>();
    log.trips()
        .forEach(
            trip ->
                byVehicle
                    .computeIfAbsent(Names.key(trip.vehicle()), unused -> new ArrayList<>())
                    .add(trip));
    return new LogDuties(
        business.size(),
        business.stream().filter(trip -> trip.purpose().isBlank()).count(),
        business.stream().filter(trip -> trip.to().isBlank()).count(),
        byVehicle.values().stream().filter(trips -> !isRead(trips)).count());
  }

  private static boolean isRead(List<Trip> trips) {
    return trips.get(0).odometerStart().isPresent()
        && trips.get(trips.size() - 1).odometerEnd().isPresent();
  }
}
