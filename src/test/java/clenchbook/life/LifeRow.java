package clenchbook.life;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

/** A row of Visits, and what it asks of whom by plain arithmetic. */
final class LifeRow {
  static final int WHOLE = 100;
  private static final int AT_THE_TRUCK = 5_01;

  final int name;
  final String horse;
  final int paid;
  String owner;
  LocalDate date = LocalDate.EPOCH;
  String work = "";

  /** 0 and more, less for the list price. */
  int cents;

  boolean there = true;
  boolean held;
  boolean cancelled;

  LifeRow(int name, String horse, String owner, boolean paidAtTruck) {
    this.name = name;
    this.horse = horse;
    this.owner = owner;
    this.paid = paidAtTruck ? AT_THE_TRUCK : 0;
  }

  private Consumer<LifeRow> back = row -> {};
  private boolean changed;

  /** What does not stand in the row itself: Ruth's share of Bess in per cent, the list prices. */
  record Terms(int ruthsShare, Map<String, Integer> prices) {}

  /** What the row itself says of its charge; a change of anything else touches drafts only. */
  record Own(LocalDate date, String work, int cents) {}

  /** A day, horse and Work: what rows that are alike have in common. */
  record Group(LocalDate date, String horse, String work) {}

  /** Changes the row, so that the change can be undone. */
  void change(Consumer<LifeRow> change) {
    LocalDate dateBefore = date;
    String ownerBefore = owner;
    String workBefore = work;
    int centsBefore = cents;
    boolean thereBefore = there;
    boolean heldBefore = held;
    boolean cancelledBefore = cancelled;
    change.accept(this);
    back =
        row -> {
          row.date = dateBefore;
          row.owner = ownerBefore;
          row.work = workBefore;
          row.cents = centsBefore;
          row.there = thereBefore;
          row.held = heldBefore;
          row.cancelled = cancelledBefore;
        };
    changed = true;
  }

  boolean changed() {
    return changed;
  }

  void undo() {
    back.accept(this);
  }

  boolean counts() {
    return there && !held && !cancelled;
  }

  boolean ownerMayChange() {
    return horse.equals("Star") || horse.equals("Bess");
  }

  Own own() {
    return new Own(date, work, cents);
  }

  Group group() {
    return new Group(date, horse.toLowerCase(), work.toLowerCase());
  }

  int amount(Terms terms) {
    return cents >= 0 ? cents : terms.prices().getOrDefault(work, 0);
  }

  /** Who is to be billed how much. */
  Map<String, Integer> parts(Terms terms) {
    return parts(amount(terms), terms);
  }

  /**
   * Whose the money is that was taken at the truck: the sharer's whom the row names, else all's.
   */
  Map<String, Integer> handedOver(Terms terms) {
    return horse.equals("Bess") && !owner.isEmpty() ? Map.of(owner, paid) : parts(paid, terms);
  }

  private Map<String, Integer> parts(int whole, Terms terms) {
    Map<String, Integer> parts = new TreeMap<>();
    switch (horse) {
      case "Bess" -> {
        int ruths =
            new BigDecimal(whole)
                .multiply(new BigDecimal(terms.ruthsShare()))
                .divide(new BigDecimal(WHOLE), 0, RoundingMode.HALF_UP)
                .intValueExact();
        parts.put("Ruth", ruths);
        parts.put("Adam", whole - ruths);
      }
      case "Jet", "Star" -> parts.put(owner, whole);
      default -> parts.put("Maeve", whole);
    }
    return parts;
  }

  String line() {
    return String.join(
            ",",
            held ? "soon" : date.toString(),
            owner,
            horse,
            work,
            cents < 0 ? "" : LifeBook.text(cents),
            paid == 0 ? "" : LifeBook.text(paid),
            cancelled ? "cancelled" : "")
        + "\n";
  }
}
