package clenchbook.reading;

import static clenchbook.reading.Told.told;
import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.book.SheetControl;
import clenchbook.book.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows that are no data, and rows that only look so. */
class NoDataTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  private static String horses(ReadResult result) {
    return result.book().visits().stream().map(Visit::horse).collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Month's total",
        "Total March",
        "Summe März",
        "Totaal maart",
        "Ma somme",
        "Total:"
      })
  void a_sum_is_no_visit_wherever_its_word_stands(String words) {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .visit("", "", "", words, 45)
            .visit(DAY, "Ann", "Star", "Trim", 45)
            .read(folder);
    assertEquals("", told(result));
    assertEquals("Bramble Star", horses(result));
  }

  @Test
  void a_note_about_a_total_makes_no_row_a_sum() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge|Notes")
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .visit("", "", "Star", "Trim", 45, "Total of two horses")
            .visit("", "", "Dot", "Trim", 45, "paid in total")
            .sheet("Headings", "Sheet|Mine|Means")
            .row("Headings", "*", "Date", "Date, carried down")
            .row("Headings", "*", "Owner", "Owner, carried down")
            .read(folder);
    assertEquals("", told(result));
    assertEquals("Bramble Star Dot", horses(result));
    assertEquals(new SheetControl("Visits", 3, 0), result.book().controls().get(0));
  }

  @Test
  void a_word_of_signs_alone_is_no_sum() {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|Charge|Notes")
            .visit("", "Ann", "Bramble", "Trim", 45, " : ")
            .read(folder);
    assertEquals("held DATE_MISSING Visits!A2\n", told(result));
  }

  @Test
  void the_day_of_the_week_beside_the_date_is_no_second_date() {
    for (String headings :
        List.of("Day|Date", "Tag|Datum", "Jour|Date", "Día|Fecha", "Dag|Datum")) {
      ReadResult result =
          SmallBook.visits(headings + "|Owner|Horse|Work|Charge")
              .visit("Sat", DAY, "Ann", "Bramble", "Trim", 45)
              .read(folder);
      assertEquals("", told(result), headings);
      assertEquals(DAY, result.book().visits().get(0).date());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"£", "CHF", "Euro", "EUR", "€"})
  void a_currency_alone_over_a_column_is_the_price(String heading) {
    ReadResult result =
        SmallBook.visits("Date|Owner|Horse|Work|" + heading)
            .visit(DAY, "Ann", "Bramble", "Trim", 45)
            .read(folder, heading.equals("£") ? Locale.UK : currency(heading));
    assertEquals("", told(result));
    assertEquals(1, result.book().visits().stream().flatMap(v -> v.charge().stream()).count());
  }

  private static Locale currency(String heading) {
    return heading.equals("CHF") ? new Locale("de", "CH") : Locale.GERMANY;
  }
}
