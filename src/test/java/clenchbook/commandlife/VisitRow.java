package clenchbook.commandlife;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A row of Visits as the farrier typed it; money in cents, without tax. */
final class VisitRow {
  /** What the sheet Work asks where a row has no Charge. */
  static final int LIST_PRICE = 48_00;

  static final String SHARED = "Bess";
  static final List<String> SHARERS = List.of("Anna Alder", "Ben Birch");

  final String owner;
  final String horse;
  final boolean paid;
  LocalDate date;
  int charge;
  boolean listPrice;
  boolean deleted;
  boolean cancelled;
  boolean held;

  VisitRow(LocalDate date, String owner, String horse, int charge, boolean paid) {
    this.date = date;
    this.owner = owner;
    this.horse = horse;
    this.charge = charge;
    this.paid = paid;
  }

  boolean counts() {
    return !deleted && !cancelled && !held;
  }

  int asks() {
    return listPrice ? LIST_PRICE : charge;
  }

  /**
   * What was handed over at the truck; it counts on a cancelled row, too, and not on a held one.
   */
  int truck() {
    return paid && !deleted && !held ? 6_00 : 0;
  }

  /** Whose a sum is: the owner's, or half each of the two who share the horse. */
  Map<String, Integer> parts(int cents) {
    return horse.equals(SHARED)
        ? Map.of(SHARERS.get(0), cents / 2, SHARERS.get(1), cents - cents / 2)
        : Map.of(owner, cents);
  }

  /** The day and the horse: what documents name of a visit. */
  String place() {
    return date + " " + horse;
  }

  List<Object> cells() {
    return List.of(
        held ? "soon" : date,
        horse.equals(SHARED) ? "" : owner,
        horse,
        "Trim",
        listPrice ? "" : cents(charge),
        paid ? "6" : "",
        cancelled ? "cancelled" : "");
  }

  static String cents(int cents) {
    return java.math.BigDecimal.valueOf(cents, 2).toPlainString();
  }
}
