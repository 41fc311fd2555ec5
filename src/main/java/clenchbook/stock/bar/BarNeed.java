package clenchbook.stock.bar;

import clenchbook.book.Material;
import clenchbook.jobs.FittedPart;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.MaterialList;
import clenchbook.jobs.StockKey;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.schedule.due.UsualVisit;
import clenchbook.stock.ledger.StockMovements;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Lengths of one bar that the shoes of a coming period need.
 *
 * @param bar the bar's row of Materials
 * @param shoe the handmade shoe
 * @param lengthMm bar in one shoe
 * @param cutMm lost by one cut
 * @param count how many shoes
 * @param horses the horses they are for, each once, in order
 */
public record BarNeed(
    Material bar,
    StockKey shoe,
    BigDecimal lengthMm,
    BigDecimal cutMm,
    int count,
    List<String> horses) {

  /** By bar, then the longest first, then by shoe. */
  static final Comparator<BarNeed> ORDER =
      Comparator.comparing((BarNeed need) -> need.barShelf())
          .thenComparing(BarNeed::lengthMm, Comparator.reverseOrder())
          .thenComparing(BarNeed::shoe);

  /** Copies the horses. */
  public BarNeed {
    horses = List.copyOf(horses);
  }

  /** Gives the bar's shelf. */
  public StockKey barShelf() {
    return new StockKey(bar.item(), bar.size());
  }

  /**
   * Adds up what the horses due in a period need, from the new shoes each usually gets.
   *
   * <p>An overdue horse counts as due at the period's start; one whose interval is short counts
   * each time it comes due. Shoes whose Length or Bar is not given are left out.
   *
   * @param due the due list; the period starts the day after it
   * @param end the period's last day, inclusive
   */
  public static List<BarNeed> of(Jobs jobs, DueDates due, LocalDate end) {
    Map<StockKey, BarNeed> needs = new TreeMap<>();
    for (DueHorse horse : due.expected()) {
      int times = timesDue(horse, end);
      if (times > 0) {
        for (Job row : UsualVisit.of(horse).rows()) {
          row.parts().forEach(part -> add(needs, jobs, due.asAt(), part, times, horse));
        }
      }
    }
    return needs.values().stream().sorted(ORDER).toList();
  }

  static int timesDue(DueHorse horse, LocalDate end) {
    LocalDate start = horse.asAt().plusDays(1);
    LocalDate date = horse.due().isBefore(start) ? start : horse.due();
    int times = 0;
    while (!date.isAfter(end)) {
      times++;
      date = horse.interval().after(date);
    }
    return times;
  }

  private static void add(
      Map<StockKey, BarNeed> needs,
      Jobs jobs,
      LocalDate asAt,
      FittedPart part,
      int times,
      DueHorse horse) {
    if (part.newCount() == 0 || part.item().isEmpty()) {
      return;
    }
    MaterialList materials = jobs.index().materials();
    StockKey key = new StockKey(part.item(), part.size());
    materials
        .find(key, asAt)
        .or(part::material)
        .filter(shoe -> shoe.lengthMm().isPresent())
        .flatMap(
            shoe ->
                StockMovements.bar(materials, shoe, asAt)
                    .map(bar -> need(bar, key, shoe, part.newCount() * times, horse)))
        .ifPresent(need -> needs.merge(key, need, BarNeed::plus));
  }

  private static BarNeed need(
      Material bar, StockKey key, Material shoe, int count, DueHorse horse) {
    return new BarNeed(
        bar,
        key,
        shoe.lengthMm().orElseThrow(),
        shoe.cutMm().orElse(BigDecimal.ZERO),
        count,
        List.of(horse.id().name()));
  }

  private BarNeed plus(BarNeed other) {
    List<String> all = new ArrayList<>(horses);
    other.horses.stream().filter(name -> !all.contains(name)).forEach(all::add);
    return new BarNeed(bar, shoe, lengthMm, cutMm, count + other.count, all);
  }
}
