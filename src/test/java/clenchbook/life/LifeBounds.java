package clenchbook.life;

import clenchbook.life.LifeRow.Group;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How many visits can be out at once while a life goes on. It is a most, not an exact number: what
 * changed is taken back only when a later month is run, and what changed so much that it is another
 * visit is billed until then beside the first. In the end nothing of this is left.
 */
final class LifeBounds {
  private final Map<Group, Integer> atOnce = new HashMap<>();
  private final Map<Integer, Set<Place>> places = new HashMap<>();

  /** Where a row stood, and who was to pay. */
  private record Place(LocalDate date, String horse, String work, Set<String> payers) {
    static Place of(LifeRow row, LifeTerms terms) {
      return new Place(row.date, terms.horse(row.horse), row.work, row.parts(terms).keySet());
    }

    /** Whether at most one of day, horse and Work differs, and the day by a month at most. */
    boolean like(Place other) {
      long days = Math.abs(ChronoUnit.DAYS.between(date, other.date));
      int changes =
          (days > 0 ? 1 : 0)
              + (horse.equals(other.horse) ? 0 : 1)
              + (work.equals(other.work) ? 0 : 1);
      boolean shared = payers.stream().anyMatch(other.payers::contains);
      return changes == 0 ? shared || !horse.equals("Jet") : changes == 1 && days <= 31 && shared;
    }
  }

  /** Remembers where rows stand now; a row held back still stands where it stood. */
  void meets(LifeBook book) {
    Map<Group, Integer> now = new HashMap<>();
    for (LifeRow row : book.rows()) {
      if (row.there && !row.cancelled) {
        now.merge(row.group(book.terms()), 1, Integer::sum);
      }
      if (row.counts()) {
        places
            .computeIfAbsent(row.name, unused -> new HashSet<>())
            .add(Place.of(row, book.terms()));
      }
    }
    now.forEach((group, rows) -> atOnce.merge(group, rows, Math::max));
  }

  /** More visits of a day, horse and Work, or of a horse in all, than there can be. */
  Optional<String> tooMany(Map<?, List<LiveVisits.Part>> live) {
    Map<Group, Integer> groups = new HashMap<>();
    live.values().forEach(parts -> groups.merge(parts.get(0).group(), 1, Integer::sum));
    for (Map.Entry<Group, Integer> group : groups.entrySet()) {
      if (group.getValue() > atOnce.getOrDefault(group.getKey(), 0)) {
        return Optional.of(group.getKey() + " is billed " + group.getValue() + " times");
      }
    }
    for (Set<String> horses : horses()) {
      int most =
          places.values().stream()
              .filter(each -> each.stream().anyMatch(place -> horses.contains(place.horse())))
              .mapToInt(each -> mostAtOnce(List.copyOf(each)))
              .sum();
      long visits =
          live.values().stream().filter(parts -> horses.contains(parts.get(0).horse())).count();
      if (visits > most) {
        return Optional.of(horses + ": " + visits + " visits are billed, " + most + " at most");
      }
    }
    return Optional.empty();
  }

  /** Horses whose rows never became another's, together with those that they became. */
  private List<Set<String>> horses() {
    List<Set<String>> all = new ArrayList<>();
    for (Set<Place> each : places.values()) {
      Set<String> joined = new HashSet<>();
      each.forEach(place -> joined.add(place.horse()));
      for (Set<String> other : List.copyOf(all)) {
        if (other.stream().anyMatch(joined::contains)) {
          joined.addAll(other);
          all.remove(other);
        }
      }
      all.add(joined);
    }
    return all;
  }

  /** How many visits can be out at once for a row that stood at these places. */
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
}
