package clenchbook.life;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What does not stand in rows of Visits: shares, list prices, what owners are called, who has Dot.
 * A change of it touches drafts only.
 *
 * @param ruthsShare of Bess, in per cent; the rest is Adam's
 * @param prices by Work, in cents
 * @param called which of their names each person bears now
 * @param linked those whose earlier names stand under Formerly
 * @param dotty whether Dot is called Dotty now, in every sheet
 * @param dotsOwner who has Dot, until she is sold
 * @param sold the day from which Ivo has her; the end of time while she is not sold
 */
record LifeTerms(
    int ruthsShare,
    Map<String, Integer> prices,
    Map<String, Integer> called,
    Set<String> linked,
    boolean dotty,
    String dotsOwner,
    LocalDate sold) {
  static final List<String> PERSONS = List.of("Adam", "Ivo", "Maeve", "Ruth");
  static final List<String> WORKS = List.of("Full set", "Trim");
  private static final List<String> NAMES = List.of("", " Finch", " Ash");
  private static final int WHOLE = 100;

  LifeTerms {
    prices = Map.copyOf(prices);
    called = Map.copyOf(called);
    linked = Set.copyOf(linked);
  }

  static LifeTerms first() {
    return new LifeTerms(
        50,
        Map.of(WORKS.get(0), 100_00, WORKS.get(1), 40_00),
        Map.of(),
        Set.of(),
        false,
        "Maeve",
        LocalDate.MAX);
  }

  LifeTerms share(int ruths) {
    return new LifeTerms(ruths, prices, called, linked, dotty, dotsOwner, sold);
  }

  LifeTerms price(String work, int cents) {
    Map<String, Integer> all = new TreeMap<>(prices);
    all.put(work, cents);
    return new LifeTerms(ruthsShare, all, called, linked, dotty, dotsOwner, sold);
  }

  /** The person takes the next of their names, with a word in Formerly or without. */
  LifeTerms renamed(String person, boolean formerly) {
    Map<String, Integer> all = new TreeMap<>(called);
    all.merge(person, 1, (one, other) -> (one + other) % NAMES.size());
    return new LifeTerms(ruthsShare, prices, all, linked, dotty, dotsOwner, sold)
        .linked(person, formerly);
  }

  LifeTerms linked(String person, boolean formerly) {
    Set<String> all = new HashSet<>(linked);
    if (formerly) {
      all.add(person);
    } else {
      all.remove(person);
    }
    return new LifeTerms(ruthsShare, prices, called, all, dotty, dotsOwner, sold);
  }

  LifeTerms dotRenamed() {
    return new LifeTerms(ruthsShare, prices, called, linked, !dotty, dotsOwner, sold);
  }

  LifeTerms dotIs(String owner) {
    return new LifeTerms(ruthsShare, prices, called, linked, dotty, owner, LocalDate.MAX);
  }

  LifeTerms dotSold(LocalDate from) {
    return new LifeTerms(ruthsShare, prices, called, linked, dotty, "Maeve", from);
  }

  /** What a person is called now. */
  String now(String person) {
    return person + NAMES.get(called.getOrDefault(person, 0));
  }

  /** Whoever is or was called so. */
  static String person(String name) {
    return name.split(" ", 2)[0];
  }

  /** The names that Formerly lists for a person, with semicolons; empty for none. */
  String formerly(String person) {
    return linked.contains(person)
        ? String.join(
            "; ",
            NAMES.stream()
                .map(more -> person + more)
                .filter(name -> !name.equals(now(person)))
                .toList())
        : "";
  }

  /** Whose account a name means: an earlier name that Formerly lists means the one of now. */
  String account(String name) {
    return linked.contains(person(name)) ? now(person(name)) : name;
  }

  String horse(String horse) {
    return dotty && horse.equals("Dot") ? "Dotty" : horse;
  }

  int listPrice(String work) {
    return prices.getOrDefault(work, 0);
  }

  /** Who pays how much of an amount for a row. */
  Map<String, Integer> parts(LifeRow row, int whole) {
    String typed = account(row.owner);
    return switch (row.horse) {
      case "Bess" -> bess(typed, whole);
      case "Jet", "Star" -> Map.of(typed, whole);
      case "Dot" -> Map.of(now(row.date.isBefore(sold) ? dotsOwner : "Ivo"), whole);
      default -> Map.of(now("Maeve"), whole);
    };
  }

  /** A name that is none of the sharers' pays all. */
  private Map<String, Integer> bess(String typed, int whole) {
    List<String> sharers = List.of(now("Ruth"), now("Adam"));
    if (!typed.isEmpty() && !sharers.contains(typed)) {
      return Map.of(typed, whole);
    }
    int ruths =
        new BigDecimal(whole)
            .multiply(new BigDecimal(ruthsShare))
            .divide(new BigDecimal(WHOLE), 0, RoundingMode.HALF_UP)
            .intValueExact();
    return Map.of(sharers.get(0), ruths, sharers.get(1), whole - ruths);
  }

  /**
   * Whose the money is that was taken at the truck: the sharer's whom the row names, else all's.
   */
  Map<String, Integer> handedOver(LifeRow row) {
    return row.horse.equals("Bess") && !row.owner.isEmpty()
        ? Map.of(account(row.owner), row.paid)
        : parts(row, row.paid);
  }
}
