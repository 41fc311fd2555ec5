package clenchbook.schedule.calendar;

import clenchbook.book.Names;
import clenchbook.book.Place;
import clenchbook.jobs.BookIndex;
import clenchbook.schedule.due.ComingVisit;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.schedule.due.UsualVisit;
import clenchbook.texts.Message;
import clenchbook.texts.Texts;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * The due list as calendar events: one all-day event for each place and due week, on the week's
 * Monday, listing the horses; never on a day that is over.
 *
 * <p>An event is named by its place and week alone, so the next run, and the next month's, updates
 * it instead of adding another. Horses gone quiet are not in it.
 */
public final class DueCalendar {

  private DueCalendar() {}

  /**
   * Makes the calendar.
   *
   * @param due the due list
   * @param index the book, for the addresses of places
   * @param texts the farrier's language
   */
  public static String text(DueDates due, BookIndex index, Texts texts) {
    return CalendarText.of(due.asAt(), events(due, index, texts));
  }

  private static List<CalendarEvent> events(DueDates due, BookIndex index, Texts texts) {
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
                    events.add(
                        new CalendarEvent(
                            uid(monday, key),
                            dayFor(monday, due.asAt()),
                            summary(horses, texts),
                            location(horses, index),
                            lines(horses, texts)))));
    return List.copyOf(events);
  }

  /** Nothing can be planned for a day that is over: what is overdue is planned at once. */
  private static LocalDate dayFor(LocalDate monday, LocalDate asAt) {
    return monday.isAfter(asAt) ? monday : asAt.plusDays(1);
  }

  private static String summary(List<DueHorse> horses, Texts texts) {
    String place = horses.get(0).place();
    return place.isEmpty()
        ? texts.say("schedule.calendar.summary", horses.size())
        : texts.say("schedule.calendar.summaryAt", place, horses.size());
  }

  private static String location(List<DueHorse> horses, BookIndex index) {
    String place = horses.get(0).place();
    String address = index.place(place).map(Place::address).orElse("");
    return address.isEmpty() ? place : place + ", " + address.replace("\n", ", ");
  }

  private static String lines(List<DueHorse> horses, Texts texts) {
    return horses.stream()
        .map(horse -> texts.say(line(horse)))
        .collect(Collectors.joining("\n"))
        .strip();
  }

  private static Message line(DueHorse horse) {
    UsualVisit usual = UsualVisit.of(horse);
    boolean overdue = horse.daysOverdue() > 0;
    if (usual.workMinutes().signum() == 0) {
      return Message.of(
          overdue ? "schedule.calendar.overdue" : "schedule.calendar.due",
          horse.id().name(),
          horse.owner(),
          horse.due(),
          usual.workNames(),
          horse.last());
    }
    return Message.of(
        overdue ? "schedule.calendar.overdueMinutes" : "schedule.calendar.dueMinutes",
        horse.id().name(),
        horse.owner(),
        horse.due(),
        usual.workNames(),
        usual.workMinutes().setScale(0, RoundingMode.HALF_UP),
        horse.last());
  }

  private static String uid(LocalDate monday, String placeKey) {
    byte[] name = ("due " + monday + " " + placeKey).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name) + "@clenchbook";
  }
}
