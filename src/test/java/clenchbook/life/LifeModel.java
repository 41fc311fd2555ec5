package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.life.LifeRow.Group;
import clenchbook.life.LifeRow.Own;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A plain model of what each owner owes. It knows nothing of numbers, drafts and credit notes: it
 * remembers, at each command, what every row asked of whom. In the end a row has to be billed as
 * one like it asked at one of the commands, since prices, shares and owners that changed afterwards
 * touch drafts only.
 */
final class LifeModel {
  private final Map<Asking, Set<Map<String, Integer>>> asked = new HashMap<>();
  private final Map<Group, Map<Integer, Integer>> most = new HashMap<>();
  private final Map<String, Map<Integer, Set<Place>>> places = new HashMap<>();
  private final Map<String, Integer> dearest = new HashMap<>();

  /**
   * What a row itself says: rows that are alike are one to the program, whoever typed them when.
   */
  private record Asking(String horse, Own own) {
    static Asking of(LifeRow row) {
      return new Asking(row.horse, row.own());
    }
  }

  /**
   * Where a row stood, and who was to pay: where two of day, Work and payers change in one step, it
   * is another visit.
   */
  private record Place(LocalDate date, String work, Set<String> payers) {
    static Place of(LifeRow row, LifeRow.Terms terms) {
      return new Place(row.date, row.work, row.parts(terms).keySet());
    }

    boolean like(Place other) {
      boolean near = Math.abs(ChronoUnit.DAYS.between(date, other.date)) <= 31;
      boolean moved = date.equals(other.date) || (work.equals(other.work) && near);
      boolean stayed = date.equals(other.date) && work.equals(other.work);
      return stayed || (moved && payers.stream().anyMatch(other.payers::contains));
    }
  }

  /** Remembers what the book asks for now. */
  void meets(LifeBook book) {
    for (LifeRow row : book.rows()) {
      if (row.counts()) {
        asked
            .computeIfAbsent(Asking.of(row), unused -> new HashSet<>())
            .add(bare(row.parts(book.terms())));
        int amount = row.amount(book.terms());
        most.computeIfAbsent(row.group(), unused -> new HashMap<>())
            .merge(row.name, amount, Math::max);
        places
            .computeIfAbsent(row.group().horse(), unused -> new HashMap<>())
            .computeIfAbsent(row.name, unused -> new HashSet<>())
            .add(Place.of(row, book.terms()));
        dearest.merge(row.group().horse(), amount, Math::max);
      }
    }
  }

  /** What documents that are out ask of each owner, by day, horse and Work. */
  static Map<Group, Map<String, Integer>> billed(List<BilledDocument> documents) {
    Map<Group, Map<String, Integer>> billed = new HashMap<>();
    for (BilledDocument document : documents) {
      if (document.state().fixed()) {
        for (DocumentLine line : document.lines()) {
          Group group = new Group(line.visit().date(), line.visit().horse(), line.visit().work());
          billed
              .computeIfAbsent(group, unused -> new TreeMap<>())
              .merge(document.owner(), cents(line.amount()), Integer::sum);
        }
      }
    }
    return billed;
  }

  static int cents(BigDecimal amount) {
    return amount.movePointRight(2).intValueExact();
  }

  /**
   * More than rows ever asked for, or less than nothing, for a day, horse and Work, or more than
   * the visits of a horse in all, which may have moved to other days; empty when all is well. What
   * was asked for at most counts, since only a later month takes back what has changed.
   */
  Optional<String> tooMuch(List<BilledDocument> documents) {
    Map<String, Integer> left = new TreeMap<>();
    billed(documents)
        .forEach(
            (group, byOwner) -> {
              int mostOfRows =
                  most.getOrDefault(group, Map.of()).values().stream()
                      .mapToInt(Integer::intValue)
                      .sum();
              left.put(group.toString(), sum(byOwner) < 0 ? -1 : mostOfRows - sum(byOwner));
              left.merge(group.horse(), -sum(byOwner), Integer::sum);
            });
    places.forEach(
        (horse, rows) ->
            left.computeIfPresent(
                horse,
                (unused, billed) ->
                    billed
                        + dearest.getOrDefault(horse, 0)
                            * rows.values().stream().mapToInt(LifeModel::mostAtOnce).sum()));
    return left.entrySet().stream()
        .filter(entry -> entry.getValue() < 0)
        .map(entry -> entry.getKey() + " is billed at " + -entry.getValue() + " too much")
        .findFirst();
  }

  /** How many visits can be out at once for a row that stood at these places. */
  private static int mostAtOnce(Set<Place> places) {
    return mostAtOnce(List.copyOf(places));
  }

  private static int mostAtOnce(List<Place> from) {
    int most = 0;
    for (Place place : from) {
      List<Place> others =
          from.subList(from.indexOf(place) + 1, from.size()).stream()
              .filter(other -> !place.like(other))
              .toList();
      most = Math.max(most, 1 + mostAtOnce(others));
    }
    return most;
  }

  private static int sum(Map<String, Integer> byOwner) {
    return byOwner.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Where what is out is not what the rows ask for, once everything has been run and sent. */
  Optional<String> unsettled(LifeBook book, List<BilledDocument> documents) {
    Map<Group, Map<String, Integer>> billed = billed(documents);
    Map<Group, Set<Map<String, Integer>>> owed = new HashMap<>();
    for (LifeRow row : book.rows()) {
      if (row.counts()) {
        owed.merge(row.group(), asked.getOrDefault(Asking.of(row), Set.of()), LifeModel::together);
      }
    }
    Set<Group> groups = new HashSet<>(billed.keySet());
    groups.addAll(owed.keySet());
    return groups.stream()
        .filter(
            group ->
                !owed.getOrDefault(group, Set.of(Map.of()))
                    .contains(bare(billed.getOrDefault(group, Map.of()))))
        .map(
            group ->
                "in the end "
                    + group
                    + " is billed at "
                    + billed.getOrDefault(group, Map.of())
                    + ", its rows ask for one of "
                    + owed.getOrDefault(group, Set.of()))
        .sorted()
        .findFirst();
  }

  /** Each of one with each of the other. */
  private static Set<Map<String, Integer>> together(
      Set<Map<String, Integer>> one, Set<Map<String, Integer>> other) {
    Set<Map<String, Integer>> sums = new HashSet<>();
    for (Map<String, Integer> first : one) {
      for (Map<String, Integer> second : other) {
        Map<String, Integer> sum = new TreeMap<>(first);
        second.forEach((owner, cents) -> sum.merge(owner, cents, Integer::sum));
        sums.add(bare(sum));
      }
    }
    return sums;
  }

  /** Without those who owe nothing. */
  private static Map<String, Integer> bare(Map<String, Integer> byOwner) {
    Map<String, Integer> bare = new TreeMap<>(byOwner);
    bare.values().removeIf(cents -> cents == 0);
    return bare;
  }
}
