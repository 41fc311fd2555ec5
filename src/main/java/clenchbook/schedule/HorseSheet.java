package clenchbook.schedule;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Cell;
import clenchbook.reports.blocks.Block.Column;
import clenchbook.reports.blocks.Block.Row;
import clenchbook.reports.blocks.Chart;
import clenchbook.reports.blocks.FigureText;
import clenchbook.reports.blocks.FirstPage;
import clenchbook.reports.blocks.Report;
import clenchbook.schedule.due.DueDates;
import clenchbook.schedule.due.DueHorse;
import clenchbook.schedule.round.WeekAhead;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The horses: who is overdue, and behind it the sheet to print and take along, with what each horse
 * had on last time, place by place.
 */
final class HorseSheet {
  private static final int NAMED = 5;

  private final DueDates due;
  private final List<WeekAhead> weeks;
  private final FigureText text;

  private HorseSheet(DueDates due, List<WeekAhead> weeks, FigureText text) {
    this.due = due;
    this.weeks = weeks;
    this.text = text;
  }

  static Report of(
      DueDates due,
      List<WeekAhead> weeks,
      Optional<Integer> limit,
      YearMonth month,
      String business,
      FigureText text) {
    HorseSheet sheet = new HorseSheet(due, weeks, text);
    List<HorseCard> cards = HorseCard.of(due);
    return new Report(
        "horses",
        "The horses: who is due, and what each had on",
        "The horses",
        text.month(month) + (business.isEmpty() ? "" : " · " + business),
        "",
        Optional.of(sheet.first(cards, limit)),
        cards.isEmpty() ? List.of() : List.of(sheet.table(cards)),
        List.of());
  }

  private FirstPage first(List<HorseCard> cards, Optional<Integer> limit) {
    if (cards.isEmpty()) {
      return FirstPage.of("No horse has been seen yet.", Optional.empty(), List.of());
    }
    int overdue = due.overdue().size();
    int coming = weeks.stream().mapToInt(WeekAhead::horses).sum();
    String sentence =
        (overdue == 0
                ? "No horse is overdue; %2$s come due in the next four weeks."
                : overdue == 1
                    ? "1 horse is overdue; with it %2$s visits come due in the next four weeks."
                    : "%1$s horses are overdue; with them %2$s visits come due in the next four"
                        + " weeks.")
            .formatted(text.count(overdue), text.count(coming));
    return FirstPage.of(sentence, Optional.of(picture()), toDo(limit));
  }

  private Block.Picture picture() {
    List<String> names = weeks.stream().map(week -> DuePages.weekName(week, text)).toList();
    List<Integer> horses = weeks.stream().map(WeekAhead::horses).toList();
    return new Block.Picture(
        "Visits that come due, week by week",
        "The fullest week has %s visits."
            .formatted(text.count(horses.stream().mapToInt(count -> count).max().orElse(0))),
        new Chart.Columns(
            "",
            "",
            names,
            List.of(
                new Chart.Series(
                    "visits",
                    horses.stream().map(Integer::doubleValue).toList(),
                    horses.stream().map(text::count).toList())),
            false,
            true,
            List.of()));
  }

  private List<String> toDo(Optional<Integer> limit) {
    List<String> things = new ArrayList<>();
    named(due.overdue(), horse -> horse.daysOverdue() + " d")
        .ifPresent(
            names -> things.add("Call about the overdue horses, the longest first: " + names));
    named(due.goneQuiet(), horse -> "last " + text.shortDay(horse.lastSeen()))
        .ifPresent(
            names ->
                things.add(
                    "Ask after horses not seen for two of their intervals, or write an Until in"
                        + " Horses: "
                        + names));
    limit.flatMap(this::crowded).ifPresent(things::add);
    return things;
  }

  /** The first few by name; the rest by their number. */
  private Optional<String> named(List<DueHorse> horses, Function<DueHorse, String> what) {
    if (horses.isEmpty()) {
      return Optional.empty();
    }
    String names =
        horses.stream()
            .limit(NAMED)
            .map(
                horse ->
                    "%s (%s, %s)".formatted(horse.id().name(), horse.owner(), what.apply(horse)))
            .collect(Collectors.joining(", "));
    int more = horses.size() - NAMED;
    return Optional.of(names + (more > 0 ? ", and %s more.".formatted(text.count(more)) : "."));
  }

  private Optional<String> crowded(int most) {
    List<String> days = new ArrayList<>();
    for (WeekAhead week : weeks) {
      week.overLimit()
          .forEach(
              (day, horses) -> days.add("%s (%s)".formatted(text.day(day), text.count(horses))));
    }
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Spread the days on which more horses come due than %s, your limit: %s."
                .formatted(text.count(most), String.join(", ", days)));
  }

  /** One table, so that it breaks where the page ends; a place is a row that heads its horses. */
  private Block.Table table(List<HorseCard> cards) {
    Map<String, List<HorseCard>> places = new LinkedHashMap<>();
    for (HorseCard card : cards) {
      places
          .computeIfAbsent(ScheduleText.placeOrNone(card.due().place()), place -> new ArrayList<>())
          .add(card);
    }
    List<Row> rows = new ArrayList<>();
    places.forEach(
        (place, horses) -> {
          rows.add(Row.total(place, "", "", "", "", ""));
          horses.forEach(card -> rows.add(row(card)));
        });
    return new Block.Table(
        "",
        List.of(
            Column.words("Horse", 11),
            Column.words("Owner", 19),
            Column.words("Last", 7),
            Column.words("What it had on", 30),
            Column.words("Extras and notes", 27),
            Column.words("Due", 6)),
        rows);
  }

  private Row row(HorseCard card) {
    return new Row(
        Stream.of(
                card.due().id().name(),
                card.due().owner().replace(";", ","),
                text.shortDay(card.due().last()),
                hadOn(card),
                notes(card),
                text.shortDay(card.due().due()))
            .map(Cell::of)
            .toList(),
        false);
  }

  /** Such as {@code Concave, 2 × 1, 2 × 0, 24 nails}; the Work where nothing was nailed on. */
  private static String hadOn(HorseCard card) {
    if (card.shoes() == 0) {
      return card.work();
    }
    return Stream.of(
            card.shoe().isEmpty() ? card.work() : parts(card.shoe(), 0),
            parts(card.size(), card.shoes()),
            card.nails() == 0 ? "" : card.nails() + " nails")
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** {@code 1: 2; 0: 2} as {@code 2 × 1, 2 × 0}; one size alone with the number of shoes. */
  static String parts(String counted, int shoes) {
    if (counted.isEmpty()) {
      return "";
    }
    if (!counted.contains(": ")) {
      return shoes == 0 ? counted : shoes + " × " + counted;
    }
    return Stream.of(counted.split("; "))
        .map(part -> part.split(": ", 2))
        .map(part -> part.length == 2 ? part[1] + " × " + part[0] : part[0])
        .collect(Collectors.joining(", "));
  }

  private static String notes(HorseCard card) {
    return Stream.of(
            card.extras().isEmpty() ? "" : parts(card.extras(), 0),
            card.due().horseNotes(),
            card.notes())
        .filter(notes -> !notes.isEmpty())
        .collect(Collectors.joining("; "));
  }
}
