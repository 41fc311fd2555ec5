package clenchbook.reports.blocks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.values.Basis;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a table of a report is to look like; common practice, no source. */
class TableOfTest {
  private record Nail(String name, int boxes, BigDecimal cost, Optional<String> reorder) {}

  private static final List<Nail> NAILS =
      List.of(
          new Nail("E4", 3, new BigDecimal("41.50"), Optional.of("2")),
          new Nail("E5", 1, new BigDecimal("14.00"), Optional.empty()));

  private static TableOf<Nail> table(List<Nail> nails) {
    return TableOf.rows(nails)
        .words("Nail", 4, Nail::name)
        .count("Boxes", 1, Nail::boxes)
        .amount("Cost", 2, Nail::cost)
        .figureOrDash("Reorder at", 2, Nail::reorder, nail -> Basis.STANDARD);
  }

  private static Block.Row row(boolean total, Block.Cell... cells) {
    return new Block.Row(List.of(cells), total);
  }

  @Test
  void each_thing_becomes_a_row_under_the_columns_named() {
    Block.Table table = table(NAILS).captioned("Nails");

    assertEquals("Nails", table.caption());
    assertEquals(
        List.of(
            Block.Column.words("Nail", 4),
            Block.Column.number("Boxes", 1),
            Block.Column.number("Cost", 2),
            Block.Column.number("Reorder at", 2)),
        table.columns());
    assertEquals(
        row(
            false,
            Block.Cell.of("E4"),
            Block.Cell.of("3"),
            Block.Cell.of("41.50"),
            Block.Cell.of("2", Basis.STANDARD)),
        table.rows().get(0));
  }

  @Test
  void a_figure_that_is_not_there_shows_a_dash_that_rests_on_nothing() {
    assertEquals(Block.Cell.of("–"), table(NAILS).plain().rows().get(1).cells().get(3));
  }

  @Test
  void a_total_made_like_the_rows_bears_its_own_name() {
    Nail whole = new Nail("", 4, new BigDecimal("55.50"), Optional.empty());

    Block.Row last = table(NAILS).total("All", whole).plain().rows().get(2);

    assertEquals(
        row(
            true,
            Block.Cell.of("All"),
            Block.Cell.of("4"),
            Block.Cell.of("55.50"),
            Block.Cell.of("–")),
        last);
  }

  @Test
  void a_total_in_words_stands_last_and_rows_that_are_totals_are_set_apart() {
    Block.Table table =
        table(NAILS)
            .total("In all", "4", "55.50", "")
            .totalsWhere(nail -> nail.name().equals("E5"))
            .plain();

    assertEquals(List.of(false, true, true), table.rows().stream().map(Block.Row::total).toList());
    assertEquals(Block.Row.total("In all", "4", "55.50", ""), table.rows().get(2));
  }

  @Test
  void no_things_leave_the_columns_alone() {
    Block.Table table = table(List.of()).plain();

    assertEquals(4, table.columns().size());
    assertEquals(List.of(), table.rows());
  }
}
