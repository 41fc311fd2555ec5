package clenchbook.schedule;

import clenchbook.book.Names;
import clenchbook.jobs.FittedPart;
import clenchbook.jobs.Job;
import clenchbook.jobs.UsedItem;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a horse had put on last time.
 *
 * @param due the horse with its dates
 * @param work the Works of the visit
 * @param shoe the shoe, or the shoes with their counts where there are several: {@code A: 2; B: 2}
 * @param size the size, or the sizes with their counts
 * @param shoes how many were nailed on
 * @param nails how many nails were driven
 * @param nail the nail; empty when not known
 * @param extras the extras with their counts
 * @param shaping how the shoes were shaped
 * @param notes what the visit's rows note
 */
public record HorseCard(
    DueHorse due,
    String work,
    String shoe,
    String size,
    int shoes,
    int nails,
    String nail,
    String extras,
    String shaping,
    String notes) {

  /** By place, then horse and owner. */
  static final Comparator<HorseCard> BY_PLACE =
      Comparator.comparing((HorseCard card) -> card.due().place(), Names.ORDER)
          .thenComparing(card -> card.due().id());

  /** Makes the cards of all horses of a list, by place and horse. */
  static List<HorseCard> of(DueDates due) {
    return due.horses().stream().map(HorseCard::of).sorted(BY_PLACE).toList();
  }

  private static HorseCard of(DueHorse horse) {
    List<Job> rows = horse.lastVisit();
    List<FittedPart> parts = rows.stream().flatMap(row -> row.parts().stream()).toList();
    return new HorseCard(
        horse,
        joined(rows, Job::workName),
        counted(parts, FittedPart::item),
        counted(parts, FittedPart::size),
        rows.stream().mapToInt(Job::shoes).sum(),
        rows.stream().mapToInt(Job::nailCount).sum(),
        joined(rows.stream().flatMap(row -> row.nails().stream()).toList(), HorseCard::itemAndSize),
        rows.stream()
            .flatMap(row -> row.extras().stream())
            .map(extra -> itemAndSize(extra) + ": " + extra.count())
            .collect(Collectors.joining("; ")),
        joined(
            rows.stream().filter(row -> row.shoes() > 0).toList(),
            row -> row.shaping().map(shaping -> shaping.word()).orElse("")),
        joined(rows, row -> row.visit().notes()));
  }

  private static String itemAndSize(UsedItem item) {
    return item.size().isEmpty() ? item.item() : item.item() + " " + item.size();
  }

  private static <R> String joined(List<R> rows, Function<R, String> text) {
    return rows.stream()
        .map(text)
        .filter(part -> !part.isEmpty())
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String counted(List<FittedPart> parts, Function<FittedPart, String> text) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    parts.stream()
        .filter(part -> !text.apply(part).isEmpty())
        .forEach(part -> counts.merge(text.apply(part), part.count(), Integer::sum));
    if (counts.size() == 1) {
      return counts.keySet().iterator().next();
    }
    List<String> words = new ArrayList<>();
    counts.forEach((name, count) -> words.add(name + ": " + count));
    return String.join("; ", words);
  }
}
