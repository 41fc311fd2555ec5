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
      life.prices();
      life.ledgers();
      life.settings();
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

  private static String owner(int horse) {
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

  private void prices() throws IOException {
    book.sheet(
        "Work",
        "Work",
        "Price",
        "Tax",
        "Shoe",
        "Shoes",
        "Shaping",
        "Nail",
        "Nails per shoe",
        "Trim min",
        "Shape min",
        "Nail min",
        "Forge min",
        "Compare as",
        "From");
    for (int years = 0; years <= 40; years += 5) {
      LocalDate from = EARLIEST.plusYears(years);
      int dearer = years / 5 * 2;
      book.row("Trim", 24 + dearer, "S", "", 0, "none", "", "", 20, "", "", "", "Trim", from);
      book.row(
          "Fronts", 58 + dearer, "S", "Keg", 2, "hot", "Nail 5", 7, 20, 12, 10, 10, "Fronts", from);
      book.row(
          "Full set",
          86 + dearer,
          "S",
          "Keg",
          4,
          "hot",
          "Nail 5",
          7,
          20,
          24,
          20,
          20,
          "Full set",
          from);
      book.row(
          "Refit", 74 + dearer, "S", "Keg", 4, "hot", "Nail 5", 7, 20, 15, 20, 14, "Refit", from);
      book.row(
          "Handmade set",
          118 + dearer,
          "S",
          "Handmade",
          4,
          "hot",
          "Nail 5",
          7,
          20,
          22,
          20,
          22,
          "Full set",
          from);
      book.row(
          "Aluminium set",
          106 + dearer,
          "S",
          "Aluminium",
          4,
          "cold",
          "Nail 5",
          6,
          20,
          28,
          20,
          "",
          "",
          from);
    }
    book.sheet(
        "Materials",
        "Item",
        "Kind",
        "Size",
        "Unit",
        "Unit cost",
        "Per pack",
        "Pack cost",
        "Price",
        "Section",
        "Length mm",
        "Cut mm",
        "Bar",
        "Bar length mm",
        "Making min",
        "Making forge min",
        "Reorder at",
        "Supplier",
        "From");
    for (String size : List.of("00", "0", "1", "2")) {
      book.row(
          "Keg",
          "keg",
          size,
          "piece",
          new BigDecimal("3.60"),
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          20,
          "Wold Metals",
          EARLIEST);
    }
    book.row(
        "Handmade",
        "handmade",
        "",
        "piece",
        "",
        "",
        "",
        "",
        "",
        320,
        3,
        "Bar 20 x 8",
        "",
        16,
        12,
        "",
        "",
        EARLIEST);
    book.row(
        "Aluminium",
        "aluminium",
        "",
        "piece",
        new BigDecimal("9.40"),
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        8,
        "Wold Metals",
        EARLIEST);
    book.row(
        "Bar 20 x 8",
        "bar",
        "",
        "bar",
        new BigDecimal("8.60"),
        "",
        "",
        "",
        "20 x 8 mm",
        "",
        "",
        "",
        3000,
        "",
        "",
        3,
        "Wold Metals",
        EARLIEST);
    book.row(
        "Nail 5",
        "nail",
        "",
        "pack",
        "",
        250,
        new BigDecimal("24.50"),
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        500,
        "Wold Metals",
        EARLIEST);
    book.row(
        "Pad",
        "pad",
        "",
        "pair",
        new BigDecimal("8.80"),
        "",
        "",
        13,
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        4,
        "Wold Metals",
        EARLIEST);
    book.row(
        "Stud",
        "stud",
        "",
        "piece",
        new BigDecimal("1.10"),
        "",
        "",
        4,
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        16,
        "Wold Metals",
        EARLIEST);
  }

  private void ledgers() throws IOException {
    book.sheet("Trips", "Date", "From", "To", "Distance", "Drive min", "Purpose");
    for (int i = 0; i < days.size(); i++) {
      book.row(days.get(i), "Home", "Round", 40 + i % 37, 70 + i % 41, "visits");
    }
    purchases();
    book.sheet("Payments", "Date", "Owner", "Amount", "How");
    for (int i = 4; i < days.size(); i++) {
      book.row(days.get(i), owner(i), BigDecimal.valueOf(12_000 + i % 9 * 1_150, 2), "bank");
    }
    book.sheet("Counts", "Date", "Item", "Size", "Quantity");
    for (int i = 0; i < days.size(); i += 250) {
      book.row(days.get(i), "Keg", "0", 40);
      book.row(days.get(i), "Nail 5", "", 1500);
    }
  }

  private void purchases() throws IOException {
    book.sheet(
        "Purchases",
        "Date",
        "Supplier",
        "Item",
        "Size",
        "Quantity",
        "Unit",
        "Category",
        "Net",
        "Tax",
        "Gross");
    for (int i = 0; i < days.size(); i += 5) {
      LocalDate day = days.get(i);
      String size = List.of("00", "0", "1", "2").get(i / 5 % 4);
      book.row(
          day,
          "Wold Metals",
          "Keg",
          size,
          40,
          "piece",
          "",
          144,
          new BigDecimal("28.80"),
          new BigDecimal("172.80"));
      book.row(
          day,
          "Wold Metals",
          "Nail 5",
          "",
          2,
          "pack",
          "",
          49,
          new BigDecimal("9.80"),
          new BigDecimal("58.80"));
      book.row(
          day,
          "Wold Garage",
          "",
          "",
          "",
          "",
          "Fuel for vehicle",
          58,
          new BigDecimal("11.60"),
          new BigDecimal("69.60"));
      if (i % 20 == 0) {
        book.row(day, "Wold Estates", "", "", "", "", "Rent", 240, 0, 240);
        book.row(
            day,
            "Wold Gas",
            "",
            "",
            "",
            "",
            "Propane gas",
            49,
            new BigDecimal("9.80"),
            new BigDecimal("58.80"));
      }
    }
  }

  private void settings() throws IOException {
    book.sheet("Tax", "Code", "Name", "Rate %", "Kind", "From");
    book.row("S", "Standard", 20, "standard", LocalDate.of(1979, 1, 1));
    book.sheet("Settings", "Setting", "Value");
    String[] settings = {
      "Business name|Wold Forge",
      "Address|The Smithy\nNether Wold",
      "Email|forge@wold.example",
      "Payment text|Please pay by bank transfer.",
      "IBAN|GB82 WEST 1234 5698 7654 32",
      "Country|GB",
      "Currency|GBP",
      "Language|en",
      "Units|metric",
      "Distance unit|miles",
      "Date order|dmy",
      "Tax regime|uk",
      "Tax number|GB 123 4567 82",
      "Prices include tax|no",
      "Hourly wage|28",
      "Vehicle cost per distance|0.45",
      "Gas cost per kg|2.60",
      "Sundries per horse|2.20",
      "Birth year|1985",
      "Stop age|66",
      "Weekly hours limit|45",
      "Yearly hours limit|1800",
      "Horses per day limit|9"
    };
    for (String setting : settings) {
      int bar = setting.indexOf('|');
      book.row(setting.substring(0, bar), setting.substring(bar + 1));
    }
  }
}
