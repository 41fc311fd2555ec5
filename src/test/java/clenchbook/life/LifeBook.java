package clenchbook.life;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** The farrier's book as a plain list of rows, and how it changes. */
final class LifeBook {
  static final List<YearMonth> MONTHS =
      List.of(
          YearMonth.of(2026, 10),
          YearMonth.of(2026, 11),
          YearMonth.of(2026, 12),
          YearMonth.of(2027, 1));
  private static final List<String> OWNERS = List.of("Adam", "Ivo", "Maeve", "Ruth");
  private static final List<String> WORKS = List.of("Full set", "Trim");
  private static final int MOST_ROWS = 6;

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
          new Named("Star", "Maeve"),
          new Named("Bess", "Adam"));

  /** The row last touched first. */
  private final List<LifeRow> rows = new ArrayList<>();

  private final List<Money> payments = new ArrayList<>();
  private final int[] prices = {100_00, 40_00};
  private int ruthsShare = 50;
  private int names;

  /** A row of Payments; the cents as typed. */
  record Money(LocalDate date, String owner, int cents, String invoice, String kind) {}

  /** What share and list prices are now. */
  LifeRow.Terms terms() {
    return new LifeRow.Terms(ruthsShare, Map.of(WORKS.get(0), prices[0], WORKS.get(1), prices[1]));
  }

  List<LifeRow> rows() {
    return List.copyOf(rows);
  }

  /** The place of the month among all, of the visit last touched. */
  int touchedMonth() {
    return rows.isEmpty() ? 0 : MONTHS.indexOf(YearMonth.from(rows.get(0).date));
  }

  /** Changes the book; commands to the program are none of its business. */
  void happen(LifeEvent event, List<String> numbers) {
    switch (event.kind()) {
      case ADD -> add(event);
      case DELETE -> one(event, row -> row.there, row -> row.there = false);
      case RESTORE -> one(event, row -> !row.there, row -> row.there = true);
      case CHARGE -> one(event, row -> true, row -> row.cents = cents(event.two(), event.three()));
      case DATE -> one(event, row -> true, row -> row.date = date(event.two(), event.three()));
      case WORK -> one(event, row -> true, row -> row.work = WORKS.get(event.two() % WORKS.size()));
      case OWNER -> one(event, LifeRow::ownerMayChange, row -> row.owner = owner(row, event.two()));
      case SHARE -> ruthsShare = 10 + event.one() % 81;
      case PRICE -> prices[event.one() % 2] = 20_00 + event.two() % 10 * 10_00;
      case CANCEL -> one(event, row -> true, row -> row.cancelled = !row.cancelled);
      case HOLD -> one(event, row -> true, row -> row.held = true);
      case UNHOLD -> one(event, row -> row.held, row -> row.held = false);
      case UNDO -> one(event, LifeRow::changed, LifeRow::undo);
      case PAYMENT -> pay(event, numbers);
      case UNPAY -> {
        if (!payments.isEmpty()) {
          payments.remove(event.one() % payments.size());
        }
      }
      default -> throw new IllegalArgumentException(event.toString());
    }
  }

  private void one(LifeEvent event, Predicate<LifeRow> which, Consumer<LifeRow> change) {
    List<LifeRow> from = rows.stream().filter(which).toList();
    if (!from.isEmpty()) {
      LifeRow row = from.get(event.of(from.size()));
      row.change(change);
      rows.remove(row);
      rows.add(0, row);
    }
  }

  /** One row in three is like the one last touched, done to the other horse of that name if any. */
  private void add(LifeEvent event) {
    if (rows.size() == MOST_ROWS) {
      return;
    }
    boolean twin = event.two() % 3 == 0 && !rows.isEmpty();
    List<Named> horses =
        twin
            ? HORSES.stream().filter(each -> each.horse().equals(rows.get(0).horse)).toList()
            : HORSES;
    Named horse = horses.get(event.one() % horses.size());
    LifeRow row = new LifeRow(names++, horse.horse(), horse.owner(), event.three() % 4 == 0);
    row.date = twin ? rows.get(0).date : date(event.two(), event.three());
    row.work = twin ? rows.get(0).work : WORKS.get(event.three() % WORKS.size());
    row.cents = cents(event.one(), event.two());
    rows.add(0, row);
  }

  /** In one of the months but the last, on few days, so that rows are alike now and then. */
  private static LocalDate date(int month, int day) {
    return MONTHS.get(month % (MONTHS.size() - 1)).atDay(1 + day % 5);
  }

  /** One in four has the list price; one in twenty is free; some have odd cents to be split. */
  private static int cents(int one, int two) {
    return one % 4 == 0 ? -1 : two % 20 == 0 ? 0 : 30_00 + two % 50 * 1_01;
  }

  /** Bess is shared: a row of hers may name a sharer or nobody. */
  private static String owner(LifeRow row, int two) {
    List<String> shares = List.of("", "Adam", "Ruth");
    return row.horse.equals("Bess")
        ? shares.get(two % shares.size())
        : OWNERS.get(two % OWNERS.size());
  }

  private void pay(LifeEvent event, List<String> numbers) {
    List<String> kinds = List.of("payment", "", "deposit", "refund", "written off", "tip");
    boolean names = event.three() % 3 > 0 && !numbers.isEmpty();
    int cents = 1_00 + event.two() % 60 * 1_00;
    payments.add(
        new Money(
            date(event.two(), event.one()),
            OWNERS.get(event.one() % OWNERS.size()),
            event.two() % 7 == 0 ? -cents : cents,
            names ? numbers.get(Math.max(0, numbers.size() - 1 - event.two() % 4)) : "",
            kinds.get(event.three() % kinds.size())));
  }

  void freeHeldRows() {
    rows.forEach(row -> row.held = false);
  }

  /** What owners paid from one day to another, both included, refunds taken off. */
  Map<String, Integer> paid(LocalDate from, LocalDate to) {
    Map<String, Integer> paid = new TreeMap<>();
    rows.stream()
        .filter(row -> row.there && !row.held && row.paid > 0)
        .filter(row -> !row.date.isBefore(from) && !row.date.isAfter(to))
        .forEach(
            row ->
                row.handedOver(terms())
                    .forEach((who, part) -> paid.merge(who, part, Integer::sum)));
    payments.stream()
        .filter(money -> !money.date().isBefore(from) && !money.date().isAfter(to))
        .filter(money -> !money.kind().equals("tip"))
        .forEach(
            money -> {
              int size = Math.abs(money.cents());
              paid.merge(money.owner(), money.kind().equals("refund") ? -size : size, Integer::sum);
            });
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
              + (LifeRow.WHOLE - ruthsShare)
              + ",\nJet,Ruth,,\nJet,Adam,,\nDot,Maeve,,\nFig,Ivo,,Maeve\n");
      StringBuilder visits = new StringBuilder("Date,Owner,Horse,Work,Charge,Paid,Reason\n");
      inSheet().stream().filter(row -> row.there).forEach(row -> visits.append(row.line()));
      write(folder, "Visits", visits.toString());
      StringBuilder money = new StringBuilder("Date,Owner,Amount,Invoice,Kind\n");
      payments.forEach(each -> money.append(line(each)));
      write(folder, "Payments", money.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Rows stay where they were typed. */
  private List<LifeRow> inSheet() {
    List<LifeRow> inSheet = new ArrayList<>(rows);
    inSheet.sort(java.util.Comparator.comparingInt(row -> row.name));
    return inSheet;
  }

  private static void write(Path folder, String sheet, String text) throws IOException {
    Files.writeString(folder.resolve(sheet + ".csv"), text);
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
}
