package clenchbook.commandlife;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** The farrier's book as rows in memory, changed at random, and the plain sums over it. */
final class FarriersBook {
  static final YearMonth FIRST = YearMonth.of(2026, 10);
  private static final int MONTHS = 3;
  private static final int OPENING = 75_00;
  private static final int MOST_ROWS = 7;
  private static final List<String> OWNERS =
      List.of("Anna Alder", "Ben Birch", "Cora Cole", "Dan Dorn");

  /** How the book treats tax; charges are multiples of 24, so that every sum is whole cents. */
  enum Tax {
    NONE,
    ADDED,
    INCLUDED;

    int gross(int charge) {
      return this == ADDED ? charge + charge / 5 : charge;
    }

    int net(int charge) {
      return this == INCLUDED ? charge - charge / 6 : charge;
    }
  }

  /** A row of Payments; the amount as it counts towards the balance. */
  private record Money(LocalDate date, String owner, int counts, List<Object> cells) {}

  private final Random random;
  private final Tax tax;
  private final List<VisitRow> rows = new ArrayList<>();
  private final List<Money> payments = new ArrayList<>();
  private final Map<String, Map<VisitRow, Integer>> asked = new TreeMap<>();

  FarriersBook(Random random, Tax tax) {
    this.random = random;
    this.tax = tax;
    for (int row = 0; row < 3; row++) {
      add();
    }
  }

  YearMonth anyMonth() {
    return FIRST.plusMonths(random.nextInt(MONTHS));
  }

  private LocalDate anyDay() {
    return anyMonth().atDay(1 + random.nextInt(4));
  }

  private int anyCharge() {
    return 24_00 * random.nextInt(6);
  }

  /** Some horses share a name, one has two owners, and rows are alike now and then. */
  private void add() {
    int which = random.nextInt(OWNERS.size());
    boolean shared = which < 2 && random.nextBoolean();
    String horse = shared ? VisitRow.SHARED : which < 2 ? "Jet" : which == 2 ? "Dot" : "Star";
    VisitRow row =
        new VisitRow(anyDay(), OWNERS.get(which), horse, anyCharge(), random.nextInt(5) == 0);
    row.listPrice = random.nextInt(4) == 0;
    rows.add(random.nextInt(rows.size() + 1), row);
  }

  /** One change as a farrier makes them; it returns what was done, for who looks for a fault. */
  String change(List<String> numbers) {
    int what = random.nextInt(12);
    if (what == 0 && rows.size() < MOST_ROWS) {
      add();
      return "a row more";
    }
    if (what == 1) {
      Collections.shuffle(rows, random);
      return "rows sorted otherwise";
    }
    if (what <= 4) {
      return pay(numbers);
    }
    VisitRow row = rows.get(random.nextInt(rows.size()));
    String before = row.cells() + (row.deleted ? " deleted" : "");
    change(row, what);
    return before + " becomes " + row.cells() + (row.deleted ? " deleted" : "");
  }

  private void change(VisitRow row, int what) {
    switch (what) {
      case 5, 6 -> row.deleted = !row.deleted;
      case 7 -> row.cancelled = !row.cancelled;
      case 8 -> row.held = !row.held;
      case 9 -> row.date = anyDay();
      case 10 -> row.listPrice = !row.listPrice;
      default -> row.charge = anyCharge();
    }
  }

  private String pay(List<String> numbers) {
    if (!payments.isEmpty() && random.nextInt(4) == 0) {
      return "no longer paid: " + payments.remove(random.nextInt(payments.size())).cells();
    }
    List<String> kinds = List.of("", "payment", "deposit", "refund", "written off", "tip");
    String kind = kinds.get(random.nextInt(kinds.size()));
    String owner = OWNERS.get(random.nextInt(OWNERS.size()));
    int cents = 100 * (1 + random.nextInt(90));
    int counts = kind.equals("tip") ? 0 : kind.equals("refund") ? -cents : cents;
    String amount = (random.nextInt(5) == 0 ? "-" : "") + VisitRow.cents(cents);
    boolean names = !numbers.isEmpty() && random.nextInt(3) > 0 && !kind.equals("tip");
    String invoice = names ? numbers.get(random.nextInt(numbers.size())) : "";
    LocalDate day = anyDay();
    payments.add(new Money(day, owner, counts, List.of(day, owner, amount, invoice, kind)));
    return "paid: " + payments.get(payments.size() - 1).cells();
  }

  void freeHeldRows() {
    rows.forEach(row -> row.held = false);
  }

  boolean holdsRows() {
    return rows.stream().anyMatch(row -> row.held && !row.deleted);
  }

  Map<String, List<List<Object>>> sheets() {
    Map<String, List<List<Object>>> sheets = new LinkedHashMap<>();
    List<List<Object>> settings = new ArrayList<>(SETTINGS);
    settings.add(List.of("Prices include tax", tax == Tax.INCLUDED ? "yes" : "no"));
    sheets.put("Settings", settings);
    sheets.put("Owners", OWNER_ROWS);
    sheets.put("Horses", HORSE_ROWS);
    String code = tax == Tax.NONE ? "" : "S";
    sheets.put(
        "Work",
        List.of(
            List.of("Work", "Price", "Tax"),
            List.of("Trim", VisitRow.cents(VisitRow.LIST_PRICE), code)));
    sheets.put(
        "Tax",
        List.of(List.of("Code", "Name", "Rate %", "Kind"), List.of("S", "VAT", "20", "standard")));
    sheets.put("Visits", visits());
    List<List<Object>> money = new ArrayList<>();
    money.add(List.of("Date", "Owner", "Amount", "Invoice", "Kind"));
    payments.forEach(payment -> money.add(payment.cells()));
    sheets.put("Payments", money);
    return sheets;
  }

  private List<List<Object>> visits() {
    List<List<Object>> visits = new ArrayList<>();
    visits.add(List.of("Date", "Owner", "Horse", "Work", "Charge", "Paid", "Reason"));
    rows.stream().filter(row -> !row.deleted).forEach(row -> visits.add(row.cells()));
    return visits;
  }

  private static final List<List<Object>> SETTINGS =
      List.of(
          List.of("Setting", "Value"),
          List.of("Business name", "Alder Farriery"),
          List.of("Country", "GB"),
          List.of("Currency", "GBP"),
          List.of("Language", "en"),
          List.of("Tax number", "GB 000 0000 00"),
          List.of("From address", "office@alder.example"),
          List.of("Payment text", "Please pay within 14 days."),
          List.of("Opening date", "2026-10-01"));

  private static final List<List<Object>> OWNER_ROWS =
      List.of(
          List.of("Owner", "Email", "Opening balance"),
          List.of("Anna Alder", "anna@stable.example", ""),
          List.of("Ben Birch", "ben@stable.example", ""),
          List.of("Cora Cole", "", VisitRow.cents(OPENING)),
          List.of("Dan Dorn", "", ""));

  private static final List<List<Object>> HORSE_ROWS =
      List.of(
          List.of("Horse", "Owner", "Share %"),
          List.of(VisitRow.SHARED, VisitRow.SHARERS.get(0), "50"),
          List.of(VisitRow.SHARED, VisitRow.SHARERS.get(1), "50"),
          List.of("Jet", "Anna Alder", ""),
          List.of("Jet", "Ben Birch", ""),
          List.of("Dot", "Cora Cole", ""),
          List.of("Star", "Dan Dorn", ""));

  /** Remembers what the rows ask for now, for {@link #mostAsked}. */
  void asks() {
    rows.stream()
        .filter(VisitRow::counts)
        .forEach(
            row ->
                asked
                    .computeIfAbsent(row.place(), unused -> new java.util.IdentityHashMap<>())
                    .merge(row, tax.net(row.asks()), Math::max));
  }

  /** The most, without tax, that rows of a day and horse have asked for at any command. */
  int mostAsked(String place) {
    return asked.getOrDefault(place, Map.of()).values().stream().mapToInt(cents -> cents).sum();
  }

  /** What the rows of each day and horse ask for now, without tax. */
  Map<String, Integer> nets() {
    Map<String, Integer> nets = new TreeMap<>();
    rows.stream()
        .filter(VisitRow::counts)
        .forEach(row -> nets.merge(row.place(), tax.net(row.asks()), Integer::sum));
    return nets;
  }

  /** What each owner owes in the end, by plain addition over the rows as they are now. */
  Map<String, Integer> owed() {
    Map<String, Integer> owed = new TreeMap<>();
    for (VisitRow row : rows) {
      if (row.counts()) {
        row.parts(tax.gross(row.asks())).forEach((who, sum) -> owed.merge(who, sum, Integer::sum));
      }
    }
    paid(LocalDate.MAX).forEach((who, sum) -> owed.merge(who, -sum, Integer::sum));
    return owed;
  }

  /** What each owner has paid up to a day, less what was open before the first month. */
  Map<String, Integer> paid(LocalDate last) {
    Map<String, Integer> paid = new TreeMap<>(Map.of("Cora Cole", -OPENING));
    for (Money payment : payments) {
      if (!payment.date().isAfter(last)) {
        paid.merge(payment.owner(), payment.counts(), Integer::sum);
      }
    }
    for (VisitRow row : rows) {
      if (!row.date.isAfter(last)) {
        row.parts(row.truck()).forEach((who, sum) -> paid.merge(who, sum, Integer::sum));
      }
    }
    return paid;
  }
}
