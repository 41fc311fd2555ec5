package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reports.blocks.Block;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Columns share a page's width so that no word of a heading is cut in two. */
class TableLayoutTest {
  private static final int WIDTH = 500;

  private static TableLayout.Column words(int weight, int word) {
    return new TableLayout.Column(weight, false, false, word);
  }

  private static List<Integer> edges(TableLayout.Column... columns) {
    return new TableLayout(List.of(columns)).edges(WIDTH);
  }

  @Test
  void columns_whose_words_fit_share_by_weight() {
    assertEquals(List.of(0, 100, 300, 500), edges(words(1, 90), words(2, 90), words(2, 90)));
  }

  @Test
  void a_column_too_narrow_for_a_word_takes_it_from_the_others_by_their_weights() {
    // 120 and 6 of air; the rest, 374, is shared as 2 to 3
    assertEquals(List.of(0, 126, 276, 500), edges(words(1, 120), words(2, 90), words(3, 90)));
  }

  @Test
  void a_column_that_becomes_too_narrow_by_that_gets_what_it_needs_too() {
    assertEquals(List.of(0, 206, 317, 500), edges(words(1, 200), words(1, 105), words(3, 90)));
  }

  @Test
  void where_the_words_together_are_wider_than_the_page_all_keep_their_shares() {
    assertEquals(List.of(0, 125, 500), edges(words(1, 300), words(3, 300)));
  }

  @Test
  void the_longest_word_counts_of_the_heading_and_the_cells() {
    assertEquals(word("Meldebestand", "x"), word("Meldebestand je Woche", "ein Wort"));
    assertEquals(word("x", "Meldebestand"), word("Bestand", "ein Meldebestand"));
    assertTrue(word("In all", "12,345,678.90") > word("In all", "12.90"));
  }

  @Test
  void a_very_long_word_of_the_book_takes_no_room_from_the_others() {
    assertEquals(word("Item", ""), word("Item", "Donaudampfschifffahrt"));
  }

  private static int word(String heading, String cell) {
    Block.Table table =
        new Block.Table("", List.of(Block.Column.words(heading, 1)), List.of(Block.Row.of(cell)));
    return TableLayout.of(table).columns().get(0).word();
  }

  @Test
  void tables_that_differ_in_words_alone_share_a_layout_with_room_for_both() {
    TableLayout one = new TableLayout(List.of(words(1, 40), words(2, 10)));
    TableLayout other = new TableLayout(List.of(words(1, 20), words(2, 30)));

    assertTrue(one.like(other));
    assertEquals(new TableLayout(List.of(words(1, 40), words(2, 30))), one.with(other));
    assertFalse(one.like(new TableLayout(List.of(words(2, 40), words(2, 10)))));
  }
}
