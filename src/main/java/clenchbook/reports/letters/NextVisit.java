package clenchbook.reports.letters;

import java.time.LocalDate;

/**
 * When a horse is next due.
 *
 * @param horse the horse
 * @param due a day of the week in which it is due
 */
public record NextVisit(String horse, LocalDate due) {}
