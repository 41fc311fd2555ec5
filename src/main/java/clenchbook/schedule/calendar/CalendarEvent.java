package clenchbook.schedule.calendar;

import java.time.LocalDate;

/**
 * One all-day entry of a calendar.
 *
 * @param uid what names the event for good: a calendar that already holds it updates it
 * @param day the day it stands on
 * @param summary its one line
 * @param location where; empty for none
 * @param description its text, lines separated by newlines; empty for none
 */
public record CalendarEvent(
    String uid, LocalDate day, String summary, String location, String description) {}
