package clenchbook.schedule.calendar;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;

/**
 * Writes events as iCalendar text.
 *
 * <p>Source: RFC 5545 (2009): content lines end in CRLF and are folded at 75 octets of UTF-8, never
 * inside a character (section 3.1); text is escaped (3.3.11); an all-day event is a DATE start with
 * the day after as its end (3.6.1, 3.8.2.2). A later calendar of the same events carries a later
 * stamp and a higher sequence (3.8.7.2, 3.8.7.4), which is what makes a phone update an event
 * rather than double it.
 */
public final class CalendarText {

  private static final int LINE_OCTETS = 75;
  private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;

  private CalendarText() {}

  /**
   * Gives the whole calendar.
   *
   * @param asAt the day the calendar was true; it makes the stamp and the sequence, so that a later
   *     month's calendar replaces an earlier one's events
   * @param events in any order; each uid once
   * @return CRLF-terminated lines; a calendar without events where the list is empty
   */
  public static String of(LocalDate asAt, List<CalendarEvent> events) {
    StringBuilder text = new StringBuilder();
    line(text, "BEGIN:VCALENDAR");
    line(text, "VERSION:2.0");
    line(text, "PRODID:-//Clenchbook//Due list//EN");
    line(text, "CALSCALE:GREGORIAN");
    events.stream()
        .sorted(Comparator.comparing(CalendarEvent::day).thenComparing(CalendarEvent::uid))
        .forEach(event -> event(text, asAt, event));
    line(text, "END:VCALENDAR");
    return text.toString();
  }

  private static void event(StringBuilder text, LocalDate asAt, CalendarEvent event) {
    line(text, "BEGIN:VEVENT");
    line(text, "UID:" + escaped(event.uid()));
    line(text, "DTSTAMP:" + DAY.format(asAt) + "T000000Z");
    line(text, "SEQUENCE:" + sequence(asAt));
    line(text, "DTSTART;VALUE=DATE:" + DAY.format(event.day()));
    line(text, "DTEND;VALUE=DATE:" + DAY.format(event.day().plusDays(1)));
    line(text, "SUMMARY:" + escaped(event.summary()));
    optional(text, "LOCATION:", event.location());
    optional(text, "DESCRIPTION:", event.description());
    line(text, "TRANSP:TRANSPARENT");
    line(text, "END:VEVENT");
  }

  /** Days since the year 2000: higher for every later calendar, and small enough for any reader. */
  private static long sequence(LocalDate asAt) {
    return Math.max(0, asAt.toEpochDay() - LocalDate.of(2000, 1, 1).toEpochDay());
  }

  private static void optional(StringBuilder text, String name, String value) {
    if (!value.isEmpty()) {
      line(text, name + escaped(value));
    }
  }

  static String escaped(String value) {
    StringBuilder escaped = new StringBuilder();
    value
        .replace("\r\n", "\n")
        .codePoints()
        .forEach(
            character -> {
              switch (character) {
                case '\\' -> escaped.append("\\\\");
                case ';' -> escaped.append("\\;");
                case ',' -> escaped.append("\\,");
                case '\n', '\r' -> escaped.append("\\n");
                default -> appendPrintable(escaped, character);
              }
            });
    return escaped.toString();
  }

  /** Leaves out control characters and half characters, which no calendar text may hold. */
  private static void appendPrintable(StringBuilder text, int character) {
    boolean half = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
    if (character == '\t' || (!Character.isISOControl(character) && !half)) {
      text.appendCodePoint(character);
    }
  }

  /** Folds: a continuation line begins with a space, which counts as one of its octets. */
  private static void line(StringBuilder text, String content) {
    int octets = 0;
    for (int i = 0; i < content.length(); ) {
      int character = content.codePointAt(i);
      String letter = Character.toString(character);
      int more = letter.getBytes(StandardCharsets.UTF_8).length;
      if (octets + more > LINE_OCTETS) {
        text.append("\r\n ");
        octets = 1;
      }
      text.append(letter);
      octets += more;
      i += Character.charCount(character);
    }
    text.append("\r\n");
  }
}
