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
        text.say("schedule.horses.label"),
        text.say("schedule.horses"),
        text.month(month) + (business.isEmpty() ? "" : " · " + business),
        "",
        Optional.of(sheet.first(cards, limit)),
        cards.isEmpty() ? List.of() : List.of(sheet.table(cards)),
        List.of(),
        text.texts());
  }

  private FirstPage first(List<HorseCard> cards, Optional<Integer> limit) {
    if (cards.isEmpty()) {
      return FirstPage.of(text.say("schedule.horses.none"), Optional.empty(), List.of());
    }
    int overdue = due.overdue().size();
    int coming = weeks.stream().mapToInt(WeekAhead::horses).sum();
    String sentence =
        overdue == 0
            ? text.say("schedule.horses.noneOverdue", coming)
            : text.say("schedule.horses.overdue", overdue, coming);
    return FirstPage.of(sentence, Optional.of(picture()), toDo(limit));
  }

  private Block.Picture picture() {
    List<String> names = weeks.stream().map(week -> DuePages.weekName(week, text)).toList();
    List<Integer> horses = weeks.stream().map(WeekAhead::horses).toList();
    return new Block.Picture(
        text.say("schedule.horses.weeks"),
        text.say(
            "schedule.horses.fullest", horses.stream().mapToInt(count -> count).max().orElse(0)),
        new Chart.Columns(
            "",
            "",
            names,
            List.of(
                new Chart.Series(
                    text.say("schedule.horses.visits"),
                    horses.stream().map(Integer::doubleValue).toList(),
                    horses.stream().map(text::count).toList())),
            false,
            true,
            List.of()));
  }

  private List<String> toDo(Optional<Integer> limit) {
    List<String> things = new ArrayList<>();
    if (!due.overdue().isEmpty()) {
      things.add(call(due.overdue()));
    }
    if (!due.goneQuiet().isEmpty()) {
      things.add(askAfter(due.goneQuiet()));
    }
    limit.flatMap(this::crowded).ifPresent(things::add);
    return things;
  }

  private String call(List<DueHorse> horses) {
    List<String> names =
        named(horses, horse -> text.say("schedule.horses.daysOverdue", horse.daysOverdue()));
    int more = horses.size() - names.size();
    return more == 0
        ? text.say("schedule.horses.call", names)
        : text.say("schedule.horses.callMore", names, more);
  }

  private String askAfter(List<DueHorse> horses) {
    List<String> names =
        named(horses, horse -> text.say("schedule.horses.last", text.shortDay(horse.lastSeen())));
    int more = horses.size() - names.size();
    return more == 0
        ? text.say("schedule.horses.ask", names)
        : text.say("schedule.horses.askMore", names, more);
  }

  /** The first few by name. */
  private static List<String> named(List<DueHorse> horses, Function<DueHorse, String> what) {
    return horses.stream()
        .limit(NAMED)
        .map(horse -> "%s (%s, %s)".formatted(horse.id().name(), horse.owner(), what.apply(horse)))
        .toList();
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
        : Optional.of(text.say("schedule.limit.spread", most, days));
  }

  /** One table, so that it breaks where the page ends; a place is a row that heads its horses. */
  private Block.Table table(List<HorseCard> cards) {
    Map<String, List<HorseCard>> places = new LinkedHashMap<>();
    for (HorseCard card : cards) {
      places
          .computeIfAbsent(
              DuePages.placeOrNone(card.due().place(), text), place -> new ArrayList<>())
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
            Column.words(text.say("schedule.column.horse"), 11),
            Column.words(text.say("schedule.column.owner"), 19),
            Column.words(text.say("schedule.column.last"), 7),
            Column.words(text.say("schedule.column.hadOn"), 30),
            Column.words(text.say("schedule.column.extrasAndNotes"), 27),
            Column.words(text.say("schedule.column.due"), 6)),
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
  private String hadOn(HorseCard card) {
    if (card.shoes() == 0) {
      return card.work();
    }
    return Stream.of(
            card.shoe().isEmpty() ? card.work() : parts(card.shoe(), 0),
            parts(card.size(), card.shoes()),
            card.nails() == 0 ? "" : text.say("schedule.horses.nails", card.nails()))
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
