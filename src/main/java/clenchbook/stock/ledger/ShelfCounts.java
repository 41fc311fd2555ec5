package clenchbook.stock.ledger;

import clenchbook.book.Names;
import clenchbook.book.StockCount;
import clenchbook.jobs.BookIndex;
import clenchbook.jobs.PieceCost;
import clenchbook.jobs.StockKey;
import clenchbook.stock.ledger.StockMovement.CountedUp;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The Counts sheet, shelf by shelf and day by day.
 *
 * <p>Sizes that share one shelf, for want of rows of their own, are counted size by size: their
 * counts of one day add up to the shelf's. One size counted twice on a day stands as counted last.
 */
public final class ShelfCounts {

  private ShelfCounts() {}

  private record ShelfDay(LocalDate date, StockKey shelf) {}

  /**
   * Gives the counts.
   *
   * @param index the book
   * @return one for each shelf and day, by day, then as first written; a count below none is none
   */
  public static List<CountedUp> of(BookIndex index) {
    Map<ShelfDay, Map<String, BigDecimal>> bySize = new LinkedHashMap<>();
    index.book().counts().stream()
        .filter(count -> !count.item().isEmpty())
        .sorted(Comparator.comparing(StockCount::date).thenComparing(StockCount::source))
        .forEach(
            count ->
                bySize
                    .computeIfAbsent(
                        new ShelfDay(count.date(), shelf(index, count)),
                        day -> new LinkedHashMap<>())
                    .put(Names.key(count.size()), count.quantity().max(BigDecimal.ZERO)));
    return bySize.entrySet().stream()
        .map(entry -> counted(index, entry.getKey(), entry.getValue()))
        .toList();
  }

  private static StockKey shelf(BookIndex index, StockCount count) {
    return index
        .materials()
        .findKey(count.item(), count.size())
        .map(index.materials()::shelf)
        .orElse(new StockKey(count.item(), count.size()));
  }

  private static CountedUp counted(BookIndex index, ShelfDay day, Map<String, BigDecimal> sizes) {
    BigDecimal pieces = sizes.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal list =
        index
            .materials()
            .find(day.shelf(), day.date())
            .or(() -> index.materials().any(day.shelf()))
            .flatMap(PieceCost::list)
            .orElse(BigDecimal.ZERO);
    return new CountedUp(day.date(), day.shelf(), pieces, list);
  }
}
