package clenchbook.speed;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The book of an invented farrier: six horses a working day, 188 horses of forty owners in turn, so
 * that every owner gets an invoice every month; a year is about 1,500 visits. It ends with October
 * 2026 and reaches back as far as the visits asked for. No draws: the same count, the same bytes.
 */
final class WorkingLife {
  static final int OWNERS = 40;
  static final int VISITS_A_YEAR = 1_500;
  private static final int HORSES_A_DAY = 6;
  private static final int HORSES = 188;
  private static final int YARDS = 32;
  private static final int YEARS_OF_A_HORSE = 12;
  private static final LocalDate LAST_DAY = LocalDate.of(2026, 10, 30);
  private static final LocalDate EARLIEST = LocalDate.of(1980, 1, 1);
  private static final List<String> WORKS =
      List.of(
          "Trim",
          "Full set",
          "Refit",
          "Trim",
          "Full set",
          "Handmade set",
          "Fronts",
          "Full set",
          "Trim",
          "Refit",
          "Fronts",
          "Aluminium set",
          "Full set");
  private static final List<String> COLOURS =
      List.of("Amber", "Bracken", "Copper", "Dusky", "Ebony", "Flint", "Golden", "Hazel", "Ivory");
  private static final List<String> CALLED =
      List.of("Lad", "Lass", "Dancer", "Piper", "Rover", "Song", "Star", "Storm", "Tinker", "Wren");

  private final SheetFile book;
  private final List<LocalDate> days;
  private final int visits;

  private WorkingLife(SheetFile book, int visits) {
    this.book = book;
    this.visits = visits;
    this.days = days((visits + HORSES_A_DAY - 1) / HORSES_A_DAY);
  }

  /** Writes the book of so many visits. */
  static void write(Path file, int visits) throws IOException {
    try (SheetFile book = new SheetFile(file)) {
      WorkingLife life = new WorkingLife(book, visits);
      life.visits();
      life.people();
      LifePrices.write(book, EARLIEST);
      new LifeLedgers(book, life.days).write();
    }
  }

  private static List<LocalDate> days(int count) {
    List<LocalDate> days = new ArrayList<>();
    for (LocalDate day = LAST_DAY; days.size() < count; day = day.minusDays(1)) {
      boolean rest = day.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) >= 0;
      if (!rest && day.getDayOfYear() > 12) {
        days.add(day);
      }
    }
    Collections.reverse(days);
    return days;
  }

  private void visits() throws IOException {
    book.sheet(
        "Visits",
        "Date",
        "Place",
        "Owner",
        "Horse",
        "Work",
        "Size",
        "Shoes",
        "New shoes",
        "Shaping",
        "Nails",
        "Extras",
        "Trim min",
        "Shape min",
        "Nail min",
        "Forge min",
        "Total min",
        "Paid",
        "How",
        "Reason",
        "Lost");
    for (int i = 0; i < visits; i++) {
      visit(i);
    }
  }

  private void visit(int i) throws IOException {
    // Counted from the last visit, so that the end of every book is the same round.
    int fromEnd = visits - 1 - i;
    int horse = HORSES - 1 - fromEnd % HORSES;
    int round = fromEnd / HORSES;
    LocalDate day = days.get(days.size() - 1 - fromEnd / HORSES_A_DAY);
    String work = WORKS.get((horse + round) % WORKS.size());
    int shoes = shoes(work);
    boolean cold = work.startsWith("Alu") || (horse * 7 + round) % 3 == 0;
    int spread = (horse * 31 + round * 17) % 9;
    int trim = 17 + spread;
    int shape = shoes * (cold ? 6 : 5) + spread;
    int nail = shoes * 5 + spread / 2;
    book.row(
        day,
        yard(horse),
        owner(horse),
        horse(horse, day),
        work,
        shoes == 0 ? "" : List.of("00", "0", "1", "2").get(horse % 4),
        shoes == 0 ? "" : (Object) shoes,
        work.equals("Refit") ? (Object) 0 : "",
        shoes == 0 ? "none" : cold ? "cold" : "hot",
        shoes == 0 ? "" : (Object) (shoes * (6 + spread % 2)),
        shoes == 4 && horse % 11 == 0 ? "pads 2; studs 8" : "",
        trim,
        shoes == 0 ? "" : (Object) shape,
        shoes == 0 ? "" : (Object) nail,
        shoes == 0 || cold ? "" : (Object) (8 + spread),
        i % 3 == 0 ? (Object) (trim + (shoes == 0 ? 0 : shape + nail) + 4) : "",
        i % 4 == 0 ? BigDecimal.valueOf(4000, 2) : "",
        i % 4 == 0 ? "cash" : "",
        i % 90 == 7 ? "lost shoe" : i % 61 == 5 ? "lameness" : "",
        i % 90 == 7 ? (Object) 1 : "");
  }

  private static int shoes(String work) {
    return work.equals("Trim") ? 0 : work.equals("Fronts") ? 2 : 4;
  }

  static String owner(int horse) {
    return "Owner " + String.format("%02d", horse % OWNERS + 1);
  }

  private static String yard(int horse) {
    return "Yard " + String.format("%02d", horse / HORSES_A_DAY % YARDS + 1);
  }

  /** A stable's place is taken by another horse every twelve years, not all in one year. */
  private static String horse(int horse, LocalDate day) {
    return name(horse, generation(horse, day));
  }

  private static int generation(int horse, LocalDate day) {
    return (day.getYear() - EARLIEST.getYear() + horse) / YEARS_OF_A_HORSE;
  }

  private static String name(int horse, int generation) {
    int pick = horse * 7 + generation * 13;
    return COLOURS.get(pick % COLOURS.size())
        + " "
        + CALLED.get((pick / COLOURS.size() + horse) % CALLED.size())
        + " "
        + (generation * HORSES + horse);
  }

  private void people() throws IOException {
    book.sheet("Owners", "Owner", "Address", "Email", "Terms days");
    for (int i = 0; i < OWNERS; i++) {
      String address = (i + 1) + " Stable Lane\nNether Wold\nZZ" + (i % 9 + 1) + " 4QX";
      book.row(owner(i), address, "owner" + (i + 1) + "@wold.example", i % 2 == 0 ? 14 : 30);
    }
    book.sheet("Horses", "Horse", "Owner", "Place", "Interval weeks", "Until");
    for (int horse = 0; horse < HORSES; horse++) {
      int last = generation(horse, LAST_DAY);
      for (int generation = generation(horse, days.get(0)); generation <= last; generation++) {
        int ends = EARLIEST.getYear() - horse + (generation + 1) * YEARS_OF_A_HORSE;
        book.row(
            name(horse, generation),
            owner(horse),
            yard(horse),
            6 + horse % 3,
            generation == last ? "" : LocalDate.of(ends - 1, 12, 31));
      }
    }
    book.sheet("Places", "Place", "Address", "Distance", "Drive min");
    for (int i = 0; i < YARDS; i++) {
      book.row(yard(i * HORSES_A_DAY), "Yard Road " + i, 4 + i * 3 % 19, 8 + i * 5 % 23);
    }
  }
}
