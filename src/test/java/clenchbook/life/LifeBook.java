package clenchbook.life;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The farrier's book as a plain list of rows, and what its rows ask for by plain addition. */
final class LifeBook {
  static final List<YearMonth> MONTHS =
      List.of(
          YearMonth.of(2026, 10),
          YearMonth.of(2026, 11),
          YearMonth.of(2026, 12),
          YearMonth.of(2027, 1));
  static final List<String> OWNERS = List.of("Adam", "Ivo", "Maeve", "Ruth");
  private static final List<String> WORKS = List.of("Full set", "Trim");
  private static final int CENTS = 100;

  /** A horse as rows of Visits name it: with the owner typed, where that is needed. */
  private record Named(String horse, String owner) {}

  private static final List<Named> HORSES =
      List.of(
          new Named("Bess", ""),
          new Named("Jet", "Ruth"),
          new Named("Jet", "Adam"),
          new Named("Dot", ""),
          new Named("Fig", ""),
          new Named("Star", "Ivo"),
          new Named("Star", "Maeve"));

  /** A row of Visits; cents are 0 and more, less for the list price. */
  private static final class Row {
    private LocalDate date;
    private String owner;
    private final String horse;
    private String work;
    private int cents;
    private final int paid;
    private boolean there = true;
    private boolean held;
    private boolean cancelled;

    Row(LocalDate date, Named horse, String work, int cents, int paid) {
      this.date = date;
      this.owner = horse.owner();
      this.horse = horse.horse();
      this.work = work;
      this.cents = cents;
      this.paid = paid;
    }

    boolean counts() {
      return there && !held && !cancelled;
    }
  }

  private record Money(LocalDate date, String owner, int cents, String invoice, String kind) {}

  private final List<Row> rows = new ArrayList<>();
  private final List<Money> payments = new ArrayList<>();
  private final int[] prices = {100_00, 40_00};
  private int ruthsShare = 50;

  /** What all rows of a day, horse and Work ask for; the same for all rows that are alike. */
  record Group(LocalDate date, String horse, String work) {}

  /** Changes the book; commands to the program are none of its business. */
  void happen(LifeEvent event, List<String> numbers) {
    switch (event.kind()) {
      case ADD -> add(event);
      case DELETE ->
          one(event, rows.stream().filter(row -> row.there).toList(), r -> r.there = false);
      case RESTORE ->
          one(event, rows.stream().filter(row -> !row.there).toList(), r -> r.there = true);
      case CHARGE -> one(event, rows, row -> row.cents = cents(event.two(), event.three()));
      case DATE -> one(event, rows, row -> row.date = date(event.two(), event.three()));
      case WORK -> one(event, rows, row -> row.work = WORKS.get(event.two() % WORKS.size()));
      case OWNER ->
          one(
              event,
              rows.stream().filter(row -> row.horse.equals("Star")).toList(),
              row -> row.owner = OWNERS.get(event.two() % OWNERS.size()));
      case SHARE -> ruthsShare = 10 + event.one() % 81;
      case PRICE -> prices[event.one() % 2] = 20_00 + event.two() % 10 * 10_00;
      case CANCEL -> one(event, rows, row -> row.cancelled = !row.cancelled);
      case HOLD -> one(event, rows, row -> row.held = true);
      case UNHOLD ->
          one(event, rows.stream().filter(row -> row.held).toList(), r -> r.held = false);
      case PAYMENT -> pay(event, numbers);
      default -> throw new IllegalArgumentException(event.toString());
    }
  }

  private static void one(
      LifeEvent event, List<Row> from, java.util.function.Consumer<Row> change) {
    if (!from.isEmpty()) {
      change.accept(from.get(event.one() % from.size()));
    }
  }

  private void add(LifeEvent event) {
    Named horse = HORSES.get(event.one() % HORSES.size());
    int paid = event.three() % 4 == 0 ? 5_00 : 0;
    rows.add(
        new Row(
            date(event.two(), event.three()),
            horse,
            WORKS.get(event.three() % WORKS.size()),
            cents(event.one(), event.two()),
            paid));
  }

  private static LocalDate date(int month, int day) {
    return MONTHS.get(month % (MONTHS.size() - 1)).atDay(1 + day % 28);
  }

  /** One in three has the list price; one in twenty is free; some have odd cents to be split. */
  private static int cents(int one, int two) {
    return one % 3 == 0 ? -1 : two % 20 == 0 ? 0 : 30_00 + two % 50 * 1_01;
  }

  private void pay(LifeEvent event, List<String> numbers) {
    List<String> kinds = List.of("payment", "payment", "deposit", "refund", "written off", "tip");
    boolean names = event.three() % 2 == 0 && !numbers.isEmpty();
    payments.add(
        new Money(
            date(event.two(), event.one()),
            OWNERS.get(event.one() % OWNERS.size()),
            1_00 + event.two() % 60 * 1_00,
            names ? numbers.get(event.two() % numbers.size()) : "",
            kinds.get(event.three() % kinds.size())));
  }

  void freeHeldRows() {
    rows.forEach(row -> row.held = false);
  }

  /** What the rows of each day, horse and Work ask for now. */
  Map<Group, Integer> asked() {
    Map<Group, Integer> asked = new java.util.HashMap<>();
    rows.stream()
        .filter(Row::counts)
        .forEach(row -> asked.merge(group(row), amount(row), Integer::sum));
    return asked;
  }

  /** Whether a group's rows all have a charge of their own, so that no price list changes them. */
  boolean typed(Group group) {
    return rows.stream()
        .filter(Row::counts)
        .filter(row -> group(row).equals(group))
        .allMatch(row -> row.cents >= 0);
  }

  private static Group group(Row row) {
    return new Group(row.date, row.horse.toLowerCase(), row.work.toLowerCase());
  }

  private int amount(Row row) {
    return row.cents >= 0 ? row.cents : prices[WORKS.indexOf(row.work)];
  }

  /** Whose part of a row it is: in cents, by plain shares, what is left going to the first. */
  private Map<String, Integer> parts(Row row, int cents) {
    Map<String, Integer> parts = new TreeMap<>();
    if (row.horse.equals("Bess")) {
      int ruths =
          new BigDecimal(cents)
              .multiply(new BigDecimal(ruthsShare))
              .divide(new BigDecimal(CENTS), 0, RoundingMode.HALF_UP)
              .intValueExact();
      parts.put("Ruth", ruths);
      parts.put("Adam", cents - ruths);
    } else {
      String owner = row.horse.equals("Jet") || row.horse.equals("Star") ? row.owner : "Maeve";
      parts.put(owner, cents);
    }
    return parts;
  }

  /** What owners paid from one day to another, both included, refunds taken off. */
  Map<String, Integer> paid(LocalDate from, LocalDate to) {
    Map<String, Integer> paid = new TreeMap<>();
    rows.stream()
        .filter(row -> row.there && !row.held)
        .filter(row -> !row.date.isBefore(from) && !row.date.isAfter(to))
        .forEach(
            row ->
                parts(row, row.paid).forEach((who, part) -> paid.merge(who, part, Integer::sum)));
    payments.stream()
        .filter(money -> !money.date().isBefore(from) && !money.date().isAfter(to))
        .filter(money -> !money.kind().equals("tip"))
        .forEach(
            money ->
                paid.merge(
                    money.owner(),
                    money.kind().equals("refund") ? -money.cents() : money.cents(),
                    Integer::sum));
    return paid;
  }

  void write(Path folder) {
    try {
      Files.createDirectories(folder);
      write(folder, "Settings", "Setting,Value\nCountry,GB\nCurrency,GBP\nLanguage,en\n");
      write(
          folder,
          "Work",
          "Work,Price\nFull set," + text(prices[0]) + "\nTrim," + text(prices[1]) + "\n");
      write(
          folder,
          "Horses",
          "Horse,Owner,Share %,Bill to\nBess,Ruth,"
              + ruthsShare
              + ",\nBess,Adam,"
              + (CENTS - ruthsShare)
              + ",\nJet,Ruth,,\nJet,Adam,,\nDot,Maeve,,\nFig,Ivo,,Maeve\n");
      StringBuilder visits = new StringBuilder("Date,Owner,Horse,Work,Charge,Paid,Reason\n");
      rows.stream().filter(row -> row.there).forEach(row -> visits.append(line(row)));
      write(folder, "Visits", visits.toString());
      StringBuilder money = new StringBuilder("Date,Owner,Amount,Invoice,Kind\n");
      payments.forEach(each -> money.append(line(each)));
      write(folder, "Payments", money.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(Path folder, String sheet, String text) throws IOException {
    Files.writeString(folder.resolve(sheet + ".csv"), text);
  }

  private static String line(Row row) {
    return String.join(
            ",",
            row.held ? "soon" : row.date.toString(),
            row.owner,
            row.horse,
            row.work,
            row.cents < 0 ? "" : text(row.cents),
            row.paid == 0 ? "" : text(row.paid),
            row.cancelled ? "cancelled" : "")
        + "\n";
  }

  private static String line(Money money) {
    return String.join(
            ",",
            money.date().toString(),
            money.owner(),
            text(money.cents()),
            money.invoice(),
            money.kind())
        + "\n";
  }

  static String text(int cents) {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }

  static @Nullable YearMonth monthOf(LifeEvent event) {
    return MONTHS.get(event.one() % MONTHS.size());
  }
}
