package clenchbook.life;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
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
  private static final int MOST_ROWS = 6;
  private static final String NOTHING = "nothing to change";

  /** A horse as rows of Visits name it: with the person typed, where that is needed. */
  private record Named(String horse, String person) {}

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
  private final LifeSheets sheets = new LifeSheets();
  private LifeTerms terms = LifeTerms.first();
  private int names;

  /** A row of Payments; the cents as typed. */
  record Money(LocalDate date, String owner, int cents, String invoice, String kind) {
    String line() {
      return String.join(",", date.toString(), owner, LifeSheets.text(cents), invoice, kind);
    }

    /** What it takes off a balance: its size, by its kind, whatever its sign. */
    int takenOff() {
      int size = Math.abs(cents);
      return switch (kind) {
        case "refund" -> -size;
        case "tip" -> 0;
        default -> size;
      };
    }
  }

  LifeTerms terms() {
    return terms;
  }

  List<LifeRow> rows() {
    return List.copyOf(rows);
  }

  /** The place of the month among all, of the visit last touched. */
  int touchedMonth() {
    return rows.isEmpty() ? 0 : MONTHS.indexOf(YearMonth.from(rows.get(0).date));
  }

  /**
   * Changes the book; commands to the program are none of its business.
   *
   * @param numbers the numbers of documents that a payment may name
   * @return what happened, in words
   */
  String happen(LifeEvent event, List<String> numbers) {
    int two = event.two();
    int three = event.three();
    return switch (event.kind()) {
      case ADD -> add(event);
      case DELETE -> one(event, row -> row.there, row -> row.there = false);
      case RESTORE -> one(event, row -> !row.there, row -> row.there = true);
      case CHARGE -> one(event, row -> true, row -> row.cents = cents(two, three));
      case DATE -> one(event, row -> true, row -> row.date = date(two, three));
      case WORK -> one(event, row -> true, row -> row.work = work(two));
      case OWNER -> one(event, LifeRow::ownerMayChange, row -> row.owner = owner(row, two));
      case HORSE -> one(event, row -> true, row -> horse(row, two));
      case CANCEL -> one(event, row -> true, row -> row.cancelled = !row.cancelled);
      case HOLD -> one(event, row -> true, row -> row.held = true);
      case UNHOLD -> one(event, row -> row.held, row -> row.held = false);
      case UNDO -> one(event, LifeRow::changed, LifeRow::undo);
      case PAYMENT -> pay(event, numbers);
      case UNPAY ->
          payments.isEmpty()
              ? NOTHING
              : "not: " + payments.remove(event.one() % payments.size()).line();
      default -> terms(event);
    };
  }

  /** What touches drafts only. */
  private String terms(LifeEvent event) {
    String person = LifeTerms.PERSONS.get(event.one() % LifeTerms.PERSONS.size());
    terms =
        switch (event.kind()) {
          case SHARE -> terms.share(10 + event.one() % 81);
          case PRICE -> terms.price(work(event.one()), 20_00 + event.two() % 10 * 10_00);
          case RENAME -> renamed(person, event);
          case FORMERLY -> terms.linked(person, event.two() % 3 > 0);
          case SOLD ->
              event.two() % 2 == 0
                  ? terms.dotIs(event.one() % 2 == 0 ? "Maeve" : "Ivo")
                  : terms.dotSold(date(event.one(), event.three()));
          case DOTTY -> terms.dotRenamed();
          default -> throw new IllegalArgumentException(event.toString());
        };
    return terms.toString();
  }

  /** Half the time the rows are typed anew too, as one does who searches and replaces. */
  private LifeTerms renamed(String person, LifeEvent event) {
    LifeTerms after = terms.renamed(person, event.two() % 2 == 0);
    if (event.three() % 2 == 0) {
      rows.stream()
          .filter(row -> row.owner.equals(terms.now(person)))
          .forEach(row -> row.owner = after.now(person));
    }
    return after;
  }

  private String one(LifeEvent event, Predicate<LifeRow> which, Consumer<LifeRow> change) {
    List<LifeRow> from = rows.stream().filter(which).toList();
    if (from.isEmpty()) {
      return NOTHING;
    }
    LifeRow row = from.get(event.of(from.size()));
    row.change(change);
    rows.remove(row);
    rows.add(0, row);
    return said(row);
  }

  private String said(LifeRow row) {
    return "row " + row.name + (row.there ? ": " : " not: ") + row.line(terms);
  }

  /** One row in three is like the one last touched, done to the other horse of that name if any. */
  private String add(LifeEvent event) {
    if (rows.size() == MOST_ROWS) {
      return NOTHING;
    }
    boolean twin = event.two() % 3 == 0 && !rows.isEmpty();
    List<Named> horses =
        twin
            ? HORSES.stream().filter(each -> each.horse().equals(rows.get(0).horse)).toList()
            : HORSES;
    Named horse = horses.get(event.one() % horses.size());
    LifeRow row = new LifeRow(names++, horse.horse(), called(horse), event.three() % 4 == 0);
    row.date = twin ? rows.get(0).date : date(event.two(), event.three());
    row.work = twin ? rows.get(0).work : work(event.three());
    row.cents = cents(event.one(), event.two());
    rows.add(0, row);
    return said(row);
  }

  private String called(Named horse) {
    return horse.person().isEmpty() ? "" : terms.now(horse.person());
  }

  private static String work(int which) {
    return LifeTerms.WORKS.get(which % LifeTerms.WORKS.size());
  }

  /** In one of the months but the last, on few days, so that rows are alike now and then. */
  private static LocalDate date(int month, int day) {
    return MONTHS.get(month % (MONTHS.size() - 1)).atDay(1 + day % 5);
  }

  /** One in four has the list price; one in twenty is free; some have odd cents to be split. */
  private static int cents(int one, int two) {
    return one % 4 == 0 ? -1 : two % 20 == 0 ? 0 : 30_00 + two % 50 * 1_01;
  }

  /** Bess is shared: a row of hers may name a sharer or nobody. A Jet is Adam's or Ruth's. */
  private String owner(LifeRow row, int two) {
    List<String> persons =
        switch (row.horse) {
          case "Bess" -> List.of("", "Adam", "Ruth");
          case "Jet" -> List.of("Adam", "Ruth");
          default -> LifeTerms.PERSONS;
        };
    String person = persons.get(two % persons.size());
    return person.isEmpty() ? "" : terms.now(person);
  }

  private void horse(LifeRow row, int two) {
    Named other = HORSES.get(two % HORSES.size());
    row.horse = other.horse();
    row.owner = called(other);
  }

  private String pay(LifeEvent event, List<String> numbers) {
    List<String> kinds = List.of("payment", "", "deposit", "refund", "written off", "tip");
    boolean names = event.three() % 3 > 0 && !numbers.isEmpty();
    int cents = 1_00 + event.two() % 60 * 1_00;
    Money money =
        new Money(
            date(event.two(), event.one()),
            terms.now(LifeTerms.PERSONS.get(event.one() % LifeTerms.PERSONS.size())),
            event.two() % 7 == 0 ? -cents : cents,
            names ? numbers.get(Math.max(0, numbers.size() - 1 - event.two() % 4)) : "",
            kinds.get(event.one() / 10 % kinds.size()));
    payments.add(money);
    return money.line();
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
                terms.handedOver(row).forEach((who, part) -> paid.merge(who, part, Integer::sum)));
    payments.stream()
        .filter(money -> !money.date().isBefore(from) && !money.date().isAfter(to))
        .forEach(money -> paid.merge(terms.account(money.owner()), money.takenOff(), Integer::sum));
    return paid;
  }

  /** Rows stay where they were typed. */
  void write(Path folder) {
    List<LifeRow> visits =
        rows.stream()
            .filter(row -> row.there)
            .sorted(Comparator.comparingInt(row -> row.name))
            .toList();
    sheets.write(folder, terms, visits, payments);
  }
}
