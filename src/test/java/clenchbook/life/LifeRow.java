package clenchbook.life;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

/** A row of Visits. */
final class LifeRow {
  private static final int AT_THE_TRUCK = 5_01;

  final int name;
  final int paid;
  String horse;
  String owner;
  LocalDate date = LocalDate.EPOCH;
  String work = "";

  /** 0 and more, less for the list price. */
  int cents;

  boolean there = true;
  boolean held;
  boolean cancelled;

  private Consumer<LifeRow> back = row -> {};
  private boolean changed;

  LifeRow(int name, String horse, String owner, boolean paidAtTruck) {
    this.name = name;
    this.horse = horse;
    this.owner = owner;
    this.paid = paidAtTruck ? AT_THE_TRUCK : 0;
  }

  /**
   * A day, horse and Work: what rows that are alike have in common. Two owners have a Jet each; a
   * Star whose owner is put right is one horse all the while.
   */
  record Group(LocalDate date, String horse, String work) {
    static Group of(LocalDate date, String horse, String work, String owner) {
      String key = horse.toLowerCase(Locale.ROOT);
      return new Group(
          date,
          key.equals("jet") ? key + " of " + LifeTerms.person(owner) : key,
          work.toLowerCase(Locale.ROOT));
    }
  }

  /** Changes the row, so that the change can be undone. */
  void change(Consumer<LifeRow> change) {
    String horseBefore = horse;
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
          row.horse = horseBefore;
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
    return horse.equals("Star") || horse.equals("Bess") || horse.equals("Jet");
  }

  Group group(LifeTerms terms) {
    return Group.of(date, terms.horse(horse), work, owner);
  }

  int amount(LifeTerms terms) {
    return cents >= 0 ? cents : terms.listPrice(work);
  }

  /** Who is to be billed how much. */
  Map<String, Integer> parts(LifeTerms terms) {
    return terms.parts(this, amount(terms));
  }

  String line(LifeTerms terms) {
    return String.join(
        ",",
        held ? "soon" : date.toString(),
        owner,
        terms.horse(horse),
        work,
        cents < 0 ? "" : LifeSheets.text(cents),
        paid == 0 ? "" : LifeSheets.text(paid),
        cancelled ? "cancelled" : "");
  }
}
