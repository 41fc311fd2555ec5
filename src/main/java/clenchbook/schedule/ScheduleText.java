package clenchbook.schedule;

/** ScheduleText of the due list. */
final class ScheduleText {

  private ScheduleText() {}

  static String placeOrNone(String place) {
    return place.isEmpty() ? "(no place)" : place;
  }
}
