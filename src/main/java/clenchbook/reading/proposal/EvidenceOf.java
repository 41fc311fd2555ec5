package clenchbook.reading.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gathers what the cells of a table's columns tell, alone and beside each other. */
final class EvidenceOf {
  private static final int FOLLOWS = 95;

  private EvidenceOf() {}

  static List<Evidence> columns(TableContents table, KnownValues known) {
    List<ColumnProfile> profiles = table.columns().stream().map(ColumnProfile::of).toList();
    RowSums sums = RowSums.of(profiles);
    int rows = profiles.stream().mapToInt(ColumnProfile::filled).max().orElse(0);
    int first = table.columns().stream().mapToInt(EvidenceOf::first).min().orElse(0);
    List<Evidence> evidence = new ArrayList<>();
    for (int i = 0; i < profiles.size(); i++) {
      ColumnProfile profile = profiles.get(i);
      int settles = 0;
      int settled = 0;
      for (ColumnProfile other : profiles) {
        settles += other != profile && settles(profile, other) ? 1 : 0;
        settled += other != profile && settles(other, profile) ? 1 : 0;
      }
      boolean leads = first(table.columns().get(i)) == first;
      evidence.add(
          new Evidence(
              profile,
              known,
              rows,
              sums.isSum(i),
              sums.isBase(i),
              sums.isRunning(i),
              settles,
              settled,
              leads));
    }
    return evidence;
  }

  private static int first(Column column) {
    return column.cells().isEmpty() ? Integer.MAX_VALUE : column.cells().firstKey();
  }

  /** Whether a column of names gives another one that has fewer. */
  private static boolean settles(ColumnProfile one, ColumnProfile follows) {
    boolean fewer = follows.distinct() < one.distinct() && follows.distinct() > 1;
    return fewer && isNames(one) && isNames(follows) && follow(one, follows) >= FOLLOWS;
  }

  private static boolean isNames(ColumnProfile profile) {
    return profile.share(Trait.TEXT) >= 80
        && profile.share(Trait.LONG) < 40
        && profile.distinct() > 1
        && profile.distinct() * 3 <= profile.filled() * 2;
  }

  /** Of a hundred rows, how many have the value that is usual beside theirs. */
  private static int follow(ColumnProfile one, ColumnProfile other) {
    Map<String, Map<String, Integer>> beside = new HashMap<>();
    int rows = 0;
    for (Map.Entry<Integer, String> text : one.texts().entrySet()) {
      String value = other.texts().get(text.getKey());
      if (value != null) {
        rows++;
        beside.computeIfAbsent(text.getValue(), k -> new HashMap<>()).merge(value, 1, Integer::sum);
      }
    }
    int usual =
        beside.values().stream()
            .mapToInt(values -> values.values().stream().mapToInt(n -> n).max().orElse(0))
            .sum();
    return rows == 0 ? 0 : usual * 100 / rows;
  }
}
