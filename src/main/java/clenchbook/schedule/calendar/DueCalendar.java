package clenchbook.schedule.calendar;

import clenchbook.book.Names;
import clenchbook.book.Place;
import clenchbook.jobs.BookIndex;
import clenchbook.schedule.due.ComingVisit;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.schedule.due.UsualVisit;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/**
 * The due list as calendar events: one all-day event for each place and due week, on the week's
 * Monday, listing the horses; never on a day that is over.
 *
 * <p>An event is named by its place and week alone, so the next run, and the next month's, updates
 * it instead of adding another. Horses gone quiet are not in it.
 */
public final class DueCalendar {

  private DueCalendar() {}

  public static String text(DueDates due, BookIndex index) {
    return CalendarText.of(due.asAt(), events(due, index));
  }

  static List<CalendarEvent> events(DueDates due, BookIndex index) {
    Map<LocalDate, Map<String, List<DueHorse>>> weeks = new TreeMap<>();
    for (DueHorse horse : due.expected()) {
      weeks
          .computeIfAbsent(ComingVisit.monday(horse.due()), monday -> new TreeMap<>())
          .computeIfAbsent(Names.key(horse.place()), place -> new ArrayList<>())
          .add(horse);
    }
    List<CalendarEvent> events = new ArrayList<>();
    weeks.forEach(
        (monday, places) ->
            places.forEach(
                (key, horses) ->
                    events.add(event(monday, dayFor(monday, due.asAt()), key, horses, index))));
    return List.copyOf(events);
  }

  /** Nothing can be planned for a day that is over: what is overdue is planned at once. */
  private static LocalDate dayFor(LocalDate monday, LocalDate asAt) {
    return monday.isAfter(asAt) ? monday : asAt.plusDays(1);
  }

  private static CalendarEvent event(
      LocalDate monday, LocalDate day, String placeKey, List<DueHorse> horses, BookIndex index) {
    String place = horses.get(0).place();
    String count = horses.size() == 1 ? "1 horse due" : horses.size() + " horses due";
    String address = index.place(place).map(Place::address).orElse("");
    StringBuilder lines = new StringBuilder();
    horses.forEach(horse -> lines.append(line(horse)).append('\n'));
    return new CalendarEvent(
        uid(monday, placeKey),
        day,
        place.isEmpty() ? count : place + ": " + count,
        address.isEmpty() ? place : place + ", " + address.replace("\n", ", "),
        lines.toString().strip());
  }

  private static String line(DueHorse horse) {
    UsualVisit usual = UsualVisit.of(horse);
    String minutes =
        usual.workMinutes().signum() == 0
            ? ""
            : ", about " + usual.workMinutes().setScale(0, RoundingMode.HALF_UP) + " min";
    return horse.id().name()
        + " ("
        + horse.owner()
        + "): due "
        + horse.due()
        + (horse.daysOverdue() > 0 ? ", overdue" : "")
        + ", "
        + usual.workNames()
        + minutes
        + ", last "
        + horse.last();
  }

  private static String uid(LocalDate monday, String placeKey) {
    byte[] name = ("due " + monday + " " + placeKey).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name) + "@clenchbook";
  }
}
