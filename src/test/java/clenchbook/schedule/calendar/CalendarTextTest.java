package clenchbook.schedule.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;

class CalendarTextTest {

  private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 31);
  private static final String LONG =
      "Žofie, Řízek; Ärger\\Mühe – 王 and 🐴 at the far yard, where the lane bends twice and the dog"
          + " is loose\n"
          + "Owner: Łukasz\n"
          + "Bring pads";

  @Test
  void the_calendar_is_read_back_by_another_library_with_every_letter() throws Exception {
    Calendar read = read(CalendarText.of(OCTOBER, List.of(event("a", LONG))));
    VEvent event = (VEvent) read.getComponents(Component.VEVENT).get(0);
    assertEquals(LONG, event.getDescription().getValue());
    assertEquals("Due; at Hill, Farm", event.getSummary().getValue());
    assertEquals("Hill, Farm", event.getLocation().getValue());
    DtStart<?> start = event.getDateTimeStart();
    assertEquals(LocalDate.of(2026, 11, 2), start.getDate());
  }

  @Test
  void the_calendar_is_valid_by_the_other_librarys_rules() throws Exception {
    ValidationResult result =
        read(CalendarText.of(OCTOBER, List.of(event("a", LONG), event("b", "")))).validate();
    assertFalse(result.hasErrors(), () -> result.getEntries().toString());
  }

  // RFC 5545 section 3.1: lines SHOULD NOT be longer than 75 octets, excluding the line break.
  @Test
  void no_line_is_longer_than_seventy_five_octets_and_no_character_is_split() {
    for (int shift = 0; shift < 80; shift++) {
      String text = CalendarText.of(OCTOBER, List.of(event("a", "x".repeat(shift) + LONG)));
      assertTrue(text.endsWith("END:VCALENDAR\r\n"));
      for (String line : text.split("\r\n")) {
        byte[] octets = line.getBytes(StandardCharsets.UTF_8);
        assertTrue(octets.length <= 75, line);
        assertFalse(line.contains("\n") || line.contains("\r"), line);
        assertEquals(line, new String(octets, StandardCharsets.UTF_8));
      }
      String unfolded = text.replace("\r\n ", "");
      assertTrue(unfolded.contains("🐴 at the far yard"), "shift " + shift);
    }
  }

  // RFC 5545 section 3.3.11: backslash, semicolon, comma and newline are escaped.
  @Test
  void text_is_escaped_as_the_standard_asks_and_control_characters_go() {
    assertEquals(
        "a\\, b\\; c\\\\ d\\ne: \"f\"",
        CalendarText.escaped("a, b; c\\ d\r\ne:\u0000 \"f\"\u001b"));
  }

  @Test
  void a_later_month_carries_a_later_stamp_and_a_higher_sequence() {
    String october = CalendarText.of(OCTOBER, List.of(event("a", "")));
    String november = CalendarText.of(OCTOBER.plusDays(30), List.of(event("a", "")));
    assertTrue(october.contains("DTSTAMP:20261031T000000Z\r\nSEQUENCE:9800\r\n"), october);
    assertTrue(november.contains("DTSTAMP:20261130T000000Z\r\nSEQUENCE:9830\r\n"), november);
  }

  @Test
  void events_stand_by_day_whatever_order_they_come_in() {
    CalendarEvent a = event("a", "");
    CalendarEvent b = event("b", "");
    assertEquals(CalendarText.of(OCTOBER, List.of(a, b)), CalendarText.of(OCTOBER, List.of(b, a)));
  }

  @Test
  void a_calendar_without_events_is_still_a_calendar() throws Exception {
    assertTrue(read(CalendarText.of(OCTOBER, List.of())).getComponents().isEmpty());
  }

  private static CalendarEvent event(String uid, String description) {
    return new CalendarEvent(
        uid, LocalDate.of(2026, 11, 2), "Due; at Hill, Farm", "Hill, Farm", description);
  }

  private static Calendar read(String text) throws Exception {
    return new CalendarBuilder().build(new StringReader(text));
  }
}
