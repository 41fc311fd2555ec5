package clenchbook.schedule;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.Block.Heading;
import clenchbook.reports.blocks.Block.Table;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.blocks.TableOf;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sheet to print and take along: what each horse had on last time, place by place. */
final class HorseSheet {

  private HorseSheet() {}

  static Report of(List<HorseCard> cards, YearMonth month, String business) {
    Map<String, List<HorseCard>> places = new LinkedHashMap<>();
    for (HorseCard card : cards) {
      places
          .computeIfAbsent(ScheduleText.placeOrNone(card.due().place()), place -> new ArrayList<>())
          .add(card);
    }
    List<Block> blocks = new ArrayList<>();
    places.forEach(
        (place, horses) -> {
          blocks.add(new Heading(1, place));
          blocks.add(table(horses));
        });
    if (blocks.isEmpty()) {
      blocks.add(new Block.Paragraph("No horse has been seen yet."));
    }
    String subtitle = ScheduleText.month(month) + (business.isEmpty() ? "" : " · " + business);
    return new Report("horses", "What each horse had on last time", subtitle, "", blocks);
  }

  private static Table table(List<HorseCard> cards) {
    return TableOf.rows(cards)
        .words("Horse", 10, card -> card.due().id().name())
        .words("Owner", 12, card -> card.due().owner())
        .words("Last", 13, card -> ScheduleText.date(card.due().last()))
        .words("Work", 11, HorseCard::work)
        .words("Shoe", 12, HorseCard::shoe)
        .words("Size", 9, HorseCard::size)
        .count("Shoes", 8, HorseCard::shoes)
        .count("Nails", 8, HorseCard::nails)
        .words("Extras", 9, HorseCard::extras)
        .words("Notes", 12, HorseSheet::notes)
        .words("Due", 13, card -> ScheduleText.date(card.due().due()))
        .plain();
  }

  private static String notes(HorseCard card) {
    return Stream.of(card.due().horseNotes(), card.notes())
        .filter(notes -> !notes.isEmpty())
        .collect(Collectors.joining("; "));
  }
}
