package clenchbook.duelist;

import clenchbook.report.Block;
import clenchbook.report.Block.Column;
import clenchbook.report.Block.Heading;
import clenchbook.report.Block.Row;
import clenchbook.report.Block.Table;
import clenchbook.report.Report;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The sheet to print and take along: what each horse had on last time, place by place. */
final class HorseSheet {

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("Horse", 10),
          Column.words("Owner", 12),
          Column.words("Last", 13),
          Column.words("Work", 11),
          Column.words("Shoe", 12),
          Column.words("Size", 9),
          Column.number("Shoes", 8),
          Column.number("Nails", 8),
          Column.words("Extras", 9),
          Column.words("Notes", 12),
          Column.words("Due", 13));

  private HorseSheet() {}

  static Report of(List<HorseCard> cards, YearMonth month, String business) {
    Map<String, List<Row>> places = new LinkedHashMap<>();
    for (HorseCard card : cards) {
      places
          .computeIfAbsent(Words.placeOrNone(card.due().place()), place -> new ArrayList<>())
          .add(row(card));
    }
    List<Block> blocks = new ArrayList<>();
    places.forEach(
        (place, rows) -> {
          blocks.add(new Heading(1, place));
          blocks.add(new Table("", COLUMNS, rows));
        });
    if (blocks.isEmpty()) {
      blocks.add(new Block.Paragraph("No horse has been seen yet."));
    }
    String subtitle = Words.month(month) + (business.isEmpty() ? "" : " · " + business);
    return new Report("horses", "What each horse had on last time", subtitle, "", blocks);
  }

  private static Row row(HorseCard card) {
    DueHorse horse = card.due();
    String notes =
        horse.horseNotes().isEmpty() || card.notes().isEmpty()
            ? horse.horseNotes() + card.notes()
            : horse.horseNotes() + "; " + card.notes();
    return Row.of(
        horse.id().name(),
        horse.owner(),
        Words.date(horse.last()),
        card.work(),
        card.shoe(),
        card.size(),
        Integer.toString(card.shoes()),
        Integer.toString(card.nails()),
        card.extras(),
        notes,
        Words.date(horse.due()));
  }
}
